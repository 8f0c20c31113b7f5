import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { titleOfPublication } from '../derivation/publications.ts';
import { sourcePlace } from '../derivation/source-text.ts';
import { drawMarginLine, MARGIN_LINE_ROW } from '../figure/margin-line.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { getCheckWords } from '../words/check-words.ts';
import { findingName } from '../words/finding-text.ts';
import { namedLimitText } from '../words/limit-words.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { riseText } from '../words/rise-text.ts';
import { conditionWords, decisionWords, evidenceWords, remarksOf, setFound, setOrigins, setOthers, setRemarks } from './finding-parts.ts';
import { wordClass } from './portrait-section.ts';
import { setGrade } from './quantity.ts';
import type { ReportExtras } from './report-parts.ts';

const MARK = 11;
const FEWEST_PLAIN = 3; // findings with nothing to tell but that they pass, from which one line holds them all

/** Several findings of one check: what they share is said once, above them. */
export function setFindingGroup(findings: readonly Finding[], assessment: Assessment, extras: ReportExtras): Markup {
  const [first] = findings;
  if (first === undefined) return NOTHING;
  const { title, question } = getCheckWords(first.check);
  const shared = {
    place: shareOf(findings, placeOf),
    title: shareOf(findings, titleOf),
    under: shareOf(findings, conditionWords),
    others: shareOf(findings, othersOf),
    remarks: sharedRemarks(findings),
  };
  const place =
    shared.place === '' || first.limit === null
      ? NOTHING
      : html`<p>Limit from: ${sourcePlace(first.limit.source)} ${setGrade(first.limit.grade)}</p>`;
  const under = shared.under === '' ? NOTHING : html`<p>Read under: ${shared.under}.</p>`;
  const others = shared.others === '' ? NOTHING : html`<p>Also shown: ${joined(setOthers(first), '; ')}.</p>`;
  const said = joined([...shared.remarks].map((remark) => html`<p>${remark}</p>`));
  const lead = html`<div class="lead"><h3>${title}</h3><p class="ask">${question}</p>${place}${under}${others}${said}</div>`;
  const context = { shared, assessment, extras };
  const plain = findings.filter(isPlain);
  const single = plain.length < FEWEST_PLAIN ? findings : findings.filter((finding) => !plain.includes(finding));
  const set = [
    ...single.map((finding, index) => setOne(finding, single[index - 1], context)),
    ...(single.length === findings.length ? [] : [setPlain(plain, context)]),
  ];
  return html`<section class="group" aria-label="${title}"><div class="keep">${lead}
${set[0]}</div>${joined(set.slice(1))}</section>\n`;
}

/** A finding that stands alone, in one row under its own name: everything that is told of one of several. */
export function setFindingRow(finding: Finding, assessment: Assessment, extras: ReportExtras): Markup {
  const shared: Shared = { place: '', title: '', under: '', others: '', remarks: new Set() };
  return setOne(finding, undefined, { shared, assessment, extras }, findingName(finding));
}

interface Context {
  readonly shared: Shared;
  readonly assessment: Assessment;
  readonly extras: ReportExtras;
}

interface Shared {
  readonly place: string;
  /** Publication and edition, where the places in it differ. */
  readonly title: string;
  readonly under: string;
  readonly others: string;
  /** Remarks that every one of them carries. */
  readonly remarks: ReadonlySet<string>;
}

/** What all of them have alike; empty when they differ. */
function shareOf(findings: readonly Finding[], read: (finding: Finding) => string): string {
  const texts = [...new Set(findings.map(read))];
  return texts.length === 1 ? (texts[0] ?? '') : '';
}

function sharedRemarks(findings: readonly Finding[]): ReadonlySet<string> {
  const [first, ...rest] = findings.map(remarksOf);
  return new Set((first ?? []).filter((remark) => rest.every((other) => other.includes(remark))));
}

/** Found as asked for, in a word: no number, no remark, no other edition, nothing worked out. */
function isPlain(finding: Finding): boolean {
  const { outcome, measured, notes, others, step } = finding;
  return outcome === 'pass' && measured !== null && 'word' in measured && notes.length === 0 && others.length === 0 && step === null;
}

/** Plain findings in one row: what each is about, what it was found to be, and where that stands; the limit once where they share it. */
function setPlain(findings: readonly Finding[], { extras }: Context): Markup {
  const [first] = findings;
  if (first === undefined) return NOTHING;
  const limitOf = ({ limit, show }: Finding): Markup =>
    limit === null ? NOTHING : html`${namedLimitText(limit, show)} ${setGrade(limit.grade)}`;
  const isShared = findings.every((finding) => limitOf(finding).markup === limitOf(first).markup);
  const items = findings.map((finding) => {
    const asked = isShared || finding.limit === null ? NOTHING : html` (${limitOf(finding)})`;
    const evidence = evidenceWords(finding, extras);
    return html`<span id="${toAnchor('finding', finding.id)}" tabindex="-1"><b>${finding.about ?? getCheckWords(finding.check).title}</b>: ${setFound(finding)}${asked}${evidence === '' ? NOTHING : html`, ${evidence}`}</span>`;
  });
  const lead = isShared && first.limit !== null ? html`Asked for: ${limitOf(first)}. ` : NOTHING;
  return html`<article class="find one plain"><p class="small">${drawOutcomeMark('pass', MARK)} <span class="wd ${wordClass(first)}">${outcomeText(first)}</span> ${lead}${joined(items, '; ')}.</p></article>\n`;
}

function placeOf({ limit }: Finding): string {
  return limit === null ? '' : `${sourcePlace(limit.source)} ${limit.grade}`;
}

function titleOf({ limit }: Finding): string {
  return limit === null ? '' : titleOfPublication(limit.source);
}

function othersOf(finding: Finding): string {
  return joined(setOthers(finding), '; ').markup;
}

function setOne(finding: Finding, before: Finding | undefined, { shared, assessment, extras }: Context, name?: string): Markup {
  const under = conditionWords(finding);
  const evidence = evidenceWords(finding, extras);
  const others = setOthers(finding);
  const origins = setOrigins(finding, assessment);
  const told: Markup[] = [
    html`${decisionWords(finding)}`,
    shared.place === '' ? setSource(finding, before, shared.title) : NOTHING,
    under === '' || shared.under !== '' ? NOTHING : html`Read under: ${under}.`,
    others.length === 0 || shared.others !== '' ? NOTHING : html`Also shown: ${joined(others, '; ')}.`,
    origins.markup === '' ? NOTHING : html`Worked out: ${origins}.`,
    evidence === '' ? NOTHING : html`Evidence: ${evidence}.`,
  ];
  return html`<article class="find one" id="${toAnchor('finding', finding.id)}" tabindex="-1"><div class="prow"><span class="ms">${drawOutcomeMark(finding.outcome, MARK)}</span><div class="nm"><h4>${name ?? finding.about ?? getCheckWords(finding.check).title}</h4><span>${[finding.limit === null ? '' : namedLimitText(finding.limit, finding.show), riseText(finding)].filter((part) => part !== '').join(', ')}</span></div><span class="ln">${drawMarginLine(finding, MARGIN_LINE_ROW)}</span><span class="vl">${setFound(finding)}</span><span class="wd ${wordClass(finding)}">${outcomeText(finding)}</span></div>
<p class="small">${joined(
    told.filter(({ markup }) => markup !== ''),
    ' ',
  )}</p>${setRemarks(finding, shared.remarks)}</article>\n`;
}

/** Where the limit stands; said once for those in a row that have it from one place. */
function setSource(finding: Finding, before: Finding | undefined, title: string): Markup {
  if (finding.limit === null) return NOTHING;
  if (before !== undefined && placeOf(before) === placeOf(finding)) return html`Limit from the same place.`;
  const { source, grade } = finding.limit;
  return html`Limit from: ${title === '' ? sourcePlace(source) : source.place} ${setGrade(grade)}.`;
}
