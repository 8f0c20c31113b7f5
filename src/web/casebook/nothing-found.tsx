import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { FIELDS, isFiltered, type ListQuery } from '../state/casebook-query.ts';
import type { CaseList } from '../state/use-casebook.ts';

/** No case passes: which filter alone stands in the way, with how many there would be without it. */
export function NothingFound({ query, list, onQuery }: { query: ListQuery; list: CaseList; onQuery: (query: ListQuery) => void }) {
  const { counts } = list;
  const sum = (by: Readonly<Record<string, number>>): number => Object.values(by).reduce((total, count) => total + count, 0);
  // a case has one failure and one coverage, so the counts of either say how many there are without it
  const ways = (['failure', 'coverage'] as const)
    .filter((field) => query[field].length > 0 && sum(counts[field]) > 0)
    .map((field) => ({ field, count: sum(counts[field]), rest: query[field === 'failure' ? 'coverage' : 'failure'] }));
  const cleared: ListQuery = { ...query, search: '', ...Object.fromEntries(FIELDS.map((field) => [field, []])) };
  return (
    <div className="nothing">
      <p>
        {query.failure.length > 0 && query.coverage.length > 0
          ? CASEBOOK_PAGE.noUnitIsBoth
          : query.archived && !isFiltered(query)
            ? CASEBOOK_PAGE.nothingIsArchived
            : CASEBOOK_PAGE.noCaseMatches}
      </p>
      <p className="ways">
        {ways.map(({ field, count, rest }) => (
          <button key={field} type="button" className="btn" onClick={() => onQuery({ ...query, [field]: [] })}>
            {CASEBOOK_PAGE.show} {count.toLocaleString('en')}{' '}
            {rest.length > 0 ? rest.join(CASEBOOK_PAGE.or) : CASEBOOK_PAGE.whateverThe(field)}
          </button>
        ))}
        {isFiltered(query) && (
          <button type="button" className="btn" onClick={() => onQuery(cleared)}>
            {CASEBOOK_PAGE.showAll} {list.of.toLocaleString('en')}
          </button>
        )}
        {query.archived && (
          <button type="button" className="btn" onClick={() => onQuery({ ...cleared, archived: false })}>
            {CASEBOOK_PAGE.leaveTheArchive}
          </button>
        )}
      </p>
    </div>
  );
}
