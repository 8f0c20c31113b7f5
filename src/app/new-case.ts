import { CASE_FORMAT, type CaseInput } from '../core/evidence/case.ts';

/** An empty case: the nine values nobody can do without are there as places to fill in, nothing is assumed. */
export function newCase(id: string): CaseInput {
  return {
    format: CASE_FORMAT,
    id,
    product: { id, name: id },
    sample: 'A',
    setting: { market: 'EU' },
    instruments: [],
    days: [],
    events: [],
    ports: [],
    conductors: [],
    parts: [],
    places: [],
    exhibits: [],
    files: [],
  };
}

/** A slug from a folder's name, as ids are written. */
export function slugOf(name: string): string {
  const slug = name
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40);
  return slug === '' ? 'case' : slug;
}
