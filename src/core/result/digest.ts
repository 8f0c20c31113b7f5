import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText, createCanonicalText } from './canonical.ts';

/** SHA-256 of raw bytes, in small hexadecimal. */
export function digestOfBytes(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** SHA-256 over the canonical text of a JSON value. */
export function digestOf(value: unknown): string {
  return digestOfBytes(utf8ToBytes(canonicalText(value)));
}

/** `digestOf` that remembers the parts of what it was given before; no part may be changed in place. */
export function createDigest(): (value: unknown) => string {
  const toText = createCanonicalText();
  return (value) => digestOfBytes(utf8ToBytes(toText(value)));
}
