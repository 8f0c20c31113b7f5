import type { Assessment } from '../../core/result/assessment.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, joined, type Markup, NOTHING, verbatim } from '../markup/markup.ts';
import { DECISION_RULE, HOW_TO_READ, INVENTED, ONE_SAMPLE } from '../words/fixed-sentences.ts';
import { setBench } from './bench-section.ts';
import { isShort } from './chapter.ts';
import { listChapters } from './chapters-section.ts';
import { setClaims } from './claims-section.ts';
import { setCautions, setStatement, setUnjudged, setWarnings } from './closing-section.ts';
import { setDerivation } from './derivation-section.ts';
import { setFacts } from './facts-section.ts';
import { setNext } from './next-section.ts';
import { setPortrait } from './portrait-section.ts';
import { type ReportExtras, type Section, setSection } from './report-parts.ts';
import { reportStyle } from './report-style.ts';
import { setSources } from './sources-section.ts';
import { policyFor } from './style-policy.ts';
import { setUnexamined } from './unexamined-section.ts';
import { setVerdict } from './verdict-section.ts';

/** The whole report as one file: no script, nothing loaded, only its own style allowed. The same Assessment gives the same bytes. */
export function renderReport(assessment: Assessment, extras: ReportExtras = {}): string {
  const { name, sample, invented } = assessment.case;
  const style = reportStyle(`${name}, sample ${sample}${invented ? ', invented' : ''}`);
  const sections = listSections(assessment, extras).filter(({ body }) => body.markup !== '');
  const page = html`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policyFor(style)}"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="referrer" content="no-referrer"><meta name="color-scheme" content="light dark"><title>${name}, sample ${sample}: report${invented ? ' (invented)' : ''}</title><style>${verbatim(style)}</style></head>
<body><a class="skip" href="#verdict">To the verdict</a>
<nav class="contents" aria-label="Contents"><a href="#verdict">Verdict</a>${joined(sections.map(({ id, title }) => html`<a href="#${toAnchor('part', id)}">${title}</a>`))}</nav>
<main class="sheet${isShort(assessment) ? ' short' : ''}">${setHead(assessment)}
${setVerdict(assessment)}
${setFacts(assessment)}
${setBench(assessment)}
${joined(sections.map(setSection))}</main></body></html>
`;
  return page.markup;
}

function listSections(assessment: Assessment, extras: ReportExtras): readonly Section[] {
  const chapters = listChapters(assessment, extras).filter(({ body }) => body.markup !== '');
  return [
    { id: 'portrait', title: 'Portrait', body: setPortrait(assessment) },
    ...chapters.map((chapter, index) =>
      index === 0
        ? {
            ...chapter,
            body: html`<p class="small">${DECISION_RULE}</p>${isShort(assessment) ? html`<p class="small paper">${HOW_TO_READ}</p>` : NOTHING}${chapter.body}`,
          }
        : chapter,
    ),
    { id: 'claims', title: 'Claims and findings', body: setClaims(assessment) },
    { id: 'unexamined', title: 'What was not examined', body: setUnexamined(assessment) },
    { id: 'next', title: 'What to measure next', body: setNext(assessment) },
    { id: 'warnings', title: 'Remarks on the case', body: setWarnings(assessment, extras) },
    { id: 'unjudged', title: 'Kept, not judged', body: setUnjudged(assessment) },
    { id: 'cautions', title: 'Cautions', body: setCautions(assessment) },
    { id: 'derivation', title: 'Where every number comes from', body: setDerivation(assessment, extras) },
    { id: 'sources', title: 'Sources', body: setSources(assessment) },
    { id: 'statement', title: 'About this document', body: setStatement(assessment) },
  ];
}

function setHead({ case: about }: Assessment): Markup {
  const loud = about.invented ? html`<p class="invented">${INVENTED}</p>` : NOTHING;
  return html`<header><p class="run"><span>${drawSign()} Mainsworthy report</span><span>${about.id}</span></p><h1>${about.name}</h1><p class="sub">Sample ${about.sample}. ${ONE_SAMPLE}</p>${loud}</header>`;
}

/** A limit and a reading: the margin line as a sign. */
function drawSign(): Markup {
  return html`<svg class="ml" width="18" height="18" viewBox="0 0 22 22" aria-hidden="true"><path class="limit" d="M11 1V21"/><path class="bad" d="M1 11H9"/><path class="good" d="M13 11H21"/><circle class="sign" cx="16.5" cy="11" r="3.4"/></svg>`;
}
