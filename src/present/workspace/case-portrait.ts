import type { Assessment, Cell, Finding } from '../../core/result/assessment.ts';
import { toPortrait } from '../figure/portrait-rows.ts';
import { getFailureHalf } from '../figure/verdict-halves.ts';
import { findingValue } from '../words/finding-text.ts';

/** What the list of cases shows of one case: both words and the worst finding of each check that says something. */
export interface CasePortrait {
  readonly product: string;
  readonly name: string;
  readonly sample: string;
  readonly invented: boolean;
  readonly failure: string;
  readonly doubtful: string | null;
  readonly coverage: { readonly shock: string; readonly fire: string };
  readonly cells: { readonly shock: string; readonly fire: string };
  readonly because: string;
  readonly marks: readonly PortraitMark[];
}

export interface PortraitMark {
  readonly check: string;
  readonly hazard: string;
  readonly outcome: string;
  readonly margin: number | null;
  readonly band: readonly [number, number] | null;
  readonly value: string;
  readonly rung: string | null;
  readonly finding: string;
}

const LETTERS: Readonly<Record<Cell['state'], string>> = { settled: 's', inconclusive: 'i', notAssessed: 'n', notApplicable: 'a' };

export function toCasePortrait(assessment: Assessment): CasePortrait {
  const { verdict, case: about } = assessment;
  const letters = (cells: readonly Cell[]): string => cells.map(({ state }) => LETTERS[state]).join('');
  return {
    product: about.product,
    name: about.name,
    sample: about.sample,
    invented: about.invented,
    failure: verdict.failure,
    doubtful: verdict.doubtful,
    coverage: verdict.coverage,
    cells: { shock: letters(verdict.cells.shock), fire: letters(verdict.cells.fire) },
    because: getFailureHalf(assessment).second,
    marks: toPortrait(assessment).flatMap(({ rows }) => rows.map(({ finding }) => toMark(finding))),
  };
}

function toMark(finding: Finding): PortraitMark {
  return {
    check: finding.check,
    hazard: finding.hazard,
    outcome: finding.outcome,
    margin: finding.margin,
    band: finding.marginBand,
    value: findingValue(finding),
    rung: finding.rung ?? null,
    finding: finding.id,
  };
}
