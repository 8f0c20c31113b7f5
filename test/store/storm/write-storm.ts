/** Edits the cases of a casebook without a pause and says every edit after it was acknowledged: FILE SEED. Runs until it is killed. */
import { writeSync } from 'node:fs';
import { stateAt } from '../../../src/app/casebook/state-at.ts';
import { isRefusal } from '../../../src/core/quantity/refusal.ts';
import { edit, emptyState, firstOf, minute, summaryOf } from '../example-case.ts';
import { mustOpen } from '../scratch-casebook.ts';

const CASES = 3;
const KEEP_EVERY = 20; // revisions between kept states
const SUMMARY_EVERY = 7;

const [path, seed] = process.argv.slice(2) as [string, string];
const store = await mustOpen(path);
const ids = Array.from({ length: CASES }, (_, n) => `storm-${n}`);
for (const id of ids) if ((await store.cases.head(id)) === null) await store.cases.create(id, firstOf(emptyState(id)));

await Promise.all(ids.map(storm));

async function storm(id: string): Promise<never> {
  const found = await stateAt(store, id);
  if (found === null) throw new Error(`${id} is gone`);
  let { state } = found;
  for (let revision = found.head.revision; ; revision += 1) {
    const was = state.case['sample'];
    const next = edit(
      state,
      [{ at: '/case/sample', was, to: `round ${seed}, edit ${revision}, ${'x'.repeat(revision % 300)}` }],
      minute(revision),
    );
    const kept = revision % KEEP_EVERY === 0 ? next.state : undefined;
    const saved = await store.cases.append(id, revision, next.written, kept);
    if (saved === 'behind' || isRefusal(saved)) throw new Error(`not taken: ${JSON.stringify(saved)}`);
    writeSync(1, `${id} ${saved.revision} ${saved.sha256}\n`);
    state = next.state;
    if (revision % SUMMARY_EVERY === 0) await store.cases.writeSummary(id, summaryOf({ revision: saved.revision, sample: `${revision}` }));
  }
}
