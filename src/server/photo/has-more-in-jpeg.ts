const MARK = 0xff;
const START_OF_SCAN = 0xda;
const COMMENT = 0xfe;
const FIRST_APPLICATION = 0xe0;
const LAST_APPLICATION = 0xef;
const JFIF = 0xe0;
const ADOBE = 0xee; // how the colours are coded
const SIZE_BYTES = 2;

/** Whether a JPEG (ITU-T T.81, B.1) carries a comment, an application's segment beyond what its pixels need, or bytes behind its end. */
export function hasMoreInJpeg(bytes: Uint8Array): boolean {
  let at = 2; // behind the start of the image
  while (at + 1 + SIZE_BYTES < bytes.length && bytes[at] === MARK) {
    const kind = bytes[at + 1] ?? 0;
    if (kind === START_OF_SCAN) return !endsWithItsImage(bytes);
    const isApplication = kind >= FIRST_APPLICATION && kind <= LAST_APPLICATION && kind !== JFIF && kind !== ADOBE;
    if (kind === COMMENT || isApplication) return true;
    at += 2 + (bytes[at + 2] ?? 0) * 256 + (bytes[at + 3] ?? 0);
  }
  return true; // not laid out as expected: written anew
}

/** The first end of image is the last thing in the file; in coded pixels a mark is always followed by zero or a restart. */
function endsWithItsImage(bytes: Uint8Array): boolean {
  const END = 0xd9;
  for (let at = 2; at + 1 < bytes.length; at += 1) if (bytes[at] === MARK && bytes[at + 1] === END) return at + 2 === bytes.length;
  return false;
}
