import { beforeAll, describe, expect, test } from 'vitest';
import { beck } from '../../scripts/demo/unit/beck.ts';
import { fell } from '../../scripts/demo/unit/fell.ts';
import { type Case, type CaseInput, caseDocument } from '../../src/core/evidence/case.ts';
import { findLevel, harmOf } from '../../src/core/model/choices.ts';
import type { Level, NoModel } from '../../src/core/model/model.ts';
import { planFaults, tolerating } from '../../src/core/model/plans.ts';
import { type CampaignPlan, type FaultResult, runFault, settleHealthy } from '../../src/core/solver/campaign.ts';
import type { Fault } from '../../src/core/solver/fault.ts';
import type { Snapshot } from '../../src/core/solver/request.ts';
import { openBench } from '../../src/core/working/bench/bench.ts';
import { gatherFacts } from '../../src/core/working/facts.ts';

type Planned = Exclude<ReturnType<typeof planFaults>, NoModel>;
const LOAD = 'none';

/** The campaign of a demo unit at its highest mains, looked at for a shorter time; and its healthy circuit without load. */
function settled(unit: typeof fell | typeof beck): { plan: CampaignPlan; healthy: Snapshot } {
  const facts = gatherFacts(openBench(caseDocument.parse(structuredClone(unit().document as CaseInput)) as Case, new Map()));
  const level = findLevel(facts, null) as Level;
  const planned = planFaults(facts, level, harmOf(facts, level)) as Planned;
  // the output rectifier of Fell 12 is beyond its rating while healthy: that must not end a run
  const plan = { ...planned.plan, circuit: tolerating(planned.plan.circuit, new Set(['D5'])), mostS: 0.04 };
  const healthy = settleHealthy(plan, LOAD);
  if (Array.isArray(healthy)) throw new Error(JSON.stringify(healthy));
  return { plan, healthy: healthy as Snapshot };
}

describe('faults of a demo circuit that anyone can reason out, without load', () => {
  let mains: ReturnType<typeof settled>;
  let cube: ReturnType<typeof settled>;
  const run = ({ plan, healthy }: ReturnType<typeof settled>, fault: Fault): FaultResult => runFault(plan, { load: LOAD, fault }, healthy);
  beforeAll(() => {
    mains = settled(fell);
    cube = settled(beck);
  }, 300_000);

  test('an open optocoupler lets the output run up until the output capacitor is beyond its 16 V', () => {
    const result = run(mains, { ref: 'U2', mode: 'open', pin: 'led.1' });
    expect(result.state).toBe('ratingExceeded');
    expect(result.findings).toMatchObject([{ code: 'ratingExceeded', ref: 'C7', limit: 16 }]);
    expect(result.outputMostV).toBeGreaterThan(15.9);
  }, 120_000);

  test('a shorted diode of the bridge blows the fuse', () => {
    const result = run(mains, { ref: 'BD1-1', mode: 'short', pins: ['1', '2'] });
    expect(result.findings.map(({ code, ref }) => `${code} ${ref}`)).toContain('fuseOpened F1');
  }, 120_000);

  test('a shorted optocoupler transistor asks for no pulse: the output never rises', () => {
    const result = run(mains, { ref: 'U2', mode: 'short', pins: ['transistor.1', 'transistor.2'] });
    expect(result.outputMostV).toBeLessThan(12.5);
    expect(result.findings).toEqual([]);
  }, 120_000);

  test('an ordinary capacitor shorted across the barrier puts the mains on the person: tens of milliampere', () => {
    const result = run(cube, { ref: 'C3', mode: 'short', pins: ['1', '2'] });
    // 264 V through the body network of 2 kΩ, weighted: more than a tenth of an ampere; the limits are 0.5 and 5 mA
    expect(result.touchRmsA ?? 0).toBeGreaterThan(0.05);
  }, 120_000);
});
