/** Reading and writing one field of a job document by its path, leaving the document itself as it was. */
type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export function fieldAt(document: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>((value, key) => (isFields(value) ? value[key] : undefined), document);
}

/** The document with one field written; nothing removes the field. Lists on the way are not entered. */
export function withField(document: unknown, path: string, put: unknown): unknown {
  const [key = '', ...rest] = path.split('.');
  const fields = isFields(document) ? document : {};
  const value = rest.length === 0 ? put : withField(fields[key], rest.join('.'), put);
  const { [key]: _, ...others } = fields;
  return value === undefined ? others : { ...others, [key]: value };
}
