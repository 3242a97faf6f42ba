/** The page font: Source Sans 3 (open font licence), read from its package. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

export const faces = {
  regular: '400Regular/SourceSans3_400Regular.ttf',
  italic: '400Regular_Italic/SourceSans3_400Regular_Italic.ttf',
  bold: '600SemiBold/SourceSans3_600SemiBold.ttf',
} as const;
export type Face = keyof typeof faces;

const read = new Map<Face, Buffer>();

/** Bytes of a face; read once. */
export function fontBytes(face: Face): Buffer {
  const held = read.get(face);
  if (held) return held;
  const require = createRequire(import.meta.url);
  const bytes = readFileSync(require.resolve(`@expo-google-fonts/source-sans-3/${faces[face]}`));
  read.set(face, bytes);
  return bytes;
}
