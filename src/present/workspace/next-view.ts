import type { Assessment, Next } from '../../core/result/assessment.ts';
import { getCheckWords } from '../words/check-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { BEFORE_WORDS, MEASUREMENT_HAZARDS, measurementText, prospectText } from '../words/next-words.ts';
import { stopText } from '../words/stop-text.ts';

/** What to measure next: how, what it may change, what can hurt, where to stop. */
export interface NextView {
  readonly id: string;
  readonly measure: string;
  readonly words: string;
  readonly settles: readonly { readonly title: string; readonly finding: string }[];
  readonly prospect: string;
  readonly hazards: readonly string[];
  readonly stops: readonly { readonly words: string; readonly step: string | null }[];
  readonly before: string | null;
  /** The mains side is touched or laid open: a measured residual comes first. */
  readonly asksResidual: boolean;
}

export interface LastChance {
  readonly before: NonNullable<Next['before']>;
  readonly title: string;
  readonly measures: readonly { readonly measure: string; readonly words: string }[];
}

export function toNextViews({ next }: Assessment): readonly NextView[] {
  return next.map((one) => ({
    id: one.id,
    measure: one.measure,
    words: measurementText(one.measure, one.about),
    settles: one.settles.map((finding) => ({ title: getCheckWords(finding.split('@')[0] ?? finding).title, finding })),
    prospect: prospectText(one),
    hazards: one.hazard.map((key) => sentenceFor(MEASUREMENT_HAZARDS, key)),
    stops: one.stop.map((stop) => ({ words: stopText(stop), step: stop.step })),
    before: one.before === null ? null : BEFORE_WORDS[one.before],
    asksResidual: one.hazard.includes('discharge'),
  }));
}

export function toLastChances({ lastChance }: Assessment): readonly LastChance[] {
  return lastChance
    .filter(({ measure }) => measure.length > 0)
    .map(({ before, measure }) => ({
      before,
      title: BEFORE_WORDS[before],
      measures: measure.map((key) => ({ measure: key, words: measurementText(key) })),
    }));
}
