import type { SafetyClass } from './reading.ts';

type ClassName = SafetyClass['name'];

/**
 * Where a class lets a capacitor stand. IEC 60384-14: X between the lines; Y1 alone across double or reinforced insulation, Y2 to Y4 across basic or
 * supplementary insulation. Read in a capacitor maker's page of classes.
 */
const STANDS: Readonly<Record<ClassName, SafetyClass['stands']>> = {
  X1: 'line-to-line',
  X2: 'line-to-line',
  X3: 'line-to-line',
  Y1: 'reinforced',
  Y2: 'basic',
  Y3: 'basic',
  Y4: 'basic',
};
const FORM = /^(?:X[123]|Y[1234])+$/;

/** The classes of one word: "X2", "X1Y2". Null when the word is none. */
export function parseSafetyClasses(word: string): ClassName[] | null {
  const upper = word.toUpperCase();
  if (!FORM.test(upper)) return null;
  return (upper.match(/[XY]\d/g) ?? []) as ClassName[];
}

export function getSafetyClass(name: ClassName, voltage: number | null): SafetyClass {
  return { name, voltage, stands: STANDS[name] };
}

export type RatingWord = { readonly name: ClassName } | { readonly volts: number };

/**
 * Which voltage belongs to which class, from their order on the part: one behind each class, one before each class, or one for all.
 * Any other order leaves them apart: every voltage null, and `assigned` false.
 */
export function assignVoltages(words: readonly RatingWord[]): { readonly classes: SafetyClass[]; readonly assigned: boolean } {
  const names = words.flatMap((word) => ('name' in word ? [word.name] : []));
  const volts = words.flatMap((word) => ('volts' in word ? [word.volts] : []));
  const order = words.map((word) => ('name' in word ? 'c' : 'v')).join('');
  if (volts.length === 0) return { classes: names.map((name) => getSafetyClass(name, null)), assigned: true };
  if (volts.length === 1) return { classes: names.map((name) => getSafetyClass(name, volts[0]!)), assigned: true };
  const paired = /^(?:cv)+$/.test(order) || /^(?:vc)+$/.test(order);
  return { classes: names.map((name, index) => getSafetyClass(name, paired ? volts[index]! : null)), assigned: paired };
}
