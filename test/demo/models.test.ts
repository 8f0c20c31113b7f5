import { describe, expect, test } from 'vitest';
import type { DemoCase } from '../../scripts/demo/demo-unit.ts';
import { BENCH_V } from '../../scripts/demo/demo-unit.ts';
import { BECK, beck } from '../../scripts/demo/unit/beck.ts';
import { FELL, fell } from '../../scripts/demo/unit/fell.ts';
import { MOSS, moss } from '../../scripts/demo/unit/moss.ts';
import { TARN, tarn } from '../../scripts/demo/unit/tarn.ts';
import {
  filledShare,
  operatingAt,
  peakFluxT,
  reflectedV,
  temperaturesAt,
  touchA,
  transferableW,
  turnsRatio,
  type UnitModel,
} from '../../scripts/demo/unit-model.ts';
import { toReadTable } from '../../src/app/to-read-table.ts';
import { assess } from '../../src/core/assess/assess.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';

const MODELS: readonly { name: string; model: UnitModel; setV: number; fullA: number; saturatesAtT: number }[] = [
  { name: 'Tarn 30', model: TARN, setV: 20.24, fullA: 1.5, saturatesAtT: 0.39 },
  { name: 'Fell 12', model: FELL, setV: 12.2, fullA: 1.7, saturatesAtT: 0.39 },
  { name: 'Beck 5', model: BECK, setV: 5.2, fullA: 1, saturatesAtT: 0.39 },
  { name: 'Moss Trio', model: MOSS, setV: 5.12, fullA: 1.8, saturatesAtT: 0.39 },
];

function judge({ document, files }: DemoCase): Assessment {
  const one = parseCase(document);
  if (Array.isArray(one)) throw new Error(JSON.stringify(one));
  const tables = new Map(
    one.files.flatMap(({ path, sha256, settled }) => {
      const read = readInstrumentFile(files[path]!, settled ?? {});
      return isRefusal(read) ? [] : [[sha256, toReadTable(read)] as const];
    }),
  );
  return assess(one, tables);
}

describe.each(MODELS)('the model of $name', ({ model, setV, fullA, saturatesAtT }) => {
  test('gives out no more energy than it takes in', () => {
    for (let a = 0; a <= fullA * 1.5; a += fullA / 10) {
      const point = operatingAt(model, setV, a);
      expect(point.inputW).toBeCloseTo(point.outputW + point.lossW, 12);
      expect(point.lossW).toBeGreaterThan(0);
    }
  });
  test('passes no more than its transformer can', () => {
    const point = operatingAt(model, setV, fullA * 1.2);
    expect(point.inputW - model.idleW).toBeLessThanOrEqual(transferableW(model, Math.SQRT2 * BENCH_V) * (1 + 1e-9));
  });
  test('keeps its core below saturation at 100 °C and above the flux of a coil that is not used', () => {
    expect(peakFluxT(model)).toBeLessThan(saturatesAtT);
    expect(peakFluxT(model)).toBeGreaterThan(0.1);
  });
  test('reflects a voltage that its turns and its output ask for', () => {
    expect(reflectedV(model, setV)).toBeCloseTo(
      (model.transformer.primaryTurns / model.transformer.secondaryTurns) * (setV + model.rectifierV),
      9,
    );
    expect(turnsRatio(model)).toBeGreaterThan(1);
  });
  test('leaves a gap between cycles at 230 V, as its power limit assumes', () => {
    expect(filledShare(model, Math.SQRT2 * BENCH_V, setV)).toBeLessThan(1);
  });
  test('is hotter inside than outside and warmer with more load', () => {
    const idle = temperaturesAt(model, operatingAt(model, setV, 0), 25);
    const full = temperaturesAt(model, operatingAt(model, setV, fullA), 25);
    expect(full.windingC).toBeGreaterThan(full.caseC);
    expect(full.caseC).toBeGreaterThan(idle.caseC);
    expect(idle.caseC).toBeGreaterThan(25);
  });
  test('lets no more through its barrier than its capacitor passes', () => {
    expect(touchA(model, 230, 50)).toBeLessThanOrEqual(2 * Math.PI * 50 * model.barrierF * 230);
  });
});

describe('the verdict of a demo unit', () => {
  test('Tarn 30: nothing found wrong, shock and fire partly examined', () => {
    const { verdict, findings } = judge(tarn());
    expect(verdict.failure).toBe('Nothing found wrong');
    expect(verdict.doubtful).toBeNull();
    expect(verdict.coverage).toEqual({ shock: 'partly examined', fire: 'partly examined' });
    for (const finding of findings.filter(({ check }) => check === 'shock/winding-insulation' || check === 'shock/barrier'))
      expect(finding.rung, finding.id).toBe('reinforcedMet');
  });
  test('Fell 12: Unsafe, because its creepage meets basic and not reinforced, and hot', () => {
    const { verdict, findings } = judge(fell());
    expect(verdict.failure).toBe('Unsafe');
    expect(verdict.decidedBy).toContain('shock/creepage@hv-minus~out-plus');
    expect(findings.find(({ id }) => id === 'shock/creepage@hv-minus~out-plus')?.rung).toBe('basicNotReinforced');
    expect(findings.find(({ check }) => check === 'fire/winding-temperature')?.outcome).toBe('fail');
    expect(findings.find(({ id }) => id === 'shock/winding-insulation@t1:p2~s')?.rung).toBe('basicNotReinforced');
  });
  test('Beck 5: Dangerous, by creepage below basic and an ordinary ceramic across the barrier', () => {
    const { verdict, findings } = judge(beck());
    expect(verdict.failure).toBe('Dangerous');
    expect(verdict.decidedBy).toContain('shock/bridging-part@c3');
    expect(verdict.decidedBy).toContain('shock/creepage@hv-minus~out-plus');
    expect(findings.find(({ id }) => id === 'shock/barrier@hand')?.rung).toBe('bridgedOrAbsent');
    // an enamelled secondary under one tape that stops short: nothing between it and the primary
    expect(findings.find(({ id }) => id === 'shock/winding-insulation@t1:p~s')?.rung).toBe('bridgedOrAbsent');
    expect(findings.find(({ check }) => check === 'shock/creepage')?.rung).toBe('belowBasic');
  });
  test('Moss Trio: below its claims, and nobody looked at shock', () => {
    const { verdict } = judge(moss());
    expect(verdict.failure).toBe('Below its claims');
    expect(verdict.coverage.shock).toBe('not examined');
  });
});

describe('a change in the model moves the verdict', () => {
  test('a wider gap on the board of Fell 12 takes the shock finding away', () => {
    const moved = judge(fell({ ...FELL, boardMm: 6.8 }));
    expect(moved.findings.find(({ check }) => check === 'shock/creepage')?.outcome).toBe('pass');
  });
  test('a gap below basic makes Fell 12 Dangerous', () => expect(judge(fell({ ...FELL, boardMm: 1.9 })).verdict.failure).toBe('Dangerous'));
  test('a larger capacitor across the barrier of Tarn 30 makes it Unsafe by its touch current', () => {
    const moved = judge(tarn({ ...TARN, barrierF: 12e-9 }));
    expect(moved.verdict.failure).toBe('Unsafe');
    expect(moved.verdict.decidedBy.some((id) => id.startsWith('shock/touch-current'))).toBe(true);
  });
  test('more inductance lets Moss Trio hold its claim: the transformer is what limits it', () => {
    const moved = judge(moss({ ...MOSS, transformer: { ...MOSS.transformer, inductanceH: 1.5e-3 } }));
    expect(moved.findings.find(({ id }) => id === 'delivery/current@a1~5v')?.outcome).toBe('pass');
  });
});
