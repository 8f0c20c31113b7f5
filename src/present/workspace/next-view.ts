import type { Assessment, Next } from '../../core/result/assessment.ts';
import { amountText } from '../words/amount-text.ts';
import { getCheckWords } from '../words/check-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { BEFORE_WORDS, MEASUREMENT_HAZARDS, measurementText, prospectText, STOPS } from '../words/next-words.ts';
import { stopText } from '../words/stop-text.ts';

/** What to measure next: how, what it may change, what can hurt, where to stop. */
export interface NextView {
  readonly id: string;
  readonly measure: string;
  readonly words: string;
  readonly settles: readonly { readonly title: string; readonly finding: string }[];
  readonly prospect: string;
  readonly hazards: readonly string[];
  readonly stops: readonly StopView[];
  readonly before: string | null;
  /** The mains side is touched or laid open: a measured residual comes first. */
  readonly asksResidual: boolean;
}

/** Where a test is stopped: what is watched, on which output, from which amount on; `value` in SI, for the alarm at the bench. */
export interface StopView {
  readonly words: string;
  readonly step: string | null;
  readonly of: string;
  readonly title: string;
  readonly about: string;
  readonly at: string;
  readonly value: number;
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
    stops: one.stop.map((stop) => ({
      words: stopText(stop),
      step: stop.step,
      of: stop.of,
      title: sentenceFor(STOPS, stop.of),
      about: stop.about,
      at: amountText(stop.at),
      value: stop.at.value,
    })),
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
