import type { Assessment, Finding } from '../../core/result/assessment.ts';
import type { TransformerSheet } from '../../core/result/transformer-sheet.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { amountText } from '../words/amount-text.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { outcomeText } from '../words/outcome-words.ts';
import { STANDS_WORDS, WAY_WORDS } from '../words/transformer-words.ts';
import { drawMark, outcomeClass } from './outcome-mark.ts';
import { spreadLabels } from './spread-labels.ts';
import { wrapLines } from './text-width.ts';
import { type At, drawLeads, leadAt } from './winding-leads.ts';
import { type PlacedLayer, placeLayers, type WindowPlan } from './winding-plan.ts';

export interface WindingSize {
  readonly width: number;
  /** Without the list of layers, which a page has beside it; each layer then carries its id, so that the page can point at it. */
  readonly alone?: boolean;
}
export const WINDING_WIDE: WindingSize = { width: 656 };
export const WINDING_NARROW: WindingSize = { width: 340 };
/** Beside the entry of the workspace, and above it on a narrow page. */
export const WINDING_ALONE: WindingSize = { width: 420, alone: true };
export const WINDING_ALONE_NARROW: WindingSize = { width: 340, alone: true };

const NARROW = 560;
const SIDE = 236; // room for the list beside the drawing
const EDGE = 12;
const TOP = 34; // room for the scale bar
const LINE = 15;
const CORE = 15;
const MARK = 12;
const TEXT = 18;
const CLEAR = 14;
const NUMBER = 12; // px between two numbers
const STEPS_MM = [5, 2, 1] as const;

/** The winding window cut open, to scale: turns as circles in their layers, tape as lines with their gaps, the weakest place marked. */
export function drawWindingWindow(sheet: TransformerSheet, assessment: Assessment, { width, alone = false }: WindingSize): Markup {
  const narrow = alone || width < NARROW;
  const plan = placeLayers(sheet, narrow ? width - 2 * EDGE : width - SIDE - 2 * EDGE);
  if (plan === null) return NOTHING;
  const x0 = EDGE;
  const y0 = TOP;
  const bottom = y0 + plan.height;
  const finding = findWeakest(sheet, assessment);
  const listX = narrow ? 0 : width - SIDE + EDGE;
  const list = alone
    ? { markup: NOTHING, bottom: 0 }
    : drawList(sheet, narrow ? width : SIDE - EDGE, listX, narrow ? bottom + plan.tube + CORE + 2 * LINE : TOP);
  const weakest = drawWeakest(sheet, plan, finding, { x0, y0 });
  const height = Math.max(bottom + plan.tube + CORE + LINE, list.bottom) + (narrow ? 0 : CLEAR);
  return html`<svg class="ml fig wind" width="${width}" height="${c(height)}" viewBox="0 0 ${width} ${c(height)}" role="img" aria-label="${spoken(sheet, finding)}">${drawScale(plan, x0)}${drawFormer(sheet, plan, x0, y0)}${joined(plan.layers.map((layer) => (alone ? drawNamed(layer, plan, { x0, y0 }) : drawLayer(layer, { x0, y0 }))))}${drawNumbers(plan, x0, y0)}${drawLeads(sheet, plan, { x0, y0 })}${weakest}${list.markup}</svg>`;
}

/** The finding of the pair that the weakest way of a transformer joins; null where nothing of it was judged. */
export function findWeakest(sheet: TransformerSheet, { findings }: Assessment): Finding | null {
  const { weakest } = sheet;
  if (weakest === null) return null;
  const own = findings.filter(({ check, subject }) => check === 'shock/winding-insulation' && subject?.startsWith(`${sheet.part}:`));
  return (
    own.find(({ subject }) =>
      weakest.between.every((id) =>
        subject
          ?.slice(sheet.part.length + 1)
          .split('~')
          .includes(id),
      ),
    ) ?? null
  );
}

function drawScale(plan: WindowPlan, x0: number): Markup {
  const step = STEPS_MM.find((millimetres) => millimetres * plan.perMillimetre < plan.width / 2) ?? 1;
  const length = step * plan.perMillimetre;
  const y = 12;
  return html`<path class="rule" d="M${c(x0 + plan.wall)} ${y - 4}V${y + 4}M${c(x0 + plan.wall)} ${y}H${c(x0 + plan.wall + length)}M${c(x0 + plan.wall + length)} ${y - 4}V${y + 4}"/><text class="ax" x="${c(x0 + plan.wall + length + 6)}" y="${y + 4}">${step}\u00a0mm${plan.toScale ? ', to scale' : ', width of the window not read'}</text>`;
}

function drawFormer(sheet: TransformerSheet, plan: WindowPlan, x0: number, y0: number): Markup {
  const whole = plan.width + 2 * plan.wall;
  const bottom = y0 + plan.height;
  const walls = [x0, x0 + plan.wall + plan.width].map(
    (x) => html`<rect class="former" x="${c(x)}" y="${c(y0)}" width="${c(plan.wall)}" height="${c(plan.height + plan.tube)}"/>`,
  );
  const gap = sheet.gap === null ? '' : `, gap ${length(sheet.gap)}`;
  const core = `${sheet.core === null ? 'core' : /core/i.test(sheet.core) ? sheet.core : `core ${sheet.core}`}${gap}`;
  const [cut = ''] = wrapLines(core, whole - 2 * EDGE);
  return html`${joined(walls)}<rect class="former" x="${c(x0 + plan.wall)}" y="${c(bottom)}" width="${c(plan.width)}" height="${c(plan.tube)}"/><rect class="core" x="${c(x0)}" y="${c(bottom + plan.tube)}" width="${c(whole)}" height="${CORE}"/><text class="on-core" x="${c(x0 + whole - 6)}" y="${c(bottom + plan.tube + 11.5)}" text-anchor="end">${cut}</text>`;
}

/** Windings are counted outside in; numbers that would cover each other are moved apart. */
function drawNumbers(plan: WindowPlan, x0: number, y0: number): Markup {
  const windings = plan.layers.filter((layer) => layer.is === 'winding');
  const heights = spreadLabels(
    windings.map(({ y, height }) => y0 + y + height / 2 + 4),
    NUMBER,
    y0 + plan.height + plan.tube,
  );
  return joined(heights.map((y, index) => html`<text class="ax" x="${c(x0 - 3)}" y="${c(y)}" text-anchor="end">${index + 1}</text>`));
}

const REACH = 3; // px around a layer that a pointer still meets

/** A layer that a page can point at: with its id, and ground enough for a pointer. */
function drawNamed(layer: PlacedLayer, plan: WindowPlan, at: At): Markup {
  return html`<g data-layer="${layer.id}"><rect class="ground" x="${c(at.x0 + plan.wall)}" y="${c(at.y0 + layer.y - REACH)}" width="${c(plan.width)}" height="${c(layer.height + 2 * REACH)}"/>${drawLayer(layer, at)}</g>`;
}

function drawLayer(layer: PlacedLayer, { x0, y0 }: At): Markup {
  if (layer.is === 'insulation') {
    const lines = layer.lines.map((y) => {
      const fold = layer.folded ? `M${c(x0 + layer.from)} ${c(y0 + y)}v-5M${c(x0 + layer.to)} ${c(y0 + y)}v-5` : '';
      return html`<path class="tape${layer.known ? '' : ' guess'}" stroke-width="${c(layer.stroke)}" d="M${c(x0 + layer.from)} ${c(y0 + y)}H${c(x0 + layer.to)}${fold}"/>`;
    });
    return joined(lines);
  }
  if (layer.turns.length === 0)
    return html`<rect class="unknown" x="${c(x0 + layer.from)}" y="${c(y0 + layer.y)}" width="${c(layer.to - layer.from)}" height="${c(layer.height)}"/>`;
  const cover = layer.covered
    ? (x: number, y: number) => html`<circle class="cover" cx="${x}" cy="${y}" r="${c(layer.outer)}"/>`
    : () => NOTHING;
  const turns = layer.turns.map(({ x, y }) => {
    const [cx, cy] = [x0 + x, y0 + y];
    return html`${cover(cx, cy)}<circle class="turn ${layer.stands}" cx="${c(cx)}" cy="${c(cy)}" r="${c(layer.radius)}"/>`;
  });
  return joined(turns);
}

/** The weakest way between two windings: round the edge as a line along it, else a mark where it leads through. */
function drawWeakest(sheet: TransformerSheet, plan: WindowPlan, finding: Finding | null, { x0, y0 }: At): Markup {
  const { weakest } = sheet;
  if (weakest === null || finding === null || finding.outcome === 'notAssessed') return NOTHING;
  const [a, b] = weakest.between.map((id) => plan.layers.find((layer) => layer.id === id));
  if (a?.is !== 'winding' || b?.is !== 'winding' || a.turns.length === 0 || b.turns.length === 0) return NOTHING;
  const [upper, lower] = a.y < b.y ? [a, b] : [b, a];
  const from = upper.y + upper.height;
  const to = lower.y;
  const kind = outcomeClass(finding.outcome);
  if (weakest.kind === 'edge') {
    const left = upper.from + lower.from <= 2 * plan.wall + 2 * plan.width - upper.to - lower.to + 2 * plan.wall;
    const tapes = plan.layers.filter((layer) => layer.is === 'insulation' && layer.y >= from - 1 && layer.y <= to);
    const edge = left
      ? Math.max(plan.wall, ...tapes.map((tape) => tape.from))
      : Math.min(plan.wall + plan.width, ...tapes.map((tape) => tape.to));
    const [first, last] = left ? [upper.from, lower.from] : [upper.to, lower.to];
    const radius = 2.4;
    return html`<path class="way ${kind} open" d="M${c(x0 + first)} ${c(y0 + from)}H${c(x0 + edge)}V${c(y0 + to)}H${c(x0 + last)}"/><circle class="${kind} full" cx="${c(x0 + first)}" cy="${c(y0 + from)}" r="${radius}"/><circle class="${kind} full" cx="${c(x0 + last)}" cy="${c(y0 + to)}" r="${radius}"/>`;
  }
  const x = weakest.kind === 'lead' ? leadAt(sheet, plan, weakest.way) : plan.wall + plan.width / 2;
  const middle = (from + to) / 2;
  return html`<path class="way ${kind} open" d="M${c(x0 + x)} ${c(y0 + upper.y + upper.height / 2)}V${c(y0 + lower.y + lower.height / 2)}"/>${drawMark(finding.outcome, x0 + x, y0 + middle, MARK)}`;
}

/** Every layer in words, outside in, and what is weakest; windings carry the number that stands beside them. */
function drawList(sheet: TransformerSheet, room: number, x: number, top: number): { markup: Markup; bottom: number } {
  let y = top;
  let count = 0;
  const rows = sheet.layers.map((layer) => {
    if (layer.is === 'winding') count += 1;
    const text = layer.is === 'winding' ? windingText(layer) : tapeText(layer);
    const lines = wrapLines(text, room - TEXT);
    const set = lines.map(
      (line, row) =>
        html`<text class="${layer.is === 'winding' ? 'says' : 'ax'}" x="${c(x + TEXT)}" y="${c(y + row * LINE)}">${line}</text>`,
    );
    const number = layer.is === 'winding' ? html`<text class="ax" x="${c(x + 3)}" y="${c(y)}">${count}</text>` : NOTHING;
    y += lines.length * LINE;
    return html`${number}${joined(set)}`;
  });
  return { markup: joined(rows), bottom: y };
}

type Layer = TransformerSheet['layers'][number];

function windingText(layer: Extract<Layer, { is: 'winding' }>): string {
  const turns = layer.turns === null ? 'turns not known' : `${amountText({ value: layer.turns, unit: '1', u: null })} turns`;
  const strands = layer.strands === null || layer.strands === 1 ? '' : `${layer.strands} × `;
  const wire = layer.wire === null ? '' : `, ${strands}${length(layer.wire)}`;
  return `${layer.name}: ${turns}${wire}, ${sentenceFor(STANDS_WORDS, layer.stands)}`;
}

function tapeText(layer: Extract<Layer, { is: 'insulation' }>): string {
  const count =
    layer.count === null ? 'tape, layers not known' : `tape, ${layer.count} ×${layer.each === null ? '' : ` ${length(layer.each)}`}`;
  const short = layer.covers === 'stopsShort' ? `, stops ${layer.short === null ? '' : `${length(layer.short)} `}short of the wall` : '';
  return `${count}${short}${layer.folded ? ', folded up the wall' : ''}`;
}

function length(metres: number): string {
  return amountText({ value: metres, unit: 'm', u: null }, 'millimetres');
}

function spoken(sheet: TransformerSheet, finding: Finding | null): string {
  const layers = sheet.layers.map((layer) => (layer.is === 'winding' ? windingText(layer) : tapeText(layer))).join('; ');
  const weakest =
    sheet.weakest === null || finding === null
      ? ''
      : ` Weakest, ${sentenceFor(WAY_WORDS, sheet.weakest.kind)}: ${finding.about ?? ''}, ${outcomeText(finding)}.`;
  return `Cross-section of ${sheet.name}, outside in: ${layers}.${weakest}`;
}
