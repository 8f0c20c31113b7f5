/** A casebook of 10,000 invented cases, filled through the same path as a person's: filling, opening, finding. Names of references stand beside. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { assessCase } from '../../src/app/assess-case.ts';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import { type CaseSummary, toSummary } from '../../src/app/casebook/case-summary.ts';
import type { CasebookStore, CaseQuery } from '../../src/app/casebook/casebook-store.ts';
import { FAILURES } from '../../src/core/result/assessment.ts';
import { digestOf } from '../../src/core/result/digest.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';
import { line, type Measured } from '../measure.ts';
import { inScratch, opened } from './scratch.ts';

const CASES = 10_000;
const ROUNDS = 31;
const PAGE = 60; // portraits that a large screen shows at once
const KINDS = ['usbC', 'usbA', 'barrel', 'captive'];
const AT = '2026-03-02T08:00:00Z';

const document = JSON.parse(readFileSync('examples/fell-12/case.json', 'utf8')) as CaseState['case'];
const judged = await assessCase(caseFolder('examples/fell-12'));
if (Array.isArray(judged)) throw new Error('the example does not open');
const like = toSummary(judged.open.one, judged.assessment, 1);

await inScratch(async (folder) => {
  const path = join(folder, 'book');
  const filling = await opened(path);
  const start = performance.now();
  const summaries: CaseSummary[] = [];
  for (let number = 0; number < CASES; number += 1) summaries.push(await addCase(filling, number));
  const seconds = (performance.now() - start) / 1000;
  console.log(`${CASES} cases saved one by one, each on disk before the next: ${seconds.toFixed(1)} s, ${like.marks.length} margins each`);
  await filling.close();

  const bare = await measured(async () => {
    const sqlite = new Database(path);
    sqlite.prepare('SELECT count(*) FROM cases').get();
    sqlite.close();
  });
  console.log(line('SQLite opened, one count (reference)', bare));
  const open = await measured(async () => (await opened(path)).close());
  console.log(line('casebook opened for writing and closed', open, { name: 'bare SQLite', median: bare.median }));

  const store = await opened(path);
  const page: CaseQuery = { from: 0, count: PAGE };
  const reference = await measured(async () => inMemory(summaries));
  console.log(line('the same in memory, one filter (reference)', reference));
  const queries: readonly (readonly [string, CaseQuery])[] = [
    ['all, latest first', { ...page, sort: 'changed' }],
    ['all, worst first', { ...page, sort: 'verdict' }],
    ['all, by a margin, page 100', { ...page, from: PAGE * 100, sort: { margin: 'shock/clearance' } }],
    ['two words searched', { ...page, search: 'quay 77' }],
    [
      'verdict, hazard, kind and claim',
      { ...page, failure: ['Unsafe'], hazard: ['shock'], kind: ['usbA'], claim: ['12 V 2 A'], sort: 'name' },
    ],
  ];
  for (const [name, query] of queries) {
    const found = await store.cases.find(query);
    const time = await measured(() => store.cases.find(query));
    console.log(line(`${name} (${found.total}), target under 100 ms`, time, { name: 'in memory', median: reference.median }));
  }
  await store.close();
});

async function addCase(store: CasebookStore, number: number): Promise<CaseSummary> {
  const id = `quay-${number}`;
  const state: CaseState = { case: { ...document, id }, drafts: {} };
  const name = { key: 'create', args: {} };
  await store.cases.create(id, { at: AT, by: 'bench', step: id, name, changes: [], sha256: digestOf(state), state });
  const summary: CaseSummary = {
    ...like,
    name: `Quay lot ${number}`,
    failure: FAILURES[number % FAILURES.length] ?? like.failure,
    kinds: [KINDS[number % KINDS.length] ?? ''],
    claims: [...like.claims, `${5 + (number % 16)} V ${1 + (number % 3)} A`],
    marks: like.marks.map((mark) => ({ ...mark, margin: mark.margin === null ? null : mark.margin * (1 + (number % 97) / 97) })),
  };
  await store.cases.writeSummary(id, summary);
  return summary;
}

/** What a list in memory would do for one filter: narrow, sort, count. */
function inMemory(summaries: readonly CaseSummary[]): number {
  const found = summaries.filter(({ failure, name }) => failure === 'Unsafe' && name.toLowerCase().includes('quay'));
  const counts = new Map<string, number>();
  for (const { claims } of found) for (const claim of claims) counts.set(claim, (counts.get(claim) ?? 0) + 1);
  return found.toSorted((a, b) => (a.name < b.name ? -1 : 1)).slice(0, PAGE).length + counts.size;
}

async function measured(work: () => Promise<unknown>): Promise<Measured> {
  await work();
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.min(ROUNDS - 1, Math.floor(ROUNDS * share))] ?? 0;
  return { min: times[0] ?? 0, median: at(0.5), spread: at(0.75) - at(0.25) };
}
