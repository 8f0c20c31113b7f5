import type { Assessment } from '../../core/result/assessment.ts';
import { shareText } from '../derivation/budget-line.ts';
import { portFindings } from '../figure/port-table.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { findingName, getFinding } from '../words/finding-text.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { probabilityText } from '../words/probability-text.ts';
import { wordClass } from './portrait-section.ts';
import { setAmount } from './quantity.ts';
import { linkToFinding } from './report-parts.ts';

/** What label and seller promise beside what was found, but for what the table of outputs already shows. */
export function setClaims(assessment: Assessment): Markup {
  const shown = new Set(portFindings(assessment).map(({ id }) => id));
  const claims = assessment.curves.length === 0 ? assessment.claims : assessment.claims.filter(({ finding }) => !shown.has(finding));
  if (claims.length === 0) return NOTHING;
  const rows = claims.map(({ claim, claimed, measured, share, probability, finding: id }) => {
    const finding = getFinding(assessment, id);
    const met = probability === null ? 'not known' : probabilityText(probability);
    const word = finding === undefined ? NOTHING : html`<span class="${wordClass(finding)}"><b>${outcomeText(finding)}</b></span>`;
    return html`<tr><td>${finding === undefined ? claim : linkToFinding(finding, findingName(finding))}</td><td class="num" data-h="claimed">${setAmount(claimed, finding?.show)}</td><td class="num" data-h="found">${setAmount(measured, finding?.show)}</td><td class="num" data-h="share">${shareText(share)}</td><td class="num" data-h="met with probability">${met}</td><td>${word}</td></tr>`;
  });
  return html`<table class="d stack"><thead><tr><th scope="col">claim</th><th scope="col" class="num">claimed</th><th scope="col" class="num">found</th><th scope="col" class="num">share</th><th scope="col" class="num">met with probability</th><th scope="col">finding</th></tr></thead><tbody>${joined(rows)}</tbody></table>`;
}
