import { type Kysely, type SelectQueryBuilder, sql } from 'kysely';
import type { CaseSummary } from '../../app/casebook/case-summary.ts';
import type { CasePage, CaseQuery, CheckPlaces } from '../../app/casebook/casebook-store.ts';
import { foldText } from './fold-text.ts';
import { HEAD_COLUMNS } from './rows.ts';
import type { CasebookTables, LabelField } from './tables.ts';

type Db = Kysely<CasebookTables>;
type Matching = SelectQueryBuilder<CasebookTables, 'overview' | 'cases', object>;
type Filter = 'failure' | 'coverage' | LabelField;
const LABELS: readonly LabelField[] = ['kind', 'claim', 'hazard'];

/** One page of the cases that match, how many there are, and what every other choice of a filter would leave. */
export async function findCases(db: Db, query: CaseQuery): Promise<CasePage> {
  const { total } = await matching(db, query, null).select(sql<number>`count(*)`.as('total')).executeTakeFirstOrThrow();
  const everything: CaseQuery = { archived: query.archived, from: 0, count: 0 };
  const { of } = await matching(db, everything, null).select(sql<number>`count(*)`.as('of')).executeTakeFirstOrThrow();
  const rows = await sorted(matching(db, query, null), query.sort)
    .select([...HEAD_COLUMNS, 'cases.summary'])
    .offset(query.from)
    .limit(query.count)
    .execute();
  return {
    total,
    of,
    ...(query.places === undefined ? {} : { places: await findPlaces(db, everything, query.places) }),
    counts:
      query.counted === false
        ? { failure: {}, coverage: {}, hazard: {}, kind: {}, claim: {} }
        : {
            failure: await countColumn(db, query, 'failure'),
            coverage: await countColumn(db, query, 'coverage'),
            hazard: await countLabel(db, query, 'hazard'),
            kind: await countLabel(db, query, 'kind'),
            claim: await countLabel(db, query, 'claim'),
          },
    rows: rows.map(({ summary, ...head }) => ({ head, summary: summary === null ? null : (JSON.parse(summary) as CaseSummary) })),
  };
}

const DIGITS = 3; // of a ratio: finer than a line can show

async function findPlaces(db: Db, query: CaseQuery, check: string): Promise<CheckPlaces> {
  const rows = await matching(db, query, null)
    .innerJoin('marks', (join) => join.onRef('marks.case_n', '=', 'overview.case_n').on('marks.check_id', '=', check))
    .select(['marks.margin', 'marks.failed'])
    .where((is) => is.or([is('marks.margin', 'is not', null), is('marks.failed', '=', 1)]))
    .orderBy('marks.margin', 'desc')
    .execute();
  const ratios = rows.flatMap(({ margin }) => (margin === null ? [] : [Number(margin.toPrecision(DIGITS))]));
  return { check, ratios, beyond: rows.length - ratios.length };
}

/** Cases that pass the search and every filter but `without`. */
function matching(db: Db, query: CaseQuery, without: Filter | null): Matching {
  let cases: Matching = db
    .selectFrom('overview')
    .innerJoin('cases', 'cases.n', 'overview.case_n')
    .where('cases.removed', 'is', null)
    .where('cases.archived', query.archived === true ? 'is not' : 'is', null);
  for (const word of foldText(query.search ?? '').split(/\s+/))
    if (word !== '') cases = cases.where(sql<boolean>`instr(overview.search, ${word}) > 0`);
  for (const column of ['failure', 'coverage'] as const)
    if (column !== without && isSet(query[column])) cases = cases.where(`overview.${column}`, 'in', query[column]);
  for (const field of LABELS) {
    const words = query[field];
    if (field !== without && isSet(words))
      cases = cases.where('overview.case_n', 'in', (inner) =>
        inner.selectFrom('labels').select('labels.case_n').where('labels.field', '=', field).where('labels.word', 'in', words),
      );
  }
  return cases;
}

function isSet(words: readonly string[] | undefined): words is readonly string[] {
  return words !== undefined && words.length > 0;
}

/** What has no summary yet stands last; equal cases in order of name, sample, id, so that pages do not overlap. */
function sorted(cases: Matching, sort: CaseQuery['sort']): Matching {
  const last = (column: 'failure_rank' | 'coverage_rank' | 'settled' | 'name') =>
    cases.orderBy(sql`overview.${sql.ref(column)} IS NULL`).orderBy(`overview.${column}`);
  let first = cases;
  if (sort === undefined || sort === 'changed') first = cases.orderBy('cases.changed', 'desc');
  else if (sort === 'verdict') first = last('failure_rank');
  else if (sort === 'leastExamined') first = last('coverage_rank').orderBy('overview.settled');
  else if (sort === 'name') first = cases;
  else
    first = cases
      .leftJoin('marks', (join) => join.onRef('marks.case_n', '=', 'overview.case_n').on('marks.check_id', '=', sort.margin))
      // failed without a ratio is beyond every ratio; neither failed nor a ratio says nothing
      .orderBy(sql`CASE WHEN marks.margin IS NOT NULL THEN 1 WHEN marks.failed = 1 THEN 0 ELSE 2 END`)
      .orderBy('marks.margin', 'desc') as unknown as Matching;
  return first
    .orderBy(sql`overview.name IS NULL`)
    .orderBy(sql`overview.name COLLATE NOCASE`)
    .orderBy('overview.sample')
    .orderBy('cases.id');
}

async function countColumn(db: Db, query: CaseQuery, column: 'failure' | 'coverage'): Promise<Record<string, number>> {
  const rows = await matching(db, query, column)
    .select([`overview.${column} as word`, sql<number>`count(*)`.as('count')])
    .where(`overview.${column}`, 'is not', null)
    .groupBy(`overview.${column}`)
    .execute();
  return Object.fromEntries(rows.map(({ word, count }) => [word ?? '', count]));
}

async function countLabel(db: Db, query: CaseQuery, field: LabelField): Promise<Record<string, number>> {
  const rows = await matching(db, query, field)
    .innerJoin('labels', 'labels.case_n', 'overview.case_n')
    .where('labels.field', '=', field)
    .select(['labels.word', sql<number>`count(*)`.as('count')])
    .groupBy('labels.word')
    .execute();
  return Object.fromEntries(rows.map(({ word, count }) => [word, count]));
}
