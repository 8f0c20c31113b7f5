import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { largeCase } from '../../bench/large-case.ts';
import { GOLDEN } from '../../scripts/golden.ts';
import { applyChanges, valueAtPlace } from '../../src/app/casebook/apply-changes.ts';
import { openCase } from '../../src/app/open-case.ts';
import { assess } from '../../src/core/assess/assess.ts';
import { type Assessor, createAssessor } from '../../src/core/assess/create-assessor.ts';
import type { Results } from '../../src/core/assess/fresh-results.ts';
import type { Case } from '../../src/core/evidence/case.ts';
import { createCaseParser } from '../../src/core/evidence/create-case-parser.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { Memory } from '../../src/core/recall/memory.ts';
import { Reads } from '../../src/core/recall/reads.ts';
import { type Watch, watchOf } from '../../src/core/recall/watch.ts';
import { createDigest, digestOf } from '../../src/core/result/digest.ts';
import { drawsFor } from '../../src/core/uncertainty/draws.ts';
import type { Tables } from '../../src/core/working/bench/bench.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';
import { SEED } from '../property/seed.ts';
import { type Json, poolOf, randomEdit } from './random-edits.ts';

const EDITS = 24; // per case, at least
const UNDONE = 0.2; // share of them that is taken back and done again
const LARGE = 'the large case';
const MOST_TRIES = 4000;

interface Subject {
  readonly name: string;
  readonly document: Json;
  readonly tables: Tables;
  readonly results: Results;
}

interface Revision {
  readonly document: Json;
  readonly one: Case;
  /** Of the judgement that remembers nothing. */
  readonly plain: string;
  readonly what: string;
}

/** Edits that are taken, and after each few of them undo and redo; judged plainly once, for every assessor that is tried against them. */
function historyOf({ name, document, tables, results }: Subject, documents: readonly Json[], random: () => number): Revision[] {
  const pool = poolOf(documents);
  const parse = createCaseParser();
  const revisions: Revision[] = [];
  const add = (next: Json, what: string): boolean => {
    const one = parse(next);
    if (Array.isArray(one)) return false;
    const fresh = parseCase(structuredClone(next)) as Case;
    expect(one).toEqual(fresh);
    revisions.push({ document: next, one: frozen(one), plain: JSON.stringify(assess(fresh, tables, results)), what: `${name}: ${what}` });
    return true;
  };
  add(frozen(document), 'as it is');
  for (let tries = 0; tries < MOST_TRIES && revisions.length < EDITS; tries += 1) {
    const now = revisions.at(-1)!.document;
    const next = frozen(randomEdit(now, pool, random));
    if (next === now || !add(next, `edit ${tries}`)) continue;
    if (random() < UNDONE) {
      add(now, `edit ${tries} undone`);
      add(next, `edit ${tries} redone`);
    }
  }
  expect(revisions.length).toBeGreaterThanOrEqual(EDITS);
  return revisions;
}

/** The first revision at which what an assessor says is not what the plain judgement says. */
function firstStale(assessor: Assessor, revisions: readonly Revision[], { tables, results }: Subject): string | null {
  for (const { one, plain, what } of revisions) {
    let text: string;
    try {
      text = JSON.stringify(assessor(one, tables, results));
    } catch (error) {
      text = String(error); // two steps of one name, one of them stale
    }
    if (text !== plain) return what;
  }
  return null;
}

function frozen<T>(value: T): T {
  if (
    typeof value === 'object' &&
    value !== null &&
    watchOf(value) === undefined &&
    !Object.isFrozen(value) &&
    !ArrayBuffer.isView(value)
  ) {
    Object.freeze(value);
    for (const inner of value instanceof Map ? value.values() : Object.values(value)) frozen(inner);
  }
  return value;
}

/** Whatever is remembered can no longer be changed: a work that does it throws. */
class FreezingMemory extends Memory {
  override recall<S extends object, G extends readonly object[], T>(work: (source: S, ...given: G) => T, watch: Watch, given: G): T {
    return frozen(super.recall(work, watch, given));
  }
}

/** Writes down nothing that is read in one member: a dependency that somebody forgot. */
function forgetting(root: string, member: string): Assessor {
  class ForgetfulReads extends Reads {
    override placeOf(name: string, of: PropertyKey): Map<unknown, unknown> {
      return name === root && of === member ? new Map<unknown, unknown>() : super.placeOf(name, of);
    }
  }
  return createAssessor(new Memory(() => new ForgetfulReads()));
}

const subjects: { subject: Subject; revisions: Revision[] }[] = [];

beforeAll(async () => {
  const random = drawsFor(`edits ${SEED}`);
  const all: Subject[] = [];
  for (const name of GOLDEN) {
    const opened = await openCase(caseFolder(join('examples', name)));
    if (Array.isArray(opened)) throw new Error(JSON.stringify(opened));
    const document = JSON.parse(readFileSync(join('examples', name, 'case.json'), 'utf8')) as Json;
    all.push({ name, document, tables: opened.tables, results: opened.results });
  }
  const fell = all.find(({ name }) => name === 'fell-12')!;
  all.push({ ...fell, name: LARGE, document: JSON.parse(JSON.stringify(largeCase())) as Json });
  const documents = all.map(({ document }) => document);
  for (const subject of all) subjects.push({ subject, revisions: historyOf(subject, documents, random) });
}, 300_000);

describe('a judgement that remembers', () => {
  it('gives the bytes of one that does not, after every edit, undo and redo', () => {
    for (const { subject, revisions } of subjects) expect(firstStale(createAssessor(new FreezingMemory()), revisions, subject)).toBeNull();
  });

  it('gives them too when the case is another one each time', () => {
    const assessor = createAssessor();
    for (let at = 0; at < EDITS; at += 1)
      for (const { subject, revisions } of subjects) {
        const { one, plain, what } = revisions[at]!;
        expect(JSON.stringify(assessor(one, subject.tables, subject.results)) === plain, what).toBe(true);
      }
  });

  it('gives them from a case of which no part is the object of before', () => {
    const { subject, revisions } = subjects[0]!;
    const apart = revisions.map((revision) => ({ ...revision, one: structuredClone(revision.one) }));
    expect(firstStale(createAssessor(), apart, subject)).toBeNull();
  });

  it('judges nothing again of a case that did not change', () => {
    for (const { subject, revisions } of subjects) {
      const { one } = revisions[0]!;
      const assessor = createAssessor();
      const [first, second] = [assessor(one, subject.tables, subject.results), assessor(one, subject.tables, subject.results)];
      expect(second.findings.every((finding, index) => finding === first.findings[index])).toBe(true);
      expect(second.curves).toBe(first.curves);
    }
  });

  it('takes the hash of a case from the texts of its parts', () => {
    for (const { revisions } of subjects) {
      const digest = createDigest();
      for (const { one } of revisions) expect(digest(one)).toBe(digestOf(one));
    }
  });
});

/** Edits of the large case that a judgement without the dependency would not notice. */
const FORGOTTEN: readonly (readonly [root: string, member: string, at: string, to: Json])[] = [
  ['bench', 'one', '/setting/altitude', '3000 m'],
  ['bench', 'kinds', '/exhibits/gap-3/value', '0.2 mm'],
  ['bench', 'days', '/days/day-1/uses/temperature', 'load-1'],
  ['bench', 'conductors', '/conductors/net-2/name', 'another net'],
  ['facts', 'setting', '/setting/altitude', '3000 m'],
  ['facts', 'levels', '/exhibits/sweep-12/table/rows/r20/cells/1', '3.000'],
  ['facts', 'spots', '/exhibits/spots-1/rows/case-top/value', '140 °C'],
];

describe('the comparison would show a dependency that was forgotten', () => {
  it.each(FORGOTTEN)('of %s on %s, when %s becomes %s', (root, member, at, to) => {
    const { subject } = subjects.find(({ subject: { name } }) => name === LARGE)!;
    const before = { case: subject.document } as { case: Json };
    const place = `/case${at}`;
    const { state, done } = applyChanges(before, [{ at: place, was: valueAtPlace(before, place), to }]);
    expect(done).toHaveLength(1);
    const parse = createCaseParser();
    const revisions = [before, state].map(({ case: document }) => {
      const one = parse(document) as Case;
      return { document, one, plain: JSON.stringify(assess(one, subject.tables, subject.results)), what: at };
    });
    expect(firstStale(createAssessor(), revisions, subject)).toBeNull();
    expect(firstStale(forgetting(root, member), revisions, subject)).toBe(at);
  });
});
