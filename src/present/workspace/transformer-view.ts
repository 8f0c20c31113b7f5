import type { Assessment } from '../../core/result/assessment.ts';
import type { TransformerSheet } from '../../core/result/transformer-sheet.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { drawWindingWindow, findWeakest, WINDING_ALONE, WINDING_ALONE_NARROW } from '../figure/winding-window.ts';
import { setAmount } from '../report/quantity.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { foundText } from '../words/found-words.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { NUMBER_NAMES, numberShow, WAY_WORDS } from '../words/transformer-words.ts';
import { placeOfMissing } from './place-of-missing.ts';

/** One transformer beside its entry: the cross-section as it stands now, its weakest place, what follows from it and what is missing. */
export interface TransformerView {
  readonly exhibit: string;
  readonly wideSvg: string;
  readonly narrowSvg: string;
  readonly weakest: {
    readonly finding: string;
    readonly markSvg: string;
    readonly outcome: string;
    /** "round the edge of the tape", and how that is judged. */
    readonly where: string;
    readonly word: string;
    readonly layers: readonly { readonly id: string; readonly name: string }[];
  } | null;
  /** Findings of this transformer's pairs of windings and of its wires. */
  readonly pairs: readonly string[];
  readonly numbers: readonly { readonly label: string; readonly valueHtml: string; readonly step: string }[];
  readonly blocked: readonly {
    readonly label: string;
    readonly missing: readonly { readonly words: string; readonly place: string | null }[];
  }[];
}

const MARK = 12;
const PAIRS: readonly string[] = ['shock/winding-insulation', 'shock/wire-insulation', 'interference/winding-screen'];

export function toTransformerViews(assessment: Assessment): readonly TransformerView[] {
  return (assessment.transformers ?? []).map((sheet) => toTransformerView(sheet, assessment));
}

function toTransformerView(sheet: TransformerSheet, assessment: Assessment): TransformerView {
  const board = assessment.bench.exhibits.find(({ kind }) => kind === 'board')?.id ?? null;
  return {
    exhibit: sheet.exhibit,
    wideSvg: drawWindingWindow(sheet, assessment, WINDING_ALONE).markup,
    narrowSvg: drawWindingWindow(sheet, assessment, WINDING_ALONE_NARROW).markup,
    weakest: toWeakest(sheet, assessment),
    pairs: assessment.findings
      .filter(({ check, subject }) => PAIRS.includes(check) && subject !== null && subject.split(':')[0] === sheet.part)
      .map(({ id }) => id),
    numbers: sheet.numbers.map(({ key, about, value, step }) => {
      return { label: nameOf(key, about), valueHtml: setAmount(value, numberShow(key)).markup, step };
    }),
    blocked: sheet.blocked.map(({ key, missing }) => {
      return {
        label: nameOf(key, null),
        missing: missing.map((one) => ({ words: foundText(one), place: placeOfMissing(one, sheet, board) })),
      };
    }),
  };
}

function nameOf(key: string, about: string | null): string {
  return `${sentenceFor(NUMBER_NAMES, key)}${about === null ? '' : `, ${about}`}`;
}

function toWeakest(sheet: TransformerSheet, assessment: Assessment): TransformerView['weakest'] {
  const finding = findWeakest(sheet, assessment);
  if (sheet.weakest === null || finding === null) return null;
  const { kind, between } = sheet.weakest;
  return {
    finding: finding.id,
    markSvg: drawOutcomeMark(finding.outcome, MARK).markup,
    outcome: finding.outcome,
    where: sentenceFor(WAY_WORDS, kind),
    word: outcomeText(finding),
    layers: between.map((id) => {
      const layer = sheet.layers.find((one) => one.id === id);
      return { id, name: layer?.is === 'winding' ? layer.name : id };
    }),
  };
}
