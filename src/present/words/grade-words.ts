import type { Grade } from '../../core/source/grade.ts';

/** How a limit of a grade is stroked. */
export type GradeStroke = 'official' | 'secondary' | 'memory';

export const GRADE_STROKES: Readonly<Record<Grade, GradeStroke>> = {
  'official-text': 'official',
  'public-extract': 'secondary',
  secondary: 'secondary',
  'common-practice': 'memory',
  reasoned: 'memory',
  memory: 'memory',
};

/** The grade in a word or two, beside a number. */
export const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  'official-text': 'official text',
  'public-extract': 'public extract',
  secondary: 'secondary copy',
  'common-practice': 'common practice',
  reasoned: 'reasoned',
  memory: 'from memory',
};

/** The grade as a sentence, in the list of sources. */
export const GRADE_MEANINGS: Readonly<Record<Grade, string>> = {
  'official-text': 'the publication itself was read at this place',
  'public-extract': 'an extract issued by the publisher was read',
  secondary: "read in somebody else's copy, not in the publication",
  'common-practice': 'what the trade does; no publication is known to us',
  reasoned: 'worked out here from physics or from other figures',
  memory: 'recalled, not verified',
};

/** "on a limit ...", in a sentence about a verdict. */
export const GRADE_PHRASES: Readonly<Record<Grade, string>> = {
  'official-text': 'from the official text',
  'public-extract': 'from a public extract',
  secondary: 'from a secondary copy',
  'common-practice': 'from common practice',
  reasoned: 'worked out here',
  memory: 'from memory',
};
