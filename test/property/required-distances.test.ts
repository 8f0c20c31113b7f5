import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { roundUpClearance } from '../../src/core/formula/insulation/round-up-clearance.ts';
import { roundUpCreepage } from '../../src/core/formula/insulation/round-up-creepage.ts';
import { clearanceLimits, type DistanceLimits } from '../../src/core/working/insulation/clearance-limits.ts';
import { creepageLimits } from '../../src/core/working/insulation/creepage-limits.ts';
import { settingAt, voltage } from '../worked/setting-at.ts';
import { FEW, MANY, SEED } from './seed.ts';

const RUN = { seed: SEED, numRuns: FEW };
const LAST_BITS = 1e-12;
const CATEGORIES = ['I', 'II', 'III', 'IV'] as const;
const GROUPS = ['I', 'II', 'III'] as const;
const DEGREES = ['1', '2', '3'] as const;

interface Place {
  readonly mains: number;
  readonly peak: number;
  readonly rms: number;
  readonly altitude: number;
  readonly category: (typeof CATEGORIES)[number];
  readonly group: (typeof GROUPS)[number];
  readonly degree: (typeof DEGREES)[number];
}

const place: fc.Arbitrary<Place> = fc.record({
  mains: fc.integer({ min: 50, max: 250 }),
  peak: fc.integer({ min: 10, max: 12_000 }),
  rms: fc.integer({ min: 1, max: 1000 }),
  altitude: fc.integer({ min: 0, max: 5000 }),
  category: fc.constantFrom(...CATEGORIES),
  group: fc.constantFrom(...GROUPS),
  degree: fc.constantFrom(...DEGREES),
});

function clearance(at: Place): DistanceLimits {
  return clearanceLimits(settingAt(at), 'pair', voltage(at.peak, 'peak'), at.degree)!;
}

function creepage(at: Place): DistanceLimits {
  return creepageLimits('pair', voltage(at.rms, 'rms'), at.group, at.degree, clearance(at))!;
}

/** Both distances and both kinds of insulation at once. */
function all(at: Place): number[] {
  const [air, surface] = [clearance(at), creepage(at)];
  return [air.basic, air.reinforced, surface.basic, surface.reinforced].map(({ value }) => value);
}

function expectNotLess(greater: Place, less: Place): void {
  const [more, fewer] = [all(greater), all(less)];
  for (const [index, value] of fewer.entries()) expect(more[index]!).toBeGreaterThanOrEqual(value * (1 - LAST_BITS));
}

/** Two values of one key, the rest alike. */
function grows<K extends 'mains' | 'peak' | 'rms' | 'altitude'>(key: K): void {
  fc.assert(
    fc.property(place, place, (one, two) => {
      expectNotLess({ ...one, [key]: Math.max(one[key], two[key]) }, { ...one, [key]: Math.min(one[key], two[key]) });
    }),
    RUN,
  );
}

describe('required distances', () => {
  it('never shrink with the mains voltage', () => grows('mains'));
  it('never shrink with the peak working voltage', () => grows('peak'));
  it('never shrink with the rms working voltage', () => grows('rms'));
  it('never shrink with altitude', () => grows('altitude'));

  it.each([
    ['overvoltage category', 'category', CATEGORIES],
    ['pollution degree', 'degree', DEGREES],
    ['group of the material', 'group', GROUPS],
  ] as const)('never shrink with the %s', (_, key, steps) => {
    fc.assert(
      fc.property(place, (at) => {
        for (const [index, step] of steps.slice(1).entries()) expectNotLess({ ...at, [key]: step }, { ...at, [key]: steps[index] });
      }),
      RUN,
    );
  });

  it('are longer for reinforced than for basic insulation, at most to twice', () => {
    fc.assert(
      fc.property(place, (at) => {
        const [clearBasic, clearReinforced, creepBasic, creepReinforced] = all(at) as [number, number, number, number];
        expect(clearReinforced).toBeGreaterThan(clearBasic);
        expect(creepReinforced).toBeGreaterThan(creepBasic);
        expect(creepReinforced).toBeLessThanOrEqual(2 * Math.max(creepBasic, clearReinforced) * (1 + LAST_BITS));
      }),
      RUN,
    );
  });

  it('over a surface are never shorter than through the air', () => {
    fc.assert(
      fc.property(place, (at) => {
        const [clearBasic, clearReinforced, creepBasic, creepReinforced] = all(at) as [number, number, number, number];
        expect(creepBasic).toBeGreaterThanOrEqual(clearBasic);
        expect(creepReinforced).toBeGreaterThanOrEqual(clearReinforced);
      }),
      RUN,
    );
  });

  it('of comfort are not shorter than twice the basic creepage that interpolation allows', () => {
    fc.assert(
      fc.property(place, (at) => {
        const limits = creepage(at);
        const comfort = limits.others.find(({ name }) => name === 'comfort')!.at.value;
        const interpolated = creepageLimits('pair', voltage(at.rms, 'rms'), at.group, at.degree, noClearance)!;
        const ROUNDING = 2 * 0.1e-3; // the rounding up to a tenth, doubled, may pass the row by less than that
        expect(comfort).toBeGreaterThan(interpolated.reinforced.value - ROUNDING);
      }),
      RUN,
    );
  });
});

const nothing = { ...clearanceLimits(settingAt({ mains: 120, category: 'I', altitude: 0 }), 'pair', null, '1')! };
const noClearance: DistanceLimits = { basic: { ...nothing.basic, value: 0 }, reinforced: { ...nothing.reinforced, value: 0 }, others: [] };

describe('rounding up', () => {
  const distance = fc.double({ min: 1e-6, max: 0.05, noNaN: true });

  it.each([
    ['creepage', roundUpCreepage, () => 0.1e-3],
    ['clearance', roundUpClearance, (metres: number) => (metres <= 0.5e-3 ? 0.01e-3 : 0.1e-3)],
  ] as const)('of a %s never shortens it, adds less than a step, and done twice does no more', (_, formula, stepOf) => {
    fc.assert(
      fc.property(distance, (metres) => {
        const up = formula.compute({ distance: metres });
        expect(up).toBeGreaterThanOrEqual(metres * (1 - 1e-9));
        expect(up - metres).toBeLessThan(stepOf(metres));
        expect(formula.compute({ distance: up })).toBe(up);
      }),
      { seed: SEED, numRuns: MANY },
    );
  });

  it.each([
    ['creepage', roundUpCreepage],
    ['clearance', roundUpClearance],
  ] as const)('of a %s keeps the order of distances', (_, formula) => {
    fc.assert(
      fc.property(distance, distance, (one, two) => {
        expect(formula.compute({ distance: Math.min(one, two) })).toBeLessThanOrEqual(formula.compute({ distance: Math.max(one, two) }));
      }),
      { seed: SEED, numRuns: MANY },
    );
  });

  it('leaves every tenth of a millimetre where it is, however it was reached', () => {
    for (let tenths = 1; tenths <= 300; tenths += 1)
      for (const written of [tenths / 10_000, tenths * 1e-4, (tenths * 0.1) / 1000, tenths / 10 / 1000])
        expect(roundUpCreepage.compute({ distance: written })).toBeCloseTo(tenths / 10_000, 12);
  });
});
