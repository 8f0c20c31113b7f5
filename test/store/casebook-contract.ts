import { createHash } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { applyChanges } from '../../src/app/casebook/apply-changes.ts';
import { CasebookRefused } from '../../src/app/casebook/casebook-refused.ts';
import type { CasebookStore, CaseQuery } from '../../src/app/casebook/casebook-store.ts';
import { DAWN, edit, emptyState, firstOf, markOf, minute, summaryOf } from './example-case.ts';

/** A database to hold against the contract: how to open an empty casebook of it, and what to do afterwards. */
export interface Candidate {
  open(): Promise<{ store: CasebookStore; done(): Promise<void> }>;
}

const ALL: CaseQuery = { from: 0, count: 100 };

/** What every database behind the port must do; run on real ones only. */
export function casebookContract(name: string, candidate: Candidate): void {
  describe(`a casebook in ${name}`, () => {
    let store: CasebookStore;
    let done: () => Promise<void>;
    beforeEach(async () => {
      ({ store, done } = await candidate.open());
    });
    afterEach(() => done());
    const ids = async (query: Partial<CaseQuery> = {}) => (await store.cases.find({ ...ALL, ...query })).rows.map(({ head }) => head.id);
    const addCase = async (id: string, about: Parameters<typeof summaryOf>[0] = {}) => {
      await store.cases.create(id, firstOf(emptyState(id)));
      await store.cases.writeSummary(id, summaryOf({ product: id, name: id, ...about }));
    };

    describe('cases', () => {
      test('a new case stands at revision 1 and reads back as it was given', async () => {
        const state = emptyState('cube');
        expect(await store.cases.create('cube', firstOf(state))).toEqual({
          id: 'cube',
          revision: 1,
          created: DAWN,
          changed: DAWN,
          archived: null,
          removed: null,
        });
        expect(await store.cases.read('cube')).toMatchObject({ from: { revision: 1, state }, since: [] });
      });
      test('an id is given once, also after its case was removed', async () => {
        await store.cases.create('cube', firstOf(emptyState('cube')));
        await store.cases.remove('cube', minute(1));
        expect(await store.cases.create('cube', firstOf(emptyState('cube')))).toMatchObject({ refused: true, code: 'case-exists' });
      });
      test('a case that is not there is not found, and nothing can be added to it', async () => {
        expect(await store.cases.head('nobody')).toBeNull();
        expect(await store.cases.read('nobody')).toBeNull();
        expect(await store.cases.append('nobody', 1, edit(emptyState('x'), []).written)).toMatchObject({ code: 'case-missing' });
      });
      test('an edit becomes the next revision, with every word of it kept', async () => {
        const state = emptyState('cube');
        await store.cases.create('cube', firstOf(state));
        const { written } = edit(state, [{ at: '/case/sample', was: 'A', to: 'B' }], minute(3));
        const named = { ...written, name: { key: 'undo', args: { place: '/case/sample', n: 2 } }, of: 'step-7' };
        expect(await store.cases.append('cube', 1, named)).toEqual({ ...named, revision: 2 });
        expect(await store.cases.revisions('cube', 2)).toEqual([{ ...named, revision: 2 }]);
        expect(await store.cases.head('cube')).toMatchObject({ revision: 2, changed: minute(3) });
      });
      test('who writes from an old revision is behind, and nothing is added', async () => {
        const state = emptyState('cube');
        await store.cases.create('cube', firstOf(state));
        const { written } = edit(state, [{ at: '/case/sample', was: 'A', to: 'B' }]);
        await store.cases.append('cube', 1, written);
        expect(await store.cases.append('cube', 1, written)).toBe('behind');
        expect(await store.cases.revisions('cube', 1)).toHaveLength(2);
      });
      test('of many writers at once on one revision exactly one is taken', async () => {
        const state = emptyState('cube');
        await store.cases.create('cube', firstOf(state));
        const tries = Array.from({ length: 12 }, (_, n) => edit(state, [{ at: '/case/sample', was: 'A', to: `S${n}` }]).written);
        const results = await Promise.all(tries.map((written) => store.cases.append('cube', 1, written)));
        expect(results.filter((result) => result === 'behind')).toHaveLength(11);
        expect((await store.cases.head('cube'))?.revision).toBe(2);
      });
      test('every state there ever was can be read again from a kept state and the revisions after it', async () => {
        let state = emptyState('cube');
        await store.cases.create('cube', firstOf(state));
        const seen = [state];
        for (let n = 1; n < 12; n += 1) {
          const next = edit(state, [{ at: '/case/sample', was: n === 1 ? 'A' : `S${n - 1}`, to: `S${n}` }], minute(n));
          await store.cases.append('cube', n, next.written, n % 5 === 0 ? next.state : undefined);
          seen.push(next.state);
          state = next.state;
        }
        for (const [index, expected] of seen.entries()) {
          const read = await store.cases.read('cube', index + 1);
          expect(read?.since.length).toBeLessThan(5);
          expect(
            applyChanges(
              read!.from.state,
              read!.since.flatMap(({ changes }) => changes),
            ).state,
          ).toEqual(expected);
        }
        expect((await store.cases.states('cube')).map(({ revision }) => revision)).toEqual([1, 6, 11]);
        expect(await store.cases.revisions('cube', 3, 2)).toMatchObject([{ revision: 3 }, { revision: 4 }]);
      });
      test('removed, a case is in no list and takes no edit; restored, it is whole', async () => {
        await addCase('cube');
        expect(await store.cases.remove('cube', minute(2))).toBe(true);
        expect(await store.cases.remove('nobody', minute(2))).toBe(false);
        expect(await ids()).toEqual([]);
        expect(await store.cases.append('cube', 1, edit(emptyState('cube'), []).written)).toMatchObject({ code: 'case-missing' });
        expect(await store.cases.restore('cube')).toMatchObject({ removed: null, revision: 1 });
        expect(await ids()).toEqual(['cube']);
      });
      test('archived, a case is in the list of archived ones only', async () => {
        await addCase('cube');
        await addCase('brick');
        expect(await store.cases.setArchived('cube', minute(2))).toMatchObject({ archived: minute(2) });
        expect(await ids()).toEqual(['brick']);
        expect(await ids({ archived: true })).toEqual(['cube']);
        expect(await store.cases.setArchived('nobody', null)).toBeNull();
      });
      test('a case with its whole history comes in at once, and not where its id is taken', async () => {
        let state = emptyState('cube');
        await store.cases.create('cube', firstOf(state));
        for (let n = 1; n < 4; n += 1) {
          const next = edit(state, [{ at: '/case/sample', was: n === 1 ? 'A' : `S${n - 1}`, to: `S${n}` }], minute(n));
          await store.cases.append('cube', n, next.written);
          state = next.state;
        }
        const bytes = new TextEncoder().encode('{}');
        const published = { revision: 3, at: minute(3), sha256: createHash('sha256').update(bytes).digest('hex'), bytes };
        const history = {
          archived: minute(9),
          revisions: await store.cases.revisions('cube', 1),
          states: await store.cases.states('cube'),
          assessments: [published],
        };
        expect(await store.cases.admit('cube', history)).toMatchObject({ code: 'case-exists' });
        expect(await store.cases.admit('twin', history)).toMatchObject({ id: 'twin', revision: 4, archived: minute(9), created: DAWN });
        expect(await store.cases.revisions('twin', 1)).toEqual(history.revisions);
        expect(await store.cases.assessments('twin')).toEqual([published]);
        expect((await store.check()).wrong).toEqual([]);
      });
      test('what a screen remembers is kept by key and can be taken away', async () => {
        await addCase('cube');
        await store.cases.writeScreen('cube', 'open', '["load"]');
        await store.cases.writeScreen('cube', 'open', '["heat"]');
        await store.cases.writeScreen('cube', 'seen', 'yes');
        await store.cases.writeScreen('cube', 'seen', null);
        expect(await store.cases.readScreen('cube')).toEqual({ open: '["heat"]' });
        await expect(store.cases.writeScreen('nobody', 'a', 'b')).rejects.toThrow(CasebookRefused);
      });
      test('a published Assessment stays as its bytes; the same twice is one', async () => {
        await addCase('cube');
        const bytes = new Uint8Array([123, 125, 10]);
        const kept = { revision: 1, at: minute(4), sha256: createHash('sha256').update(bytes).digest('hex'), bytes };
        await store.cases.keepAssessment('cube', kept);
        await store.cases.keepAssessment('cube', { ...kept, at: minute(5) });
        expect(await store.cases.assessments('cube')).toEqual([kept]);
        await expect(store.cases.keepAssessment('cube', { ...kept, revision: 9 })).rejects.toThrow(CasebookRefused);
      });
    });

    describe('finding', () => {
      beforeEach(async () => {
        await addCase('tarn', {
          failure: 'Nothing found wrong',
          claims: ['20 V 1.5 A', '5 V 3 A'],
          kinds: ['usbC'],
          marks: [markOf('delivery/held-current', 'pass', 0.9), markOf('shock/clearance', 'pass', 0.6)],
        });
        await addCase('fell', {
          name: 'Féll strip adapter',
          failure: 'Unsafe',
          kinds: ['barrel'],
          claims: ['12 V 2 A'],
          coverage: { shock: 'examined', fire: 'partly examined' },
          cells: { shock: 'ss', fire: 'sn' },
          marks: [markOf('delivery/held-current', 'fail', 1.4), markOf('shock/clearance', 'fail', 1.2), markOf('fire/fuse', 'pass', null)],
        });
        await addCase('beck', {
          failure: 'Dangerous',
          coverage: { shock: 'not examined', fire: 'partly examined' },
          cells: { shock: 'nn', fire: 'sa' },
          marks: [markOf('shock/clearance', 'fail', null)],
        });
        await store.cases.create('moss', firstOf(emptyState('moss'), minute(30)));
      });
      test('every word of a search must be found, whatever its case and accents', async () => {
        expect(await ids({ search: 'FELL 12' })).toEqual(['fell']);
        expect(await ids({ search: 'adapter féll' })).toEqual(['fell']);
        expect(await ids({ search: 'fell tarn' })).toEqual([]);
        expect(await ids({ search: 'mos' })).toEqual(['moss']);
        expect(await ids({ search: '%' })).toEqual([]);
      });
      test('filters narrow by word, worse coverage, failed hazard, kind and claim; several words of one filter widen', async () => {
        expect(await ids({ failure: ['Unsafe', 'Dangerous'], sort: 'name' })).toEqual(['beck', 'fell']);
        expect(await ids({ coverage: ['partly examined'] })).toEqual(['fell']);
        expect(await ids({ hazard: ['shock'], sort: 'name' })).toEqual(['beck', 'fell']);
        expect(await ids({ hazard: ['fire'] })).toEqual([]);
        expect(await ids({ hazard: ['shock'], kind: ['barrel'] })).toEqual(['fell']);
        expect(await ids({ claim: ['5 V 3 A'] })).toEqual(['tarn']);
      });
      test('each choice of a filter says how many cases it would leave, the other filters kept', async () => {
        const { total, counts } = await store.cases.find({ ...ALL, failure: ['Unsafe'] });
        expect(total).toBe(1);
        expect(counts.failure).toEqual({ Dangerous: 1, Unsafe: 1, 'Nothing found wrong': 1 });
        expect(counts.hazard).toEqual({ delivery: 1, shock: 1 });
        expect(counts.kind).toEqual({ barrel: 1 });
        expect(counts.claim).toEqual({ '12 V 2 A': 1 });
        expect(counts.coverage).toEqual({ 'partly examined': 1 });
      });
      test('the worst verdict comes first, a case without one last', async () => {
        expect(await ids({ sort: 'verdict' })).toEqual(['beck', 'fell', 'tarn', 'moss']);
      });
      test('the least examined comes first', async () => {
        expect(await ids({ sort: 'leastExamined' })).toEqual(['beck', 'fell', 'tarn', 'moss']);
      });
      test('sorted by a margin, a failure without a ratio is beyond every ratio, and what has no such finding is last', async () => {
        expect(await ids({ sort: { margin: 'shock/clearance' } })).toEqual(['beck', 'fell', 'tarn', 'moss']);
        expect(await ids({ sort: { margin: 'delivery/held-current' } })).toEqual(['fell', 'tarn', 'beck', 'moss']);
      });
      test('the latest change comes first', async () => {
        expect((await ids({ sort: 'changed' }))[0]).toBe('moss');
      });
      test('pages follow each other without gap or overlap', async () => {
        const pages = [];
        for (let from = 0; from < 4; from += 1) pages.push(...(await ids({ from, count: 1, sort: 'verdict' })));
        expect(pages).toEqual(await ids({ sort: 'verdict' }));
      });
      test('an older summary that arrives late does not take the place of a newer one', async () => {
        await store.cases.writeSummary('tarn', summaryOf({ revision: 3, failure: 'Unsafe', name: 'newer' }));
        await store.cases.writeSummary('tarn', summaryOf({ revision: 2, failure: 'Dangerous', name: 'older' }));
        expect((await store.cases.find({ ...ALL, search: 'tarn' })).rows[0]?.summary?.name).toBe('newer');
        expect(await ids({ search: 'older' })).toEqual([]);
        expect(await ids({ hazard: ['shock'], search: 'tarn' })).toEqual([]);
      });
    });

    describe('files', () => {
      const sha = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
      const keep = async (bytes: Uint8Array, piece: number) => {
        const upload = await store.files.begin(DAWN);
        for (let at = 0; at < bytes.length; at += piece) await upload.write(bytes.subarray(at, at + piece));
        return upload.finish();
      };
      const readAll = async (hash: string) => {
        const chunks: Uint8Array[] = [];
        for await (const chunk of store.files.read(hash)) chunks.push(chunk);
        return { chunks, bytes: Buffer.concat(chunks) };
      };
      const patterned = (length: number) => Uint8Array.from({ length }, (_, at) => (at * 7 + (at >> 8)) & 255);
      const MIB = 1024 * 1024;

      test.each([0, 1, MIB - 1, MIB, MIB + 1, 3 * MIB + 17])('%i bytes come back as they were, under their SHA-256', async (length) => {
        const bytes = patterned(length);
        expect(await keep(bytes, 70_001)).toEqual({ sha256: sha(bytes), bytes: length });
        expect(await store.files.has(sha(bytes))).toEqual({ bytes: length });
        const read = await readAll(sha(bytes));
        expect(sha(read.bytes)).toBe(sha(bytes));
        expect(read.chunks.every((chunk) => chunk.length <= MIB)).toBe(true);
      });
      test('a buffer that the caller uses again does not change what was written', async () => {
        const upload = await store.files.begin(DAWN);
        const buffer = new Uint8Array([1, 2, 3]);
        await upload.write(buffer);
        buffer.fill(9);
        await upload.write(buffer);
        const { sha256 } = await upload.finish();
        expect([...(await readAll(sha256)).bytes]).toEqual([1, 2, 3, 9, 9, 9]);
      });
      test('the same bytes twice are kept once', async () => {
        const [one, two] = [await keep(patterned(5000), 5000), await keep(patterned(5000), 99)];
        expect(two).toEqual(one);
        expect(await store.check()).toMatchObject({ files: 1, bytes: 5000, wrong: [] });
      });
      test('nothing is seen of an upload before its end, and nothing is left of one that was given up', async () => {
        const upload = await store.files.begin(DAWN);
        await upload.write(patterned(MIB + 5));
        expect(await store.check()).toMatchObject({ files: 0, bytes: 0 });
        await upload.abort();
        expect(await store.files.sweep(minute(99))).toBe(0);
      });
      test('leftovers are swept by their age', async () => {
        await (await store.files.begin(minute(1))).write(patterned(10));
        await (await store.files.begin(minute(5))).write(patterned(10));
        expect(await store.files.sweep(minute(3))).toBe(1);
        expect(await store.files.sweep(minute(9))).toBe(1);
      });
      test('two uploads at once do not mix', async () => {
        const all = await Promise.all([patterned(2 * MIB + 1), patterned(MIB + 9).reverse()].map((bytes) => keep(bytes, 300_000)));
        expect(all.map(({ bytes }) => bytes)).toEqual([2 * MIB + 1, MIB + 9]);
        expect((await store.check()).wrong).toEqual([]);
      });
      test('a file that is not there is refused by its hash', async () => {
        expect(await store.files.has('0'.repeat(64))).toBeNull();
        await expect(readAll('0'.repeat(64))).rejects.toThrow(CasebookRefused);
      });
      test('a small picture is kept beside its file', async () => {
        const { sha256 } = await keep(patterned(100), 100);
        expect(await store.files.readDerived(sha256, 'thumb-320')).toBeNull();
        await store.files.writeDerived(sha256, 'thumb-320', 'image/webp', patterned(9));
        await store.files.writeDerived(sha256, 'thumb-320', 'image/webp', patterned(8));
        expect(await store.files.readDerived(sha256, 'thumb-320')).toEqual({ media: 'image/webp', bytes: patterned(8) });
      });
    });

    describe('checking', () => {
      test('a case that names a file which is not kept is found', async () => {
        const state = emptyState('cube');
        await store.cases.create('cube', firstOf(state));
        const file = { id: 'f1', path: 'a.csv', media: 'text/csv', bytes: 1, sha256: 'a'.repeat(64) };
        await store.cases.append('cube', 1, edit(state, [{ at: '/case/files/f1', to: file }]).written);
        const { wrong } = await store.check();
        expect(wrong).toMatchObject([{ code: 'file-missing', place: 'cube', got: 'a'.repeat(64) }]);
      });
      test('a revision with another hash than its state has is found', async () => {
        const state = emptyState('cube');
        await store.cases.create('cube', { ...firstOf(state), sha256: 'b'.repeat(64) });
        expect((await store.check()).wrong).toMatchObject([{ code: 'hash-differs', place: 'cube revision 1' }]);
      });
      test('it counts what it looked at, says how far it is, and can be stopped', async () => {
        await addCase('cube');
        await addCase('brick');
        const shares: number[] = [];
        expect(await store.check((share) => shares.push(share))).toEqual({ cases: 2, revisions: 2, files: 0, bytes: 0, wrong: [] });
        expect(shares.at(-1)).toBe(1);
        await expect(store.check(undefined, AbortSignal.abort())).rejects.toThrow();
      });
    });
  });
}
