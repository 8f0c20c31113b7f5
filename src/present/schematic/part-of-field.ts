/** The part that a field of the case belongs to ("/parts/r7/value", "/parts/r7"); null for other fields. */
export function partOfField(field: string): string | null {
  return /^\/parts\/([^/]+)(?:\/|$)/.exec(field)?.[1] ?? null;
}
