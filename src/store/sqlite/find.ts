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
  const everything: CaseQuery = { archived: query.archived, from: 0, count: 0 };
  const words = await countWords(db, query);
  const narrowed = foldText(query.search ?? '').trim() !== '' || LABELS.some((field) => isSet(query[field]));
  const of = narrowed ? (await countWords(db, everything)).total : words.all;
  return {
    total: words.total,
    of,
    ...(query.places === undefined ? {} : { places: await findPlaces(db, everything, query.places) }),
    counts: {
      failure: words.failure,
      coverage: words.coverage,
      ...(query.counted === false ? { hazard: {}, kind: {}, claim: {} } : await countLabels(db, query)),
    },
    rows: await findRows(db, query),
  };
}

/** The order is settled on the small tables; summaries are read for the page alone. */
async function findRows(db: Db, query: CaseQuery): Promise<CasePage['rows']> {
  if (query.count === 0) return [];
  const page = await sorted(matching(db, query, []), query.sort)
    .select('overview.case_n')
    .offset(query.from)
    .limit(query.count)
    .execute();
  const order = page.map(({ case_n }) => case_n);
  const rows = await db
    .selectFrom('cases')
    .leftJoin('summaries', 'summaries.case_n', 'cases.n')
    .select(['cases.n', ...HEAD_COLUMNS, 'summaries.body as summary'])
    .where('cases.n', 'in', sql<number>`(SELECT value FROM json_each(${JSON.stringify(order)}))`)
    .execute();
  const byNumber = new Map(rows.map((row) => [row.n, row]));
  return order.flatMap((number) => {
    const row = byNumber.get(number);
    if (row === undefined) return [];
    const { n: _n, summary, ...head } = row;
    return [{ head, summary: summary === null ? null : (JSON.parse(summary) as CaseSummary) }];
  });
}

const DIGITS = 3; // of a ratio: finer than a line can show

async function findPlaces(db: Db, query: CaseQuery, check: string): Promise<CheckPlaces> {
  const rows = await matching(db, query, [])
    .innerJoin('marks', (join) => join.onRef('marks.case_n', '=', 'overview.case_n').on('marks.check_id', '=', check))
    .select(['marks.margin', 'marks.failed'])
    .where((is) => is.or([is('marks.margin', 'is not', null), is('marks.failed', '=', 1)]))
    .orderBy('marks.margin', 'desc')
    .execute();
  const ratios = rows.flatMap(({ margin }) => (margin === null ? [] : [Number(margin.toPrecision(DIGITS))]));
  return { check, ratios, beyond: rows.length - ratios.length };
}

/** Cases that pass the search and every filter but those of `without`. */
function matching(db: Db, query: CaseQuery, without: readonly Filter[]): Matching {
  let cases: Matching = db
    .selectFrom('overview')
    .innerJoin('cases', 'cases.n', 'overview.case_n')
    .where('cases.removed', 'is', null)
    .where('cases.archived', query.archived === true ? 'is not' : 'is', null);
  for (const word of foldText(query.search ?? '').split(/\s+/))
    if (word !== '') cases = cases.where(sql<boolean>`instr(overview.search, ${word}) > 0`);
  for (const column of ['failure', 'coverage'] as const)
    if (!without.includes(column) && isSet(query[column])) cases = cases.where(`overview.${column}`, 'in', query[column]);
  for (const field of LABELS) {
    const words = query[field];
    if (!without.includes(field) && isSet(words))
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

/** Both words of all cases that pass every other filter, in one pass: how many pass these two as well, and what each word would leave. */
async function countWords(
  db: Db,
  query: CaseQuery,
): Promise<{ total: number; all: number } & Pick<CasePage['counts'], 'failure' | 'coverage'>> {
  const rows = await matching(db, query, ['failure', 'coverage'])
    .select(['overview.failure', 'overview.coverage', sql<number>`count(*)`.as('count')])
    .groupBy(['overview.failure', 'overview.coverage'])
    .execute();
  const failure: Record<string, number> = {};
  const coverage: Record<string, number> = {};
  let total = 0;
  let all = 0;
  for (const row of rows) {
    all += row.count;
    const passesFailure = passes(query.failure, row.failure);
    const passesCoverage = passes(query.coverage, row.coverage);
    if (passesFailure && passesCoverage) total += row.count;
    if (passesCoverage && row.failure !== null) failure[row.failure] = (failure[row.failure] ?? 0) + row.count;
    if (passesFailure && row.coverage !== null) coverage[row.coverage] = (coverage[row.coverage] ?? 0) + row.count;
  }
  return { total, all, failure, coverage };
}

function passes(words: readonly string[] | undefined, word: string | null): boolean {
  return !isSet(words) || (word !== null && words.includes(word));
}

/** Fields without a filter of their own are counted together; a field with one is counted without it. */
async function countLabels(db: Db, query: CaseQuery): Promise<Pick<CasePage['counts'], LabelField>> {
  const counts: Record<LabelField, Record<string, number>> = { hazard: {}, kind: {}, claim: {} };
  const set = LABELS.filter((field) => isSet(query[field]));
  const free = LABELS.filter((field) => !set.includes(field));
  for (const fields of [free, ...set.map((field) => [field])]) {
    if (fields.length === 0) continue;
    const rows = await matching(db, query, fields)
      .innerJoin('labels', 'labels.case_n', 'overview.case_n')
      .where('labels.field', 'in', fields)
      .select(['labels.field', 'labels.word', sql<number>`count(*)`.as('count')])
      .groupBy(['labels.field', 'labels.word'])
      .execute();
    for (const { field, word, count } of rows) counts[field][word] = count;
  }
  return counts;
}
