/**
 * The place of a step, a finding or a source in a page. Different ids give different places, the same id the same place, and the result
 * holds letters, digits, hyphens and underscores only, so that it can stand in an attribute and in a link.
 */
export function toAnchor(kind: 'step' | 'finding' | 'source' | 'part', id: string): string {
  const HEXADECIMAL = 16;
  const plain = Array.from(id, (sign) =>
    /^[A-Za-z0-9-]$/.test(sign) ? sign : `_${(sign.codePointAt(0) ?? 0).toString(HEXADECIMAL)}_`,
  ).join('');
  return `${kind}-${plain}`;
}
