import { type Refusal, refuse } from '../core/quantity/refusal.ts';

export interface DecodedText {
  readonly text: string;
  /** `utf-8`, `utf-8-bom`, `utf-16le`, `utf-16be`, `latin-1`. */
  readonly encoding: string;
}

const LONGEST_TEXT = 500_000_000; // characters; a little under what one string of the engine holds
const SAMPLE = 4096; // bytes looked at for the pattern of UTF-16 without its mark; house choice
const ZERO_SHARE = 0.4; // of the bytes of one parity must be zero; house choice (Latin text has nearly all)
const ZERO_SHARE_OTHER = 0.05; // and hardly any of the other parity

/** The text of the bytes. Bytes that are no valid UTF-8 are Latin-1, in its common extension for 0x80 to 0x9F. */
export function decodeText(bytes: Uint8Array): DecodedText | Refusal {
  if (bytes.length > LONGEST_TEXT) {
    return refuse('too-large', `${bytes.length} bytes`, `at most ${LONGEST_TEXT} bytes of text with anything but plain numbers in it`);
  }
  const [b0, b1, b2] = bytes;
  if (b0 === 0xef && b1 === 0xbb && b2 === 0xbf) {
    const marked = decodeUtf8(bytes.subarray(UTF8_MARK_LENGTH));
    if (marked !== null) return { text: marked, encoding: 'utf-8-bom' };
  }
  if (b0 === 0xff && b1 === 0xfe) return { text: decode('utf-16le', bytes.subarray(2)), encoding: 'utf-16le' };
  if (b0 === 0xfe && b1 === 0xff) return { text: decode('utf-16be', bytes.subarray(2)), encoding: 'utf-16be' };
  const wide = findUnmarkedUtf16(bytes);
  if (wide !== null) return { text: decode(wide, bytes), encoding: wide };
  const text = decodeUtf8(bytes);
  if (text !== null) return { text, encoding: 'utf-8' };
  return { text: decode('windows-1252', bytes), encoding: 'latin-1' };
}

const UTF8_MARK_LENGTH = 3;

function decode(label: string, bytes: Uint8Array): string {
  return new TextDecoder(label, { ignoreBOM: true }).decode(bytes);
}

function decodeUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

function findUnmarkedUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if (bytes.length % 2 !== 0) return null;
  const end = Math.min(bytes.length, SAMPLE);
  let even = 0;
  let odd = 0;
  for (let i = 0; i < end; i += 2) {
    if (bytes[i] === 0) even++;
    if (bytes[i + 1] === 0) odd++;
  }
  const pairs = end / 2;
  if (odd > pairs * ZERO_SHARE && even <= pairs * ZERO_SHARE_OTHER) return 'utf-16le';
  if (even > pairs * ZERO_SHARE && odd <= pairs * ZERO_SHARE_OTHER) return 'utf-16be';
  return null;
}
