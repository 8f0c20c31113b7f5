/** What is asked of the list of cases; it stands in the address, so that it can be kept, sent and gone back to. */
export interface ListQuery {
  readonly search: string;
  readonly failure: readonly string[];
  readonly coverage: readonly string[];
  readonly hazard: readonly string[];
  readonly kind: readonly string[];
  readonly claim: readonly string[];
  /** "verdict", "leastExamined", "changed", "name", or "margin:" with a check. */
  readonly sort: string;
  readonly archived: boolean;
  /** The case and the check that the panel is about. */
  readonly unit: string;
  readonly check: string;
}

export type Field = 'failure' | 'coverage' | 'hazard' | 'kind' | 'claim';
export const FIELDS: readonly Field[] = ['failure', 'coverage', 'hazard', 'kind', 'claim'];
const FIRST_SORT = 'verdict';
export const BY_MARGIN = 'margin:';

export function parseListQuery(text: string): ListQuery {
  const query = new URLSearchParams(text);
  const all = (field: Field): readonly string[] => query.getAll(field).filter((word) => word !== '');
  return {
    search: query.get('search') ?? '',
    failure: all('failure'),
    coverage: all('coverage'),
    hazard: all('hazard'),
    kind: all('kind'),
    claim: all('claim'),
    sort: query.get('sort') ?? FIRST_SORT,
    archived: query.get('archived') === 'true',
    unit: query.get('unit') ?? '',
    check: query.get('check') ?? '',
  };
}

/** As it stands in the address: what is as it begins is left out. */
export function toAddress(query: ListQuery): string {
  const out = toFilters(query);
  if (query.sort !== FIRST_SORT) out.set('sort', query.sort);
  if (query.unit !== '') out.set('unit', query.unit);
  if (query.check !== '') out.set('check', query.check);
  return out.toString();
}

/** As the server is asked: two queries with the same text have the same answer. */
export function toRequest(query: ListQuery): string {
  const out = toFilters(query);
  out.set('sort', query.sort);
  return out.toString();
}

function toFilters(query: ListQuery): URLSearchParams {
  const out = new URLSearchParams();
  if (query.search.trim() !== '') out.set('search', query.search);
  for (const field of FIELDS) for (const word of query[field]) out.append(field, word);
  if (query.archived) out.set('archived', 'true');
  return out;
}

/** A word of a filter put in or taken out. */
export function toggled(query: ListQuery, field: Field, word: string): ListQuery {
  const words = query[field];
  return { ...query, [field]: words.includes(word) ? words.filter((one) => one !== word) : [...words, word] };
}

export function isFiltered(query: ListQuery): boolean {
  return query.search.trim() !== '' || FIELDS.some((field) => query[field].length > 0);
}
