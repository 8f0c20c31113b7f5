import type { Assessment } from '../../core/result/assessment.ts';
import type { TransformerSheet } from '../../core/result/transformer-sheet.ts';
import { drawBarrierMap, MAP_NARROW, MAP_WIDE } from '../figure/barrier-map.ts';
import { drawWindingWindow, WINDING_NARROW, WINDING_WIDE } from '../figure/winding-window.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { foundText } from '../words/found-words.ts';
import { NUMBER_NAMES, numberShow } from '../words/transformer-words.ts';
import type { FigurePart } from './figure-part.ts';
import { setAmount } from './quantity.ts';
import { linkToStep } from './report-parts.ts';

const WINDING_KEY =
  'the window cut open along the leg, outermost layer on top. Filled turns stand on the mains side, hollow ones on the side of a hand, dashed ones float; a ring around a turn is an insulating cover. A line out of the window is a lead-out that crosses what it passes, in an outline when it is sleeved.';
const MAP_KEY =
  'Dotted: nothing; dashed: less than basic; one line: basic; two lines: double or reinforced; sparse: open. The double line down the page is the barrier.';

const EARTH_KEY =
  ' Ways to the box with the sign of earth are shown and do not count as paths: earth protects as long as it is connected, which a bench does not see.';

/** Cross-sections of the transformers and the map of the barrier. */
export function transformerFigures(assessment: Assessment): readonly FigurePart[] {
  const windows = (assessment.transformers ?? []).map((sheet): FigurePart => {
    return {
      wide: drawWindingWindow(sheet, assessment, WINDING_WIDE),
      narrow: drawWindingWindow(sheet, assessment, WINDING_NARROW),
      title: `Winding of ${sheet.name}`,
      caption: WINDING_KEY,
    };
  });
  return [...windows, barrierFigure(assessment)].filter(({ wide }) => wide.markup !== '');
}

export function barrierFigure(assessment: Assessment): FigurePart {
  return {
    wide: drawBarrierMap(assessment, MAP_WIDE),
    narrow: drawBarrierMap(assessment, MAP_NARROW),
    title: 'Barrier map',
    caption: html`the weakest ways from the mains to a hand. ${MAP_KEY}${assessment.barrier?.earth === undefined ? '' : EARTH_KEY}${setWaist(assessment)}`,
  };
}

function setWaist({ barrier }: Assessment): string {
  const waist = barrier?.waist;
  if (barrier === undefined || waist == null) return '';
  const names = waist.ways.map((id) => barrier.ways.find((way) => way.id === id)?.about ?? id);
  const MOST = 6;
  return names.length > MOST ? '' : ` Every way across goes through: ${names.join('; ')}.`;
}

/** What each transformer can do, each number with its origin, and what is missing for the rest. */
export function setTransformerNumbers(assessment: Assessment): Markup {
  return joined((assessment.transformers ?? []).map(setSheet));
}

function setSheet(sheet: TransformerSheet): Markup {
  if (sheet.numbers.length === 0 && sheet.blocked.length === 0) return NOTHING;
  const rows = sheet.numbers.map(({ key, about, value, step }) => {
    const name = `${sentenceFor(NUMBER_NAMES, key)}${about === null ? '' : `, ${about}`}`;
    return html`<div><dt>${name}</dt><dd>${linkToStep(step, setAmount(value, numberShow(key)))}</dd></div>`;
  });
  const list =
    rows.length === 0
      ? NOTHING
      : html`<h3>${sheet.name}: what follows from turns, wire, core and the law by which it is driven</h3><dl class="follows">${joined(rows)}</dl>`;
  const blocked = sheet.blocked.map(({ key, missing }) => `${sentenceFor(NUMBER_NAMES, key)} (${missing.map(foundText).join(', ')})`);
  const gap = blocked.length === 0 ? NOTHING : html`<p class="gap"><b>Not worked out, and what is missing:</b> ${blocked.join('; ')}.</p>`;
  const disagree =
    sheet.disagree === null
      ? NOTHING
      : html`<p class="gap"><b>Contradiction:</b> the turns give a ratio of ${sheet.disagree.counted.toFixed(2)}, the waveforms ${sheet.disagree.seen.toFixed(2)}. Neither is used.</p>`;
  return html`${list}${disagree}${gap}`;
}
