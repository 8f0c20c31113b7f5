import { type Refusal, refuse } from '../core/quantity/refusal.ts';

/** Files that are no text export, told by their first bytes: refused by name, so that the person knows what to export instead. */

const EXPECTED = 'a text export of an instrument (comma, semicolon or tab separated)';
const SNIFFED = 512; // bytes looked at for marks that stand near the start; house choice
const SAMPLE = 65536; // bytes looked at for the share of control characters; house choice
const CONTROL_SHARE = 0.05; // more than one control character in twenty is no text; house choice
const CONTROLS_ALLOWED = 8; // a short text may hold a few
const SPACE = 0x20;
const DELETE = 0x7f;
const TAB = 0x09;
const CARRIAGE_RETURN = 0x0d;
const SUBSTITUTE = 0x1a; // the end-of-file mark of old systems

interface Mark {
  readonly at: number;
  readonly bytes: readonly number[];
  readonly code: string;
  readonly what: string;
}

/** The first bytes each format's own standard prescribes. */
const MARKS: readonly Mark[] = [
  { at: 0, bytes: [0x89, 0x50, 0x4e, 0x47], code: 'picture', what: 'a PNG picture' },
  { at: 0, bytes: [0xff, 0xd8, 0xff], code: 'picture', what: 'a JPEG picture' },
  { at: 0, bytes: [0x47, 0x49, 0x46, 0x38], code: 'picture', what: 'a GIF picture' },
  { at: 8, bytes: [0x57, 0x45, 0x42, 0x50], code: 'picture', what: 'a WebP picture' },
  { at: 0, bytes: [0x25, 0x50, 0x44, 0x46, 0x2d], code: 'pdf', what: 'a PDF document' },
  { at: 0, bytes: [0x50, 0x4b, 0x03, 0x04], code: 'spreadsheet', what: 'a zip container such as a spreadsheet' },
  { at: 0, bytes: [0x50, 0x4b, 0x05, 0x06], code: 'spreadsheet', what: 'an empty zip container' },
  { at: 0, bytes: [0xd0, 0xcf, 0x11, 0xe0], code: 'spreadsheet', what: 'an old office container such as a spreadsheet' },
  { at: 0, bytes: [0x1f, 0x8b], code: 'binary', what: 'a gzip archive' },
];

const BITMAP = [0x42, 0x4d]; // "BM", which a text may begin with: the reserved bytes must be zero as well
const BITMAP_RESERVED = [6, 7, 8, 9];

export function refuseForeign(bytes: Uint8Array): Refusal | null {
  if (bytes.length === 0) return refuse('empty', '', `${EXPECTED}; the file is empty`);
  for (const mark of MARKS) {
    if (mark.bytes.every((byte, i) => bytes[mark.at + i] === byte)) return refuse(mark.code, mark.what, EXPECTED);
  }
  if (BITMAP.every((byte, i) => bytes[i] === byte) && BITMAP_RESERVED.every((i) => bytes[i] === 0)) {
    return refuse('picture', 'a bitmap picture', EXPECTED);
  }
  const head = toAscii(bytes.subarray(0, SNIFFED)).trimStart().toLowerCase();
  if (head.startsWith('version https://git-lfs.github.com/spec/')) {
    return refuse('lfs-pointer', 'a Git LFS pointer', `${EXPECTED}; the pointer only names the file, fetch the file itself`);
  }
  if (/^(<\?xml[^>]*>\s*)?(<!--.*?-->\s*)?<(!doctype html|html|head|body)\b/s.test(head)) return refuse('html', 'an HTML page', EXPECTED);
  if (head.startsWith('<svg') || /^<\?xml[^>]*>\s*<svg/.test(head)) return refuse('picture', 'an SVG picture', EXPECTED);
  return null;
}

function toAscii(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) if (byte > 0 && byte < DELETE) text += String.fromCharCode(byte);
  return text;
}

/** Refuses decoded text that is mostly no text, and text without a single visible character. */
export function refuseBinary(text: string): Refusal | null {
  const end = Math.min(text.length, SAMPLE);
  let controls = 0;
  let visible = 0;
  for (let i = 0; i < end; i++) {
    const code = text.charCodeAt(i);
    if (code > SPACE) visible++;
    if ((code < SPACE && (code < TAB || code > CARRIAGE_RETURN) && code !== SUBSTITUTE) || code === DELETE || code === REPLACEMENT)
      controls++;
  }
  if (controls > Math.max(CONTROLS_ALLOWED, end * CONTROL_SHARE)) return refuse('binary', 'binary data', EXPECTED);
  if (visible === 0 && end === text.length) return refuse('empty', '', `${EXPECTED}; the file holds only blanks`);
  return null;
}

const REPLACEMENT = 0xfffd; // what a decoder writes for bytes that are no character
