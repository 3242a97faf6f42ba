/** Colour and progress, only on a terminal. */
const escapes = { bold: '1', dim: '2', red: '31', blue: '34' } as const;

export type Ink = (text: string) => string;

export function ink(style: keyof typeof escapes, stream: NodeJS.WriteStream = process.stdout): Ink {
  const plain = !stream.isTTY || process.env.NO_COLOR !== undefined;
  return plain ? (text) => text : (text) => `\u001b[${escapes[style]}m${text}\u001b[0m`;
}

/** One line on a terminal that says what is being done; nothing in a pipe. */
export function progress(text: string): void {
  if (process.stderr.isTTY) process.stderr.write(`\r\u001b[K${text}`);
}

export function progressDone(): void {
  if (process.stderr.isTTY) process.stderr.write('\r\u001b[K');
}

/** Text from a document, safe to print: control characters would let it draw on the terminal. */
export function printable(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: removing them is the point
  return text.replace(/[\u0000-\u001f\u007f-\u009f]/g, '?');
}
