/** Every input of a job with its standing, in the order of the document, for screens and papers. */
export interface InputStanding {
  /** Path of the field in the job. */
  readonly path: string;
  readonly standing: 'given' | 'assumed' | 'asked';
  /** As written in the job. */
  readonly text: string;
  /** The reason of an assumption, or the question. */
  readonly because?: string;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Reads the document as written, not as parsed: a person recognises "15/32 in", not 0.46875. */
export function inputsOf(document: unknown): InputStanding[] {
  const found: InputStanding[] = [];
  visit(document, '', found);
  return found;
}

const skipped = new Set(['schema', 'print', 'name', 'reference', 'note', 'revision', 'date']);

function visit(value: unknown, path: string, found: InputStanding[]): void {
  if (isObject(value)) visitObject(value, path, found);
  else if (Array.isArray(value) && value.some(isObject))
    for (const [i, part] of value.entries()) visit(part, `${path}.${i}`, found);
  else found.push({ path, standing: 'given', text: textOf(value) });
}

function visitObject(value: Record<string, unknown>, path: string, found: InputStanding[]): void {
  if ('ask' in value) {
    found.push({ path, standing: 'asked', text: '', because: String(value.ask) });
    return;
  }
  if ('assume' in value && 'because' in value) {
    found.push({ path, standing: 'assumed', text: textOf(value.assume), because: String(value.because) });
    return;
  }
  for (const [key, part] of Object.entries(value)) {
    if (path === '' && skipped.has(key)) continue;
    visit(part, path === '' ? key : `${path}.${key}`, found);
  }
}

function textOf(value: unknown): string {
  if (Array.isArray(value)) return value.map(textOf).join(', ');
  if (isObject(value))
    return Object.entries(value)
      .map(([key, part]) => `${key} ${textOf(part)}`)
      .join(', ');
  return String(value);
}
