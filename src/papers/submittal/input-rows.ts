/** The inputs of a job as rows under heads, with their standing. */
import type { InputStanding } from '../../answer/inputs.ts';
import { inputText } from '../words/terms.ts';
import type { Words } from '../words/words.ts';

export interface InputGroup {
  readonly head: string;
  readonly rows: readonly (InputStanding & { readonly name: string })[];
}

/** Grouped by the first part of the path, in the order of the job. */
export function inputGroups(inputs: readonly InputStanding[], words: Words): InputGroup[] {
  const groups = new Map<string, InputGroup['rows'][number][]>();
  for (const input of merged(inputs, words)) {
    const [first = '', ...rest] = input.path.split('.');
    const head = word(first, words);
    const name = rest.length === 0 ? head.toLowerCase() : nameOf(rest, words);
    const row = { ...input, name, text: inputText(input.path, input.text, words) };
    const held = groups.get(head);
    if (held) held.push(row);
    else groups.set(head, [row]);
  }
  return [...groups].map(([head, rows]) => ({ head, rows }));
}

/** Fields of one numbered part (a row of a test, a pipe) become one row, as long as all of them are given. */
function merged(inputs: readonly InputStanding[], words: Words): InputStanding[] {
  const out: InputStanding[] = [];
  // The zones of an engineer's pressures are keyed by their names, which may be numbers.
  const partOf = (path: string) => (path.includes('.zones.') ? null : /^(.*\.\d+)\.([^.]+)$/.exec(path));
  for (const input of inputs) {
    const part = partOf(input.path);
    const last = out.at(-1);
    if (!part || input.standing !== 'given') {
      out.push(input);
      continue;
    }
    const [, owner = '', field = ''] = part;
    const text = `${word(field, words)} ${inputText(input.path, input.text, words)}`;
    if (last?.path === owner) out[out.length - 1] = { ...last, text: `${last.text}, ${text}` };
    else out.push({ path: owner, standing: 'given', text });
  }
  return out;
}

/** `zones.2'.uplift` is "zone 2', uplift"; `pipes.0.diameter` counts from one: "pipe 1, diameter". */
function nameOf(parts: readonly string[], words: Words): string {
  const named = parts.map((part) => (/^\d+$/.test(part) ? part : word(part, words)));
  const out: string[] = [];
  named.forEach((name, i) => {
    const owner = parts[i - 1];
    const key = owner === 'zones' || (owner !== undefined && /^\d+$/.test(parts[i] ?? ''));
    if (!key) out.push(name);
    else out.push(`${out.pop() ?? ''} ${owner === 'zones' ? parts[i] : Number(parts[i]) + 1}`);
  });
  return out.join(', ');
}

function word(part: string, words: Words): string {
  return (
    (words.path as Readonly<Record<string, string>>)[part] ??
    part.replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
  );
}
