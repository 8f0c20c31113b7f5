import type { SiUnit } from '../quantity/unit.ts';
import type { Source } from '../source/source.ts';
import type { SeriesName } from './e-series.ts';

/** What a person may say the part is, to narrow the readings. */
export const PARTS = ['resistor', 'capacitor', 'inductor', 'diode'] as const;
export type Part = (typeof PARTS)[number];

/** What one reading says the mark stands for. A jumper is a resistor of 0 Ω; a voltage rating and a safety class stand on capacitors. */
export type ReadingKind = Part | 'jumper' | 'voltage-rating' | 'safety-class';

/** The rule by which a mark was read; each has a file of this room. */
export type SchemeSlug =
  | 'jumper'
  | 'three-digit'
  | 'four-digit'
  | 'letter-at-point'
  | 'milliohm-letter'
  | 'e96-code'
  | 'letter-first'
  | 'colour-bands'
  | 'capacitor-digits'
  | 'capacitor-letter'
  | 'film-mark'
  | 'plain-number'
  | 'voltage-code'
  | 'safety-class'
  | 'inductor-digits'
  | 'inductor-letter'
  | 'inductor-bands'
  | 'zener-voltage'
  | 'written-value';

/** What a reader should know beside the figures. Words belong to whoever prints them. */
export type NoteKey =
  | 'in-no-series'
  | 'underline-may-mean-current-sense'
  | 'multiplier-letter-disputed'
  | 'letter-case-matters'
  | 'tolerance-set-by-code'
  | 'tolerance-letter-depends-on-size'
  | 'read-from-first-band'
  | 'read-from-last-band'
  | 'digits-unusual-for-tolerance'
  | 'grey-tolerance-changed'
  | 'no-tolerance-band'
  | 'eight-and-nine-shrink'
  | 'taken-as-microfarad'
  | 'taken-as-picofarad'
  | 'alternating-voltage'
  | 'direct-voltage'
  | 'class-is-safety-data'
  | 'voltage-not-assigned'
  | 'dielectric-not-decoded'
  | 'climate-not-decoded'
  | 'temperature-not-decoded';

/** What would settle between several readings. */
export type SettleKey =
  | 'board-letter'
  | 'measure-resistance'
  | 'measure-capacitance'
  | 'measure-inductance'
  | 'band-spacing'
  | 'data-sheet';

/** How far below and above the printed value the part may lie: shares of the value (unit '1') or amounts in the SI unit of the value. Both positive. */
export interface Tolerance {
  readonly minus: number;
  readonly plus: number;
  readonly unit: SiUnit;
}

/** A class of IEC 60384-14 and the mains voltage printed for it, in V. */
export interface SafetyClass {
  readonly name: 'X1' | 'X2' | 'X3' | 'Y1' | 'Y2' | 'Y3' | 'Y4';
  readonly voltage: number | null;
  /** Where the class lets a part stand: between the lines, across basic or supplementary insulation, or across reinforced insulation. */
  readonly stands: 'line-to-line' | 'basic' | 'reinforced';
}

/** One meaning a mark can have. Numbers are SI; null where the mark does not say. */
export interface Reading {
  readonly kind: ReadingKind;
  readonly value: number | null;
  readonly unit: SiUnit | null;
  readonly tolerance: Tolerance | null;
  /** Per kelvin, either way. */
  readonly temperatureCoefficient: number | null;
  /** V. Null when several classes carry a voltage each. */
  readonly voltage: number | null;
  readonly safetyClasses: readonly SafetyClass[];
  /** The coarsest series of IEC 60063 that holds the value. */
  readonly series: SeriesName | null;
  readonly scheme: SchemeSlug;
  readonly source: Source;
  readonly notes: readonly NoteKey[];
}

/** Every meaning of a mark, best sourced first, and what would settle between them; `settledBy` is empty when there is one meaning. */
export interface Decoded {
  readonly text: string;
  readonly readings: readonly Reading[];
  readonly settledBy: readonly SettleKey[];
}

/** A rule for marks without spaces. Gives no reading when the mark is not of its form. */
export interface Scheme {
  readonly slug: SchemeSlug;
  readonly part: Part;
  readonly read: (mark: string) => readonly Reading[];
}
