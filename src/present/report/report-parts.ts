import type { Finding } from '../../core/result/assessment.ts';
import type { NumberField } from '../figure/isotherms.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, type Markup, NOTHING, type Piece } from '../markup/markup.ts';
import { fieldText } from '../words/field-words.ts';
import type { ReportRuns } from './run-section.ts';

/** What only the caller of a report knows. */
export interface ReportExtras {
  /** Readable words for fields of the case, by their path. */
  readonly fields?: Readonly<Record<string, string>>;
  /** The schematic of the traced circuit, laid out beforehand: that takes longer than the whole rest of the page. */
  readonly schematic?: Markup;
  /** The numbers of thermal pictures by exhibit, °C as the camera shows them. */
  readonly thermal?: ReadonlyMap<string, NumberField>;
  /** Kept runs of the traced circuit that still belong to it. */
  readonly runs?: ReportRuns;
}

export interface Section {
  readonly id: string;
  readonly title: string;
  readonly body: Markup;
}

/** A section with its heading, or nothing when there is nothing to say. */
export function setSection({ id, title, body }: Section): Markup {
  if (body.markup === '') return NOTHING;
  const anchor = toAnchor('part', id);
  return html`<section aria-labelledby="${anchor}"><h2 id="${anchor}" tabindex="-1">${title}</h2>\n${body}</section>\n`;
}

export function linkToStep(step: string, words: Piece): Markup {
  return html`<a class="from" href="#${toAnchor('step', step)}">${words}</a>`;
}

export function linkToFinding(finding: Finding, words: Piece): Markup {
  return html`<a class="from" href="#${toAnchor('finding', finding.id)}">${words}</a>`;
}

export function fieldWords(field: string, extras: ReportExtras): string {
  return extras.fields !== undefined && Object.hasOwn(extras.fields, field) ? (extras.fields[field] ?? field) : fieldText(field);
}
