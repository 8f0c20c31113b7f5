import type { Cell, Coverage, Outcome } from '../../core/result/assessment.ts';
import type { Paint } from './ansi.ts';

/** The marks of the figures as signs: disc, cross, half disc, ring, dash. */
export const TEXT_MARKS: Readonly<Record<Outcome, string>> = {
  pass: '●',
  fail: '✕',
  inconclusive: '◐',
  notAssessed: '○',
  notApplicable: '–',
};
export const OUTCOME_PAINTS: Readonly<Record<Outcome, Paint>> = {
  pass: 'pass',
  fail: 'fail',
  inconclusive: 'inconclusive',
  notAssessed: 'quiet',
  notApplicable: 'quiet',
};

/** Coverage is told in squares, never in outcome marks. */
export const TEXT_SQUARES: Readonly<Record<Coverage, string>> = { examined: '■', 'partly examined': '◩', 'not examined': '▨' };
export const TEXT_CELLS: Readonly<Record<Cell['state'], string>> = { settled: '■', inconclusive: '◩', notAssessed: '▨', notApplicable: '' };
