import { randomUUID } from 'node:crypto';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import type { CasebookStore } from '../../src/app/casebook/casebook-store.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { digestOf } from '../../src/core/result/digest.ts';
import type { Variant } from './variants.ts';

const NAMES = ['Beck', 'Birk', 'Cleugh', 'Crag', 'Dodd', 'Fell', 'Force', 'Gate', 'Hope', 'Knott', 'Lathe', 'Ling', 'Loft', 'Mere'];
const APART_MS = 60_000; // every case was changed a minute after the one before it
const FIRST = Date.parse('2026-01-01T08:00:00Z');

/** Writes cases the way the desk writes one: created at revision 1 with its state, then its line of the list. Each call is on disk when it returns. */
export async function fill(store: CasebookStore, variants: readonly Variant[], count: number): Promise<void> {
  for (let number = 0; number < count; number += 1) {
    const variant = variants[number % variants.length]!;
    const name = `${NAMES[number % NAMES.length]} ${number}`;
    const id = name.toLowerCase().replace(' ', '-');
    const product = { id, name };
    const state = { ...variant.state, case: { ...variant.state.case, id, product } } as CaseState;
    const at = new Date(FIRST + number * APART_MS).toISOString();
    const head = await store.cases.create(id, {
      at,
      by: 'bench',
      step: randomUUID(),
      name: { key: 'create', args: {} },
      changes: [],
      sha256: digestOf(state),
      state,
    });
    if (isRefusal(head)) throw new Error(JSON.stringify(head));
    await store.cases.writeSummary(id, { ...variant.summary, product: id, name });
  }
}
