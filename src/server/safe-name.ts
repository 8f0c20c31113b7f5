const LONGEST = 120;

/** A file name that can do nothing: no folders, no line ends, no marks that turn the direction of writing, not longer than a line. */
export function safeName(name: string): string {
  const last = name.split(/[\\/]/).at(-1) ?? '';
  const plain = last
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\ud800-\udfff"<>|:*?]/gu, '')
    .replace(/^\.+/, '')
    .trim();
  return Array.from(plain).slice(0, LONGEST).join('') || 'file';
}
