/** A ZIP file without the moment it was written: the same order gives the same bytes. */
const CENTRAL = 0x02014b50;
const END = 0x06054b50;

/** 1 January 1980, 0:00, the earliest time a ZIP entry can carry. */
const EARLIEST = 0x00210000;

/** Sets the time of every entry, in its own header and in the directory. @throws when it is not a ZIP file. */
export function fixZipTime(bytes: Uint8Array): Uint8Array {
  const out = Uint8Array.from(bytes);
  const view = new DataView(out.buffer);
  let end = out.length - 22;
  while (end >= 0 && view.getUint32(end, true) !== END) end--;
  if (end < 0) throw new Error('not a ZIP file: its directory is missing');
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i++) {
    if (view.getUint32(at, true) !== CENTRAL) throw new Error('the directory of the ZIP file is broken');
    view.setUint32(at + 12, EARLIEST, true);
    view.setUint32(view.getUint32(at + 42, true) + 10, EARLIEST, true);
    at += 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return out;
}
