/** Text as a CSS string: every sign that is not a plain letter, digit or space becomes its code, so it can end neither string nor style. */
export function cssString(text: string): string {
  const HEXADECIMAL = 16;
  const escaped = Array.from(text, (sign) =>
    /^[A-Za-z0-9 ,.]$/.test(sign) ? sign : `\\${(sign.codePointAt(0) ?? 0).toString(HEXADECIMAL)} `,
  );
  return `"${escaped.join('')}"`;
}
