import type { Coverage } from '../../core/result/assessment.ts';
import { drawCoverageSquare } from '../../present/figure/coverage-cells.ts';
import { drawOutcomeMark } from '../../present/figure/outcome-mark.ts';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { SORT_WORDS } from '../../present/words/casebook-words.ts';
import { CHECK_WORDS, getCheckWords } from '../../present/words/check-words.ts';
import { FAILURE_WEIGHTS } from '../../present/words/failure-words.ts';
import { HAZARD_WORDS } from '../../present/words/hazard-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { BY_MARGIN, type Field, type ListQuery, toggled } from '../state/casebook-query.ts';
import type { CaseList } from '../state/use-casebook.ts';

const MARK = 10;
const COVERAGES: readonly { readonly is: Coverage; readonly words: string }[] = [
  { is: 'not examined', words: 'not' },
  { is: 'partly examined', words: 'partly' },
  { is: 'examined', words: 'examined' },
];
const MARKS = { grave: 'fail', mild: 'fail', clear: 'pass', void: 'notAssessed' } as const;
const DOUBT = CASEBOOK_PAGE.inDoubt;

/** Failure and coverage as filters of equal standing, the order, and what is asked for more seldom behind one button. */
export function FilterBar({ query, list, onQuery }: { query: ListQuery; list: CaseList; onQuery: (query: ListQuery) => void }) {
  const { counts } = list;
  const words = (field: Field): string[] => [...new Set([...Object.keys(counts[field]), ...query[field]])].sort();
  const doubts = words('failure').filter((word) => word.endsWith(DOUBT));
  const more = query.hazard.length + query.kind.length + query.claim.length + (query.archived ? 1 : 0);
  const press = (field: Field, word: string) => () => onQuery(toggled(query, field, word));
  return (
    <search className="bar" aria-label={CASEBOOK_PAGE.filterAndOrderTheCases}>
      <fieldset className="set">
        <legend className="lab">{CASEBOOK_PAGE.failure}</legend>
        <AllButton field="failure" query={query} onQuery={onQuery} />
        {[...Object.keys(FAILURE_WEIGHTS), ...doubts].map((word) => {
          const weight = FAILURE_WEIGHTS[word as keyof typeof FAILURE_WEIGHTS];
          const mark = weight === undefined ? 'inconclusive' : MARKS[weight];
          return (
            <Toggle key={word} on={query.failure.includes(word)} count={counts.failure[word] ?? 0} onPress={press('failure', word)}>
              <RawHtml html={drawOutcomeMark(mark, MARK).markup} />
              {word}
            </Toggle>
          );
        })}
      </fieldset>
      <fieldset className="set">
        <legend className="lab">{CASEBOOK_PAGE.examined}</legend>
        <AllButton field="coverage" query={query} onQuery={onQuery} />
        {COVERAGES.map(({ is, words: said }) => (
          <Toggle key={is} on={query.coverage.includes(is)} count={counts.coverage[is] ?? 0} onPress={press('coverage', is)}>
            <RawHtml html={drawCoverageSquare(is, MARK + 1).markup} />
            {said}
          </Toggle>
        ))}
      </fieldset>
      <fieldset className="set">
        <legend className="lab">{CASEBOOK_PAGE.sort}</legend>
        {Object.entries(SORT_WORDS).map(([sort, said]) => (
          <Toggle key={sort} on={query.sort === sort} onPress={() => onQuery({ ...query, sort })}>
            {said}
          </Toggle>
        ))}
        <select
          className={query.sort.startsWith(BY_MARGIN) ? 'btn on' : 'btn'}
          aria-label={CASEBOOK_PAGE.sortByMarginOneCheck}
          value={query.sort.startsWith(BY_MARGIN) ? query.sort.slice(BY_MARGIN.length) : ''}
          onChange={({ target }) => target.value !== '' && onQuery({ ...query, sort: BY_MARGIN + target.value, check: target.value })}
        >
          <option value="">{CASEBOOK_PAGE.oneCheck}</option>
          {Object.entries(HAZARD_WORDS).map(([hazard, title]) => (
            <optgroup key={hazard} label={title}>
              {Object.keys(CHECK_WORDS)
                .filter((check) => check.startsWith(`${hazard}/`))
                .map((check) => (
                  <option key={check} value={check}>
                    {getCheckWords(check).title}
                  </option>
                ))}
            </optgroup>
          ))}
        </select>
      </fieldset>
      <details className="set more" open={more > 0 ? true : undefined}>
        <summary className="btn">{more > 0 ? CASEBOOK_PAGE.moreSet(more) : CASEBOOK_PAGE.more}</summary>
        <fieldset className="set">
          <legend className="lab">{CASEBOOK_PAGE.failedIn}</legend>
          {Object.entries(HAZARD_WORDS).map(([hazard, title]) => (
            <Toggle key={hazard} on={query.hazard.includes(hazard)} count={counts.hazard[hazard] ?? 0} onPress={press('hazard', hazard)}>
              {title}
            </Toggle>
          ))}
        </fieldset>
        <fieldset className="set">
          <legend className="lab">{CASEBOOK_PAGE.output}</legend>
          {words('kind').map((kind) => (
            <Toggle key={kind} on={query.kind.includes(kind)} count={counts.kind[kind] ?? 0} onPress={press('kind', kind)}>
              {choiceWords(kind)}
            </Toggle>
          ))}
          {words('kind').length === 0 && <span className="small">{CASEBOOK_PAGE.noOutputEnteredInAny}</span>}
        </fieldset>
        <fieldset className="set">
          <legend className="lab">{CASEBOOK_PAGE.claim}</legend>
          {query.claim.map((claim) => (
            <Toggle key={claim} on count={counts.claim[claim] ?? 0} onPress={press('claim', claim)}>
              {claim}
            </Toggle>
          ))}
          <select
            className="btn"
            aria-label={CASEBOOK_PAGE.addClaimToFilter}
            value=""
            onChange={({ target }) => onQuery(toggled(query, 'claim', target.value))}
          >
            <option value="">{CASEBOOK_PAGE.anyClaim}</option>
            {words('claim')
              .filter((claim) => !query.claim.includes(claim))
              .map((claim) => (
                <option key={claim} value={claim}>
                  {claim} ({counts.claim[claim] ?? 0})
                </option>
              ))}
          </select>
          <Toggle on={query.archived} onPress={() => onQuery({ ...query, archived: !query.archived })}>
            {CASEBOOK_PAGE.archivedOnes}
          </Toggle>
        </fieldset>
      </details>
    </search>
  );
}

function AllButton({ field, query, onQuery }: { field: Field; query: ListQuery; onQuery: (query: ListQuery) => void }) {
  return (
    <Toggle on={query[field].length === 0} onPress={() => onQuery({ ...query, [field]: [] })}>
      {CASEBOOK_PAGE.all}
    </Toggle>
  );
}

function Toggle(props: { on: boolean; count?: number; onPress: () => void; children?: React.ReactNode }) {
  const { on, count, onPress, children } = props;
  return (
    <button type="button" className={on ? 'btn on' : 'btn'} aria-pressed={on} onClick={onPress}>
      {children}
      {count !== undefined && <i>{count.toLocaleString('en')}</i>}
    </button>
  );
}
