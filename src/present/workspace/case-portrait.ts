import type { Assessment, Cell, Coverage, Finding, Outcome } from '../../core/result/assessment.ts';
import { type LineMark, toLineMark } from '../figure/line-mark.ts';
import { toPortrait } from '../figure/portrait-rows.ts';
import { getFailureHalf } from '../figure/verdict-halves.ts';
import type { FailureWeight } from '../words/failure-words.ts';
import { findingValue, isStruck } from '../words/finding-text.ts';
import { measurementText } from '../words/next-words.ts';
import { outcomeText } from '../words/outcome-words.ts';

/** What the list of cases shows of one case: both words and the worst finding of each check that says something. */
export interface CasePortrait {
  readonly product: string;
  readonly name: string;
  readonly sample: string;
  readonly invented: boolean;
  readonly failure: string;
  readonly doubtful: string | null;
  /** The word as it is shown: never the clear one while a worse may hold. */
  readonly word: string;
  readonly weight: FailureWeight;
  readonly mark: Outcome;
  readonly coverage: { readonly shock: Coverage; readonly fire: Coverage };
  /** One letter per check of the bench set: settled, inconclusive, not assessed, not applicable. */
  readonly cells: { readonly shock: string; readonly fire: string };
  readonly because: string;
  readonly marks: readonly PortraitMark[];
  /** Checks that nothing was read for and that have no mark. */
  readonly unread: readonly string[];
  /** The measurements that would settle most, with the number of checks each would settle. */
  readonly next: readonly { readonly words: string; readonly settles: number }[];
}

export interface PortraitMark extends LineMark {
  readonly check: string;
  readonly hazard: string;
  readonly value: string;
  /** The reading stays, struck through: it cannot count as evidence. */
  readonly struck: boolean;
  /** Word at the end of the line. */
  readonly says: string;
  readonly finding: string;
}

const LETTERS: Readonly<Record<Cell['state'], string>> = { settled: 's', inconclusive: 'i', notAssessed: 'n', notApplicable: 'a' };
const NEXT_SHOWN = 2;
const DIGITS = 4; // of the ends of a band: a thousandth of a line's width

export function toCasePortrait(assessment: Assessment): CasePortrait {
  const { verdict, case: about } = assessment;
  const letters = (cells: readonly Cell[]): string => cells.map(({ state }) => LETTERS[state]).join('');
  const { word, weight, mark, second } = getFailureHalf(assessment);
  const portrait = toPortrait(assessment);
  return {
    product: about.product,
    name: about.name,
    sample: about.sample,
    invented: about.invented,
    failure: verdict.failure,
    doubtful: verdict.doubtful,
    word,
    weight,
    mark,
    coverage: verdict.coverage,
    cells: { shock: letters(verdict.cells.shock), fire: letters(verdict.cells.fire) },
    because: second,
    marks: portrait.flatMap(({ rows }) => rows.map(({ finding }) => toMark(finding))),
    unread: portrait.flatMap(({ unread }) => unread.map(({ check }) => check)),
    next: assessment.next
      .slice(0, NEXT_SHOWN)
      .map(({ measure, about: of, settles }) => ({ words: measurementText(measure, of), settles: settles.length })),
  };
}

/** The cells of one hazard again, from their letters. */
export function toCells(letters: string): Pick<Cell, 'state'>[] {
  const states = Object.entries(LETTERS) as [Cell['state'], string][];
  return [...letters].map((letter) => ({ state: states.find(([, own]) => own === letter)?.[0] ?? 'notAssessed' }));
}

function toMark(finding: Finding): PortraitMark {
  const line = toLineMark(finding);
  return {
    ...line,
    band: line.band === null ? null : [shorten(line.band[0]), line.band[1] === null ? null : shorten(line.band[1])],
    check: finding.check,
    hazard: finding.hazard,
    value: findingValue(finding),
    struck: isStruck(finding),
    says: outcomeText(finding),
    finding: finding.id,
  };
}

function shorten(ratio: number): number {
  return Number(ratio.toPrecision(DIGITS));
}
