import { digestOfBytes } from '../../core/result/digest.ts';

/** Content-security policy of a page that stands alone: nothing but the one style with exactly these bytes, and fonts that are inside it. */
export function policyFor(style: string): string {
  return `default-src 'none'; style-src 'sha256-${toBase64(digestOfBytes(new TextEncoder().encode(style)))}'; font-src data:; base-uri 'none'; form-action 'none'`;
}

function toBase64(hexadecimal: string): string {
  const BASE = 16;
  const bytes = hexadecimal.match(/../g)?.map((pair) => Number.parseInt(pair, BASE)) ?? [];
  return btoa(String.fromCharCode(...bytes));
}
