import type { Assessment, Finding } from '../../core/result/assessment.ts';
import { shareText } from '../derivation/budget-line.ts';
import { toAnchor } from '../markup/anchor.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { findingValue } from '../words/finding-text.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { probabilityText } from '../words/probability-text.ts';
import { drawOutcomeMark, outcomeClass } from './outcome-mark.ts';

const CHECK = 'delivery/current';
const MARK = 11;

/** Findings about the current of a port and level. */
export function portFindings({ findings }: Pick<Assessment, 'findings'>): readonly Finding[] {
  return findings.filter(({ check, subject }) => check === CHECK && subject !== null);
}

/** Every port and level: what is claimed, what it held, the share of the claim, and the chance that the claim is met. */
export function drawPortTable(assessment: Assessment): Markup {
  const findings = portFindings(assessment);
  if (findings.length === 0) return NOTHING;
  const heads = ['claimed', 'held', 'share', 'chance'].map((head) => html`<th scope="col" class="num">${head}</th>`);
  return html`<table class="d stack ports"><caption>Every output and level: current claimed and held, and the chance that the claim is met.</caption><thead><tr><th scope="col">output</th>${joined(heads)}<th scope="col">finding</th></tr></thead><tbody>${joined(findings.map((finding) => drawRow(finding, assessment)))}</tbody></table>`;
}

function drawRow(finding: Finding, { claims }: Assessment): Markup {
  const claim = claims.find(({ finding: id }) => id === finding.id);
  const claimed = claim?.claimed ?? finding.limit?.at;
  const cells: readonly (readonly [string, string])[] = [
    ['claimed', claimed === undefined ? 'not stated' : amountText(claimed)],
    ['held', findingValue(finding) === '' ? 'not read' : findingValue(finding)],
    ['share', claim === undefined ? '' : shareText(claim.share)],
    ['chance', finding.probability === null ? '' : probabilityText(finding.probability)],
  ];
  const word = outcomeClass(finding.outcome).replace(/^m-/, '');
  const isRead = finding.outcome !== 'notAssessed' || finding.measured !== null;
  const name = finding.about ?? finding.subject ?? '';
  const output = isRead ? html`<a class="from" href="#${toAnchor('finding', finding.id)}">${name}</a>` : html`${name}`;
  return html`<tr><td>${output}</td>${joined(cells.map(([head, text]) => html`<td class="num" data-h="${head}">${text}</td>`))}<td><span class="${word} wordmark">${drawOutcomeMark(finding.outcome, MARK)}<b>${outcomeText(finding)}</b></span></td></tr>`;
}
