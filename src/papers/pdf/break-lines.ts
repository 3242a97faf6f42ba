/** Text broken into lines of a width: at spaces, and inside a word only when the word alone is too long. */

/** @param most greatest number of lines; what does not fit is cut and an ellipsis says so */
export function breakLines(
  text: string,
  width: number,
  widthOf: (text: string) => number,
  most = Number.POSITIVE_INFINITY,
): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ').filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (widthOf(longer) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = widthOf(word) <= width ? [word] : chopped(word, width, widthOf);
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? '';
    if (lines.length > most) break;
  }
  if (line !== '') lines.push(line);
  if (lines.length <= most) return lines;
  return [...lines.slice(0, most - 1), shortened(lines.slice(most - 1).join(' '), width, widthOf)];
}

/** The start of a text that fits, with an ellipsis where something is missing. */
export function shortened(text: string, width: number, widthOf: (text: string) => number): string {
  if (widthOf(text) <= width) return text;
  const signs = [...text];
  let [low, high] = [0, signs.length];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (widthOf(`${signs.slice(0, middle).join('')}…`) <= width) low = middle;
    else high = middle - 1;
  }
  return `${signs.slice(0, low).join('').trimEnd()}…`;
}

function chopped(word: string, width: number, widthOf: (text: string) => number): string[] {
  const parts: string[] = [];
  let part = '';
  for (const sign of word) {
    if (part !== '' && widthOf(part + sign) > width) {
      parts.push(part);
      part = '';
    }
    part += sign;
  }
  return [...parts, part];
}
