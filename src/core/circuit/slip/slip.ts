export const SLIPS = [
  'dangling',
  'shorted',
  'straddling',
  'marksNoCrossing',
  'outputsTied',
  'missingReturn',
  'backwards',
  'capacitorBackwards',
  'valueAgainstMarking',
  'turnsAgainstStack',
] as const;
export type SlipCode = (typeof SLIPS)[number];

/** Something in a trace that is probably a slip of the pen or of the probe. A warning, never a finding. */
export interface Slip {
  readonly code: SlipCode;
  readonly part: string | null;
  readonly nets: readonly string[];
  /** What is put into the sentence beside the names. */
  readonly args?: Readonly<Record<string, string>>;
}
