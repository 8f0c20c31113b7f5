import type { Grade } from '../source/grade.ts';

export const COLOURS = [
  'black',
  'brown',
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'violet',
  'grey',
  'white',
  'gold',
  'silver',
  'pink',
] as const;
export type Colour = (typeof COLOURS)[number];

/** Digit of a value band. Read in a note on labelling after IEC. */
export const DIGIT_OF: Partial<Readonly<Record<Colour, number>>> = {
  black: 0,
  brown: 1,
  red: 2,
  orange: 3,
  yellow: 4,
  green: 5,
  blue: 6,
  violet: 7,
  grey: 8,
  white: 9,
};

/** A figure of a band, and how sure we are of it. */
export interface Graded {
  readonly size: number;
  readonly grade: Grade;
}

/** Power of ten of a multiplier band. Pink stands in the publisher's summary of the 2016 edition. */
export const EXPONENT_OF: Partial<Readonly<Record<Colour, Graded>>> = {
  ...Object.fromEntries(Object.entries(DIGIT_OF).map(([colour, digit]) => [colour, { size: digit, grade: 'secondary' as const }])),
  gold: { size: -1, grade: 'secondary' },
  silver: { size: -2, grade: 'secondary' },
  pink: { size: -3, grade: 'secondary' },
};

/** Share of a tolerance band, either way. Orange, yellow and grey follow IEC 60062:2016 from memory; grey was 0.05 % before. */
export const SHARE_OF: Partial<Readonly<Record<Colour, Graded>>> = {
  brown: { size: 0.01, grade: 'secondary' },
  red: { size: 0.02, grade: 'secondary' },
  orange: { size: 0.0005, grade: 'memory' },
  yellow: { size: 0.0002, grade: 'memory' },
  green: { size: 0.005, grade: 'secondary' },
  blue: { size: 0.0025, grade: 'secondary' },
  violet: { size: 0.001, grade: 'secondary' },
  grey: { size: 0.0001, grade: 'memory' },
  gold: { size: 0.05, grade: 'secondary' },
  silver: { size: 0.1, grade: 'secondary' },
};

/** Share of the tolerance band of an axial inductor, either way. Memory. */
export const INDUCTOR_SHARE_OF: Partial<Readonly<Record<Colour, number>>> = { gold: 0.05, silver: 0.1, black: 0.2 };

/** Temperature coefficient of a sixth band, per kelvin. IEC 60062, from memory. */
export const COEFFICIENT_OF: Partial<Readonly<Record<Colour, number>>> = {
  black: 250e-6,
  brown: 100e-6,
  red: 50e-6,
  orange: 15e-6,
  yellow: 25e-6,
  green: 20e-6,
  blue: 10e-6,
  violet: 5e-6,
  grey: 1e-6,
};

/** Usual short and other spellings; two letters as in IEC 60757 (memory). One letter alone would mean several colours. */
const SHORT: Readonly<Record<string, Colour>> = {
  bk: 'black',
  blk: 'black',
  bn: 'brown',
  brn: 'brown',
  rd: 'red',
  og: 'orange',
  orn: 'orange',
  org: 'orange',
  ye: 'yellow',
  yel: 'yellow',
  gn: 'green',
  grn: 'green',
  bu: 'blue',
  blu: 'blue',
  vt: 'violet',
  vio: 'violet',
  purple: 'violet',
  pur: 'violet',
  gy: 'grey',
  gry: 'grey',
  gray: 'grey',
  wh: 'white',
  wht: 'white',
  gd: 'gold',
  gld: 'gold',
  sr: 'silver',
  slv: 'silver',
  pk: 'pink',
  pnk: 'pink',
};

/** The colour a word names, or null. */
export function parseColour(word: string): Colour | null {
  const low = word.toLowerCase();
  if ((COLOURS as readonly string[]).includes(low)) return low as Colour;
  return Object.hasOwn(SHORT, low) ? SHORT[low]! : null;
}
