import type { Chapter } from '../../core/check/bench-set.ts';
import type { Assessment } from '../../core/result/assessment.ts';
import { curvesByLevel } from '../figure/curve-names.ts';
import { distanceFindings, drawDistanceList } from '../figure/distance-list.ts';
import { drawHeatLadder, heatFindings } from '../figure/heat-ladder.ts';
import { LIST_NARROW, LIST_WIDE } from '../figure/judged-list.ts';
import { drawPortTable } from '../figure/port-table.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { CHAPTERS } from './chapter.ts';
import { type FigurePart, setFigure } from './figure-part.ts';
import { loadFigures } from './load-picture.ts';
import type { ReportExtras } from './report-parts.ts';
import { runFigures } from './run-section.ts';
import { spreadFigures } from './set-point-picture.ts';
import { soakFigures } from './soak-picture.ts';
import { lifeFigures, thermalFigures } from './thermal-picture.ts';
import { setTransformerNumbers, transformerFigures } from './transformer-picture.ts';

const MANY = 3; // figures of one chapter
const FEWEST = 2; // rows from which a list tells more than its findings

/** The pictures of a chapter, where it has any. */
export function setChapterPicture(chapter: Chapter, assessment: Assessment, extras: ReportExtras = {}): Markup {
  const before = CHAPTERS.slice(0, CHAPTERS.indexOf(chapter)).reduce(
    (sum, other) => sum + listFigures(other, assessment, extras).length,
    0,
  );
  const figures = listFigures(chapter, assessment, extras).map((part, index) => setFigure(part, before + index + 1));
  const table = chapter === 'load' && curvesByLevel(assessment).length > 0 ? drawPortTable(assessment) : NOTHING;
  if (chapter === 'transformer') return html`${joined(figures)}${setTransformerNumbers(assessment)}`;
  // on paper many figures stand in two columns, as they are drawn for a narrow page
  return figures.length < MANY ? html`${table}${joined(figures)}` : html`${table}<div class="many">${joined(figures)}</div>`;
}

export function listFigures(chapter: Chapter, assessment: Assessment, extras: ReportExtras = {}): readonly FigurePart[] {
  switch (chapter) {
    case 'load':
      return loadFigures(assessment);
    case 'heat':
      return [
        ...soakFigures(assessment),
        ...thermalFigures(assessment, extras),
        ...(heatFindings(assessment).length < FEWEST ? [] : [heatFigure(assessment)]),
        ...lifeFigures(assessment),
      ];
    case 'board':
      return distanceFindings(assessment).length < FEWEST ? [] : [distanceFigure(assessment)];
    case 'circuit':
      return [...(extras.schematic === undefined ? [] : [schematicFigure(extras.schematic)]), ...spreadFigures(assessment)];
    case 'transformer':
      return transformerFigures(assessment);
    case 'faults':
      return runFigures(extras.runs);
    default:
      return [];
  }
}

function heatFigure(assessment: Assessment): FigurePart {
  return {
    wide: drawHeatLadder(assessment, LIST_WIDE),
    narrow: drawHeatLadder(assessment, LIST_NARROW),
    title: 'Heat ladder',
    caption:
      'places by margin, the least first. The line is the permitted rise over the rise; parts are scaled to the highest ambient of the setting, what a hand touches is taken as read.',
  };
}

function distanceFigure(assessment: Assessment): FigurePart {
  return {
    wide: drawDistanceList(assessment, LIST_WIDE),
    narrow: drawDistanceList(assessment, LIST_NARROW),
    title: 'Distances',
    caption: 'pairs of conductors, the worst ratio first. Long stroke: the limit that decides. Short stroke: basic insulation.',
  };
}

function schematicFigure(schematic: Markup): FigurePart {
  const whole = html`<div class="wider">${schematic}</div>`;
  return {
    wide: whole,
    narrow: whole,
    title: 'Schematic',
    caption: 'as traced. Mains at the left, output at the right; the double line is the barrier, crossed only by the parts that cross it.',
  };
}
