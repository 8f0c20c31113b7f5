import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { createDesk } from '../../src/app/casebook/create-desk.ts';
import { importFolder } from '../../src/app/casebook/import-folder.ts';
import { keepRun } from '../../src/app/circuit/keep-run.ts';
import { keptRun } from '../../src/app/circuit/kept-run.ts';
import { simulationKey } from '../../src/core/assess/circuit-keys.ts';
import { type Case, caseDocument } from '../../src/core/evidence/case.ts';
import { SIMULATION_FORMAT, SIMULATION_RECIPE, type Simulation } from '../../src/core/evidence/computed/simulation.ts';
import { findLevel } from '../../src/core/model/choices.ts';
import type { Level } from '../../src/core/model/model.ts';
import { planPoints, type SimulationPlan } from '../../src/core/model/plans.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { openBench } from '../../src/core/working/bench/bench.ts';
import { gatherFacts } from '../../src/core/working/facts.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';
import { mustOpen, scratchFolder } from '../store/scratch-casebook.ts';

let scratch: ReturnType<typeof scratchFolder>;
beforeEach(() => {
  scratch = scratchFolder();
});
afterEach(() => scratch.drop());

const AT = '2026-03-09T12:00:00Z';

/** A result without points, under the key of the circuit as it is: what it holds is not the question here. */
function resultOf(name: string) {
  const one = caseDocument.parse(JSON.parse(readFileSync(join('examples', name, 'case.json'), 'utf8'))) as Case;
  const facts = gatherFacts(openBench(one, new Map()));
  const level = findLevel(facts, null) as Level;
  const key = simulationKey(planPoints(facts, level) as SimulationPlan);
  const result: Simulation = {
    format: SIMULATION_FORMAT,
    recipe: SIMULATION_RECIPE,
    key,
    level: { ...level },
    assumptions: [],
    leftOut: [],
    points: [],
  };
  return keptRun(`points-${level.id}`, result);
}

// Tarn 30 has no computed results yet, Fell 12 has a fitted soak
test.each(['tarn-30', 'fell-12'])(
  'a result of %s is kept in its casebook, judged as fresh, and replaced by the next of its kind',
  async (name) => {
    const store = await mustOpen(scratch.path);
    const taken = await importFolder(store, caseFolder(join('examples', name)), { at: AT, by: 'test', step: 'import' });
    if (isRefusal(taken) || Array.isArray(taken)) throw new Error(JSON.stringify(taken));
    const desk = createDesk(store, { now: () => AT, newId: () => 'x' });
    const kept = resultOf(name);
    for (const at of [AT, '2026-03-09T13:00:00Z']) {
      const answer = await keepRun({ store, desk }, name, kept, { by: 'test', at });
      expect(isRefusal(answer)).toBe(false);
    }
    const judged = await desk.assess(name);
    if (isRefusal(judged)) throw new Error(JSON.stringify(judged));
    const one = judged.state.case as unknown as Case;
    expect((one.computed ?? []).filter(({ id }) => id === kept.computed.id)).toEqual([kept.computed]);
    expect(one.files.filter(({ id }) => id === kept.attachment.id)).toEqual([kept.attachment]);
    expect(judged.assessment.stale.map(({ computed }) => computed)).not.toContain(kept.computed.id);
    expect(judged.assessment.findings.some(({ id }) => id.startsWith('fire/switch-stress@'))).toBe(true);
    await store.close();
  },
);
