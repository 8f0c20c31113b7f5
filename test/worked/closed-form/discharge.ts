import { CELL, HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const BOOK = { publication: 'Schoolbook', origin: 'closed-form' } as const;

/** A capacitor across the plug with 2 MΩ beside it, unplugged at the crest of 230 V. */
const left = (nanofarads: number, seconds: number, printed: number): WorkedExample => ({
  ...BOOK,
  place: `${nanofarads} nF with 2 MΩ from 325.27 V, after ${seconds} s`,
  formula: 'touch/residual-voltage',
  inputs: { start: 325.269119, after: seconds, resistance: 2e6, capacitance: nanofarads * 1e-9 },
  printed,
  unit: 'V',
  tolerance: 0.005,
  because: HALF_OF_LAST_DIGIT,
});
const current = (nanofarads: number, voltage: number, frequency: number, printed: number): WorkedExample => ({
  ...BOOK,
  place: `${nanofarads} nF at ${voltage} V ${frequency} Hz`,
  formula: 'insulation/bridging-current',
  inputs: { frequency, capacitance: nanofarads * 1e-9, voltage },
  printed,
  unit: 'mA',
  tolerance: 0.00005,
  because: HALF_OF_LAST_DIGIT,
});

/** Plugs, bulk capacitors and what capacitors across the barrier pass. */
export const DISCHARGE: readonly WorkedExample[] = [
  left(330, 1, 71.49),
  left(330, 2, 15.71),
  left(220, 1, 33.51),
  left(220, 2, 3.45),
  left(100, 1, 2.19),
  {
    ...BOOK,
    place: '10 µF over 47 kΩ from 375 V falls to 60 V in 0.861 s',
    formula: 'touch/residual-voltage',
    inputs: { start: 375, after: 0.861, resistance: 47e3, capacitance: 10e-6 },
    printed: 60,
    unit: 'V',
    tolerance: 0.07,
    because: 'half of the last digit of the time moves it by 0.1 %',
  },
  {
    ...BOOK,
    place: '0.1 µF over 1 MΩ from 373 V falls to 60 V in 0.183 s',
    formula: 'touch/residual-voltage',
    inputs: { start: 373, after: 0.183, resistance: 1e6, capacitance: 1e-7 },
    printed: 60,
    unit: 'V',
    tolerance: 0.3,
    because: 'half of the last digit of the time moves it by 0.5 %',
  },
  {
    ...BOOK,
    place: '10 µF at 375 V',
    formula: 'board/stored-energy',
    inputs: { capacitance: 10e-6, crest: 375 },
    printed: 0.703,
    unit: 'J',
    tolerance: 0.0005,
    because: HALF_OF_LAST_DIGIT,
  },
  current(1, 230, 50, 0.0723),
  current(1, 120, 60, 0.0452),
  current(2.2, 230, 50, 0.159),
  current(2.2, 120, 60, 0.0995),
  current(4.7, 230, 50, 0.3396),
  current(4.7, 120, 60, 0.2126),
  current(1.246, 230, 50, 0.09),
  current(2.512, 264, 60, 0.25),
  {
    publication: 'Forum copies of IEC 60335-1',
    place: 'clause 22.5: 0.1 µF or less is exempt',
    origin: 'publication',
    table: 'iec-60335-1/2010/plug-discharge/exempt',
    inputs: { key: 'oneSecond' },
    printed: 0.1,
    unit: 'µF',
    tolerance: 0,
    because: CELL,
  },
];
