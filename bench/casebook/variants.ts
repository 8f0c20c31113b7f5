import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import { type CaseSummary, toSummary } from '../../src/app/casebook/case-summary.ts';
import { casebookCaseSource } from '../../src/app/casebook/casebook-case-source.ts';
import type { CasebookStore } from '../../src/app/casebook/casebook-store.ts';
import { TableShelf } from '../../src/app/casebook/table-shelf.ts';
import { assess } from '../../src/core/assess/assess.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';

/** The demo cases with other evidence left out each time, every one judged for itself: what a case lacks decides both of its words. */
export interface Variant {
  readonly state: CaseState;
  readonly summary: CaseSummary;
}

const EXAMPLES = 'examples';

interface Document {
  readonly exhibits: readonly unknown[];
  readonly files: readonly { readonly path: string }[];
}

export async function makeVariants(store: CasebookStore, each: number): Promise<readonly Variant[]> {
  const shelf = new TableShelf();
  const random = seeded(SEED);
  const variants: Variant[] = [];
  for (const name of readdirSync(EXAMPLES)) {
    const document = JSON.parse(readFileSync(join(EXAMPLES, name, 'case.json'), 'utf8')) as Document & CaseState['case'];
    for (const { path } of document.files) {
      const upload = await store.files.begin(new Date().toISOString());
      await upload.write(readFileSync(join(EXAMPLES, name, path)));
      await upload.finish();
    }
    for (let number = 0; number < each; number += 1) {
      const share = number / each; // the first has everything, the last nearly nothing
      const exhibits = document.exhibits.filter(() => random() >= share);
      const state = { case: { ...document, exhibits }, drafts: {} } as unknown as CaseState;
      const one = parseCase(state.case);
      if (Array.isArray(one)) continue; // something that is left names what was left out
      const { tables } = await shelf.tablesOf(one, casebookCaseSource(state, store.files));
      variants.push({ state, summary: toSummary(one, assess(one, tables), 1) });
    }
  }
  return variants;
}

const SEED = 20_261_125;

/** Marsaglia's 32-bit xorshift (13, 17, 5), so that every run fills the same casebook. */
function seeded(seed: number): () => number {
  let x = seed;
  return () => {
    x ^= x << 13;
    x ^= x >>> 17;
    x ^= x << 5;
    return (x >>> 0) / 2 ** 32;
  };
}
