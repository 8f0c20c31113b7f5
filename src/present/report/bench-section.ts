import type { Assessment } from '../../core/result/assessment.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { underText } from '../words/condition-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { EVENT_WORDS, ROLE_WORDS } from '../words/role-words.ts';

/** Who examined what, when, under which mains and with which instruments: only what the case says. */
export function setBench({ bench, case: about }: Assessment): Markup {
  const rows = [
    row('sample', [`${about.sample}, one sample`]),
    row('bought', bench.bought === null ? [] : [boughtText(bench.bought)]),
    row('examined by', bench.examinedBy === null ? [] : [bench.examinedBy]),
    row('days', bench.days.map(dayText)),
    row('events', bench.events.filter(({ what }) => what !== 'purchased' || bench.bought === null).map(eventText)),
    row('instruments', bench.instruments.map(instrumentText)),
  ];
  const told = rows.filter(({ markup }) => markup !== '');
  return told.length <= 1 ? NOTHING : html`<dl class="kv bench" aria-label="The examination">${joined(told)}</dl>`;
}

function row(title: string, lines: readonly string[]): Markup {
  if (lines.length === 0) return NOTHING;
  return html`<dt>${title}</dt><dd>${joined(
    lines.map((line) => html`<span>${line}</span>`),
    html`<br>`,
  )}</dd>`;
}

function boughtText({ where, date, price }: NonNullable<Assessment['bench']['bought']>): string {
  return `${date}, ${where}${price === null ? '' : `, price ${price}`}`;
}

function dayText({ date, under }: Assessment['bench']['days'][number]): string {
  const conditions = underText(under);
  return conditions === '' ? date : `${date}: ${conditions}`;
}

function eventText({ at, what, note }: Assessment['bench']['events'][number]): string {
  return `${at.replace('T', ' ').replace(/:\d\d$/, '')}: ${sentenceFor(EVENT_WORDS, what)}${note === null ? '' : `, ${note}`}`;
}

function instrumentText({ name, calibrated, roles }: Assessment['bench']['instruments'][number]): string {
  const reads = roles.length === 0 ? '' : `: ${roles.map((role) => sentenceFor(ROLE_WORDS, role)).join(', ')}`;
  return `${name}${reads}; ${calibrated === null ? 'no calibration stated' : `calibrated ${calibrated}`}`;
}
