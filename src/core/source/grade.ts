/**
 * How sure we are of a figure, best first. The grade shows wherever the number shows.
 * - official-text: the publication itself was read at that place
 * - public-extract: an extract issued by the publisher was read
 * - secondary: read in somebody else's copy (catalogue, test report, copy)
 * - common-practice: what the trade does, no source
 * - reasoned: derived here from physics or from other rows
 * - memory: recalled, not verified
 */
export const GRADES = ['official-text', 'public-extract', 'secondary', 'common-practice', 'reasoned', 'memory'] as const;
export type Grade = (typeof GRADES)[number];

/** The weakest of one chain: what a figure is worth that needs all of them. */
export function weakestGrade(grades: readonly Grade[]): Grade {
  return grades.reduce((worst, grade) => (GRADES.indexOf(grade) > GRADES.indexOf(worst) ? grade : worst), 'official-text' as Grade);
}
