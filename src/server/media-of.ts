/** As many bytes of the beginning as tell what a file is. */
export const HEAD_BYTES = 4096;

/** Pictures that are taken. */
export const PICTURES = ['image/jpeg', 'image/png', 'image/webp', 'image/avif', 'image/tiff'] as const;

/** What a file is by its bytes, never by its name: a picture we can read, or text. Null for anything else, drawings and pages included. */
export function mediaOf(head: Uint8Array): string | null {
  const starts = (...bytes: number[]): boolean => bytes.every((byte, index) => head[index] === byte);
  const ascii = (from: number, to: number): string => String.fromCharCode(...head.subarray(from, to));
  // magic numbers: JPEG (ITU-T T.81 B.1.1.3), PNG (ISO/IEC 15948 5.2), RIFF WebP (RFC 9649), AVIF (ISO/IEC 23000-22), TIFF 6.0 section 2
  if (starts(0xff, 0xd8, 0xff)) return 'image/jpeg';
  if (starts(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return 'image/png';
  if (ascii(0, 4) === 'RIFF' && ascii(8, 12) === 'WEBP') return 'image/webp';
  if (ascii(4, 12) === 'ftypavif') return 'image/avif';
  if (starts(0x49, 0x49, 0x2a, 0) || starts(0x4d, 0x4d, 0, 0x2a)) return 'image/tiff';
  return isText(head) ? 'text/plain' : null;
}

const TAB = 9;
const ESCAPE_END = 32; // below it only tab, line feed, form feed and carriage return stand in text

function isText(head: Uint8Array): boolean {
  if (head.length === 0) return false;
  const wide = (head[0] === 0xff && head[1] === 0xfe) || (head[0] === 0xfe && head[1] === 0xff); // UTF-16 with its mark
  const start = new TextDecoder('latin1').decode(head.subarray(0, HEAD_BYTES)).replace(/\0/g, '').trimStart().toLowerCase();
  if (/^(?:\ufeff|ï»¿)?\s*<(?:svg|!doctype|html|\?xml|script)/.test(start)) return false;
  if (wide) return true;
  return head.every((byte) => byte >= ESCAPE_END || (byte >= TAB && byte <= 13));
}
