/** Text as it is searched: small letters without accents, so that "cafe" finds "Café" and a full-width digit its plain one. */
export function foldText(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();
}
