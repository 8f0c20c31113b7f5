import type { Assessment } from '../../core/result/assessment.ts';
import { FIGURE_CSS, LIGHT_COLOURS } from '../figure/figure-style.ts';
import { html, type Markup, verbatim } from '../markup/markup.ts';
import { fontFaces } from '../report/report-style.ts';
import { policyFor } from '../report/style-policy.ts';
import { SHEET_TITLE, SHEET_WORDS } from '../words/circuit-words.ts';
import { INVENTED } from '../words/fixed-sentences.ts';
import { SCHEMATIC_CSS } from './schematic-style.ts';

export const PAPERS = ['A4', 'A3'] as const;
export type Paper = (typeof PAPERS)[number];

/**
 * The drawing alone on one sheet lying on its long side, for paper or for a PDF by the browser's own print: no script, nothing loaded, only
 * its own style. The colours are those of a light ground.
 */
export function renderDrawingSheet(figure: Markup, { name, sample, invented }: Assessment['case'], paper: Paper): string {
  const style = sheetStyle(paper);
  const page = html`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policyFor(style)}"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="referrer" content="no-referrer"><title>${SHEET_TITLE(name, sample)}</title><style>${verbatim(style)}</style></head>
<body><p class="how">${SHEET_WORDS(paper)}</p><main><h1>${name} <span>sample ${sample}</span></h1>${invented ? html`<p>${INVENTED}</p>` : ''}${figure}</main></body></html>
`;
  return page.markup;
}

/** The drawing takes the width of the sheet, or its height where that is less; what explains how to print stays off the paper. */
function sheetStyle(paper: Paper): string {
  return `${fontFaces()}:root{${LIGHT_COLOURS}}${FIGURE_CSS}${SCHEMATIC_CSS}
@page{size:${paper} landscape;margin:10mm}
body{margin:0;background:var(--paper);color:var(--ink);font:14px/1.4 "Source Sans 3",system-ui,sans-serif}
.how{margin:0;padding:12px 16px;background:var(--heather-tint)}main{padding:16px}
h1{font-size:16px;margin:0 0 4px}main p{margin:0 0 8px}h1 span{font-weight:400;color:var(--ink-2)}
.sch{width:100%;height:auto;max-height:calc(100vh - 64px)}
@media print{.how{display:none}main{padding:0}body{background:none}.sch{-webkit-print-color-adjust:exact;print-color-adjust:exact}}
`;
}
