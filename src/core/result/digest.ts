import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonicalText } from './canonical.ts';

/** SHA-256 of raw bytes, in small hexadecimal. */
export function digestOfBytes(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/** SHA-256 over the canonical text of a JSON value. */
export function digestOf(value: unknown): string {
  return digestOfBytes(utf8ToBytes(canonicalText(value)));
}
