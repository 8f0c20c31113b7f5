import type { Grade } from '../source/grade.ts';

export interface Multiplier {
  /** Power of ten. */
  readonly exponent: number;
  readonly grade: Grade;
  /** Another table prints this letter otherwise, or not at all. */
  readonly disputed: boolean;
}

function agreed(exponent: number): readonly Multiplier[] {
  return [{ exponent, grade: 'secondary', disputed: false }];
}

/**
 * The letters of the three-character codes of chip resistors and every power of ten they are printed with.
 * Sources: a board maker's learning page (Z, Y/R, X/S, A, B/H, C to F) and a chip resistor maker's data sheet (A to H, X, Y, Z), which agree on
 * Z, Y, X and A to F; they disagree on H, only one has G, and only the other has R and S.
 */
export const MULTIPLIER_LETTERS: Readonly<Record<string, readonly Multiplier[]>> = {
  Z: agreed(-3),
  Y: agreed(-2),
  R: agreed(-2),
  X: agreed(-1),
  S: agreed(-1),
  A: agreed(0),
  B: agreed(1),
  C: agreed(2),
  D: agreed(3),
  E: agreed(4),
  F: agreed(5),
  G: [{ exponent: 6, grade: 'secondary', disputed: true }],
  H: [
    { exponent: 1, grade: 'secondary', disputed: true },
    { exponent: 7, grade: 'secondary', disputed: true },
  ],
};
