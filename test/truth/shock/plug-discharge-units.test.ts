import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { FEW, SEED } from '../../property/seed.ts';
import { findingOf, judge } from '../build-case.ts';
import { CONDUCTORS, label } from '../evidence-pieces.ts';

// Invented units, known through and through: a capacitor, a bleeder or none, a probe. What the pins really hold two seconds after unplugging at the
// crest of 264 V is a schoolbook exponential; the limit is IEC 62368-1:2018 table 5 (secondary). Whatever was recorded, a unit that is too high
// never passes and one that is low enough never fails.
type Pins = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'touch'; quantity: 'pinsAfterUnplugging' }>;
const RUNS = FEW / 2;
const CREST = 264 * Math.SQRT2;
const ROWS = [
  [4, 1000],
  [8, 500],
  [12, 350],
  [18, 250],
  [28, 200],
  [41, 150],
  [61, 125],
  [91, 100],
  [170, 75],
  [300, 60],
] as const;

function mayHold(nanofarads: number): number {
  const at = ROWS.findIndex(([row]) => row >= nanofarads);
  if (at < 0) return ROWS.at(-1)![1];
  const [[from, high], [to, low]] = [ROWS[Math.max(at - 1, 0)]!, ROWS[at]!];
  return from === to ? low : high + ((low - high) * (nanofarads - from)) / (to - from);
}

interface Unit {
  readonly nanofarads: number;
  readonly bleeder: number | null;
  readonly probe: number;
  /** Phase at which each try began, as a share of the crest. */
  readonly starts: readonly number[];
  readonly after: number;
  readonly startSeen: boolean;
  readonly probeStated: boolean;
  readonly capacitorRecorded: boolean;
  /** The probe hung on the pins all the time; it must, where a capture shows the start. */
  readonly probeOn: boolean;
}

const UNIT: fc.Arbitrary<Unit> = fc.record({
  nanofarads: fc.double({ min: 10, max: 1000, noNaN: true }),
  bleeder: fc.option(fc.double({ min: 0.2e6, max: 30e6, noNaN: true })),
  probe: fc.constantFrom(10e6, 100e6),
  starts: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 }),
  after: fc.constantFrom(1, 1.9, 2, 2.1, 5),
  startSeen: fc.boolean(),
  probeStated: fc.boolean(),
  capacitorRecorded: fc.boolean(),
  probeOn: fc.boolean(),
});

function left(unit: Unit, start: number, after: number, withProbe: boolean): number {
  const farads = unit.nanofarads * 1e-9;
  const perSecond = (unit.bleeder === null ? 0 : 1 / (unit.bleeder * farads)) + (withProbe ? 1 / (unit.probe * farads) : 0);
  return start * Math.exp(-after * perSecond);
}

function recorded(unit: Unit): Finding {
  const worst = Math.max(...unit.starts) * CREST;
  const read = left(unit, worst, unit.after, unit.startSeen || unit.probeOn);
  const pins: Pins = {
    id: 'pins-1',
    kind: 'touch',
    quantity: 'pinsAfterUnplugging',
    from: 'line',
    method: 'probe',
    day: 'day-1',
    after: `${unit.after} s`,
    value: `${read.toFixed(6)} V ± ${(0.002 * read + 0.001).toFixed(6)} V`,
    under: { mains: '264 V ± 0 V' },
    tries: unit.starts.length,
    ...(unit.startSeen ? { start: `${worst.toFixed(6)} V ± 0.01 V` } : {}),
  };
  const capacitor = {
    id: 'cx1',
    ref: 'CX1',
    kind: 'filmCapacitor',
    safetyClass: 'X2',
    value: `${unit.nanofarads.toFixed(6)} nF`,
    measured: `${unit.nanofarads.toFixed(6)} nF ± 0.001 nF`,
    rating: { tolerance: '0 %' },
    pins: [
      { pin: '1', net: 'line' },
      { pin: '2', net: 'neutral' },
    ],
  } as const;
  const assessment = judge({
    conductors: CONDUCTORS,
    instruments: [
      { id: 'probe', name: 'probe, invented', ...(unit.probeStated ? { inputResistance: `${unit.probe / 1e6} MOhm` } : {}), ranges: [] },
    ],
    days: [{ id: 'day-1', date: '2026-03-05', uses: { residualVoltage: 'probe' }, under: {} }],
    parts: unit.capacitorRecorded ? [{ ...capacitor, pins: [...capacitor.pins] }] : [],
    exhibits: [label({ input: { voltage: '100-240 V' } }), pins],
  });
  return findingOf(assessment, 'shock/plug-discharge@pins');
}

const truth = (unit: Unit): number => left(unit, CREST, 2, false) / mayHold(unit.nanofarads);
const CLOSE = 0.05; // within a twentieth of the limit either outcome can be had from the doubt of the voltage

describe('invented units whose pins are known', () => {
  it('one that is low enough never fails, whatever was written down', () => {
    fc.assert(
      fc.property(UNIT, (unit) => {
        fc.pre(truth(unit) < 1 - CLOSE);
        expect(recorded(unit).outcome).not.toBe('fail');
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });

  it('one that is too high never passes when the start was seen', () => {
    fc.assert(
      fc.property(UNIT, (unit) => {
        fc.pre(truth(unit) > 1 + CLOSE);
        expect(recorded({ ...unit, startSeen: true }).outcome).not.toBe('pass');
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });

  it('nor when it was not, if the tries came within the chance that is left: one of them near the crest', () => {
    fc.assert(
      fc.property(UNIT, (unit) => {
        fc.pre(truth(unit) > 1 + CLOSE);
        expect(recorded({ ...unit, startSeen: false, starts: [...unit.starts, 1] }).outcome).not.toBe('pass');
      }),
      { seed: SEED, numRuns: RUNS },
    );
  });

  it('with everything recorded and a light probe most units are settled, so that the rows above say something', () => {
    const outcomes = fc
      .sample(UNIT, { seed: SEED, numRuns: RUNS })
      .map((unit) => recorded({ ...unit, startSeen: true, probeStated: true, capacitorRecorded: true, probe: 100e6, after: 2 }).outcome);
    expect(outcomes.filter((outcome) => outcome === 'pass').length).toBeGreaterThan(RUNS / 10);
    expect(outcomes.filter((outcome) => outcome === 'fail').length).toBeGreaterThan(RUNS / 10);
    expect(outcomes.filter((outcome) => outcome !== 'pass' && outcome !== 'fail').length).toBeLessThan(RUNS / 5);
  });
});
