import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const INCH_M = 0.0254;
const MIL_M = INCH_M / 1000;
const ONE_OUNCE_M = 35e-6;
const ROOM_K = 298.15;
/** A design note: 18 Ω fusible resistor, two times 10 µF, 265 V a.c.; its inputs are printed, the results follow from them. */
const NOTE = { publication: 'ON Semiconductor DN06013/D', edition: 'revision not stated', origin: 'closed-form' } as const;
const CREST = Math.SQRT2 * 265;
const SITE = {
  publication: 'PCB Insider, fusing current table for one-ounce copper, one second',
  origin: 'publication',
  formula: 'board/melting-current',
  unit: 'A',
} as const;
const track = (mils: number, printed: number, tolerance: number): WorkedExample => ({
  ...SITE,
  place: `row of ${mils} mil`,
  inputs: { width: mils * MIL_M, thickness: ONE_OUNCE_M, ambient: ROOM_K, time: 1 },
  printed,
  tolerance,
  because: HALF_OF_LAST_DIGIT,
});

/** Plugging in, and what melts a track. */
export const INRUSH: readonly WorkedExample[] = [
  {
    ...NOTE,
    place: 'page 1, schematic: two times 10 µF',
    formula: 'board/sum-of-capacitances',
    inputs: { one: 10e-6, other: 10e-6 },
    printed: 20,
    unit: 'µF',
    tolerance: 1e-9,
    because: 'a sum in double precision',
  },
  {
    ...NOTE,
    place: 'page 1, schematic: 18 Ω without the mains',
    formula: 'board/loop-resistance',
    inputs: { limiter: 18, line: 0 },
    printed: 18,
    unit: 'Ω',
    tolerance: 0,
    because: 'a sum',
  },
  {
    ...NOTE,
    place: 'page 1, schematic: crest of 265 V over 18 Ω',
    formula: 'board/inrush-peak',
    inputs: { crest: CREST, resistance: 18 },
    printed: 20.8,
    unit: 'A',
    tolerance: 0.05,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    ...NOTE,
    place: 'page 1, schematic: 265² · 2 · 20 µF over 36 Ω',
    formula: 'board/inrush-integral',
    inputs: { crest: CREST, capacitance: 20e-6, resistance: 18 },
    printed: 0.078,
    unit: 'A²s',
    tolerance: 0.0005,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    ...NOTE,
    place: 'page 1, schematic: 265² · 20 µF, all of it in the 18 Ω',
    formula: 'board/energy-in-limiter',
    inputs: { capacitance: 20e-6, crest: CREST, limiter: 18, line: 0 },
    printed: 1.4045,
    unit: 'J',
    tolerance: 0.00005,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    ...NOTE,
    place: 'page 1, schematic: the same with 2 Ω of mains, of which nine tenths stay in the 18 Ω',
    formula: 'board/energy-in-limiter',
    inputs: { capacitance: 20e-6, crest: CREST, limiter: 18, line: 2 },
    printed: 1.26405,
    unit: 'J',
    tolerance: 0.000005,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    publication: 'Schoolbook',
    origin: 'closed-form',
    place: 'half of 9.2 A²s',
    formula: 'board/half-of-integral',
    inputs: { melting: 9.2 },
    printed: 4.6,
    unit: 'A²s',
    tolerance: 0,
    because: 'half',
  },
  {
    publication: 'Schoolbook',
    origin: 'closed-form',
    place: '3 A for one second',
    formula: 'board/integral-of-current',
    inputs: { current: 3, time: 1 },
    printed: 9,
    unit: 'A²s',
    tolerance: 0,
    because: 'a product',
  },
  track(30, 7.7, 0.05),
  track(50, 12.8, 0.05),
  track(100, 25.7, 0.05),
];
