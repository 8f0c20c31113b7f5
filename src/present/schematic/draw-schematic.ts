import { coordinate } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import type { Foot, Label, NetName } from './block.ts';
import { around, LINE, type Point } from './geometry.ts';
import { drawPartMark, MARK_ROOM, PART_MARKS, type PartMark } from './part-mark.ts';
import type { PlacedPart, Schematic } from './schematic.ts';

export interface DrawSchematic {
  /** One sentence for ears. */
  readonly spoken: string;
  readonly mainsWords: string;
  readonly touchWords: string;
  /** What the marks beside references mean, below the drawing; only those that stand in it are explained. */
  readonly markWords: Readonly<Record<PartMark, string>>;
  /** Nets drawn as returns, explained below the drawing. */
  readonly returnWords: (net: string) => string;
  /** On a page that answers: each part is a button with this name, and parts and wires have an area around them that is easy to hit. */
  readonly live?: { readonly partWords: (part: string) => string };
}

const LEGEND = 34; // height of the line below the drawing, px
const DOUBLE = 2; // half the distance of the two lines of the barrier, px
const REACH = 3; // how far around a part it can still be hit, px

/** The schematic as one picture: ground by side, barrier, wires, symbols, texts. Every part and net carries its id. */
export function drawSchematic(schematic: Schematic, words: DrawSchematic): Markup {
  const { page, barrier } = schematic;
  const returns = [...new Set(schematic.parts.flatMap(({ feet }) => feet.map(({ net }) => net)))].sort();
  const height = page.height + LEGEND;
  // returns left of the barrier are those of the mains side
  const mains = new Set(
    schematic.parts.flatMap(({ feet }) => feet.filter((foot) => barrier === null || foot.at.x < barrier).map(({ net }) => net)),
  );
  return html`<svg class="sch" viewBox="${coordinate(page.x)} ${coordinate(page.y)} ${coordinate(page.width)} ${coordinate(height)}" width="${coordinate(page.width)}" height="${coordinate(height)}" role="${words.live === undefined ? 'img' : 'group'}" aria-label="${words.spoken}">${ground(schematic, words)}${barrier === null ? NOTHING : drawBarrier(schematic, barrier)}${joined(
    schematic.wires.map(({ net, lines, dots }) => {
      const way = lines.map(([from, to]) => `M${at(from)}L${at(to)}`).join('');
      return html`<g class="wire" data-net="${net}">${words.live === undefined ? NOTHING : html`<path class="hit" d="${way}"/>`}<path d="${way}"/>${joined(dots.map(({ x, y }) => html`<circle class="joint" cx="${x}" cy="${y}" r="2.6"/>`))}</g>`;
    }),
  )}${joined(schematic.names.map(drawName))}${joined(schematic.parts.map((part) => drawPart(part, mains, words.live)))}${drawLegend(schematic, returns, mains, words)}</svg>`;
}

const at = ({ x, y }: Point): string => `${coordinate(x)} ${coordinate(y)}`;

function ground({ page, barrier }: Schematic, { mainsWords, touchWords }: DrawSchematic): Markup {
  const height = page.height + LEGEND;
  const baseline = page.y + 18;
  if (barrier === null) return html`<rect class="plain ground" x="${page.x}" y="${page.y}" width="${page.width}" height="${height}"/>`;
  return html`<rect class="plain mains" x="${page.x}" y="${page.y}" width="${barrier - page.x}" height="${height}"/><rect class="plain touch" x="${barrier}" y="${page.y}" width="${page.x + page.width - barrier}" height="${height}"/><text class="side" x="${page.x + 8}" y="${baseline}">${mainsWords}</text><text class="side" x="${page.x + page.width - 8}" y="${baseline}" text-anchor="end">${touchWords}</text>`;
}

/** A double line down the page; it stops at the parts that stand across it and runs on inside a transformer, between the windings. */
function drawBarrier({ page, parts }: Schematic, x: number): Markup {
  const breaks = parts
    .filter(({ zone, part }) => zone === 'across' && part.kind !== 'transformer')
    .map(({ at: corner, shape, labels }) => [Math.min(corner.y, ...labels.map(({ box }) => box.y)), corner.y + shape.height] as const)
    .concat(
      parts
        .filter(({ zone, part }) => zone === 'across' && part.kind === 'transformer')
        .flatMap(({ labels }) => labels.map(({ box }) => [box.y, box.y + box.height] as const)),
    )
    .sort(([a], [b]) => a - b);
  const pieces: string[] = [];
  let from = page.y;
  for (const [top, bottom] of breaks) {
    if (top > from) pieces.push(`M${x - DOUBLE} ${from}V${top}M${x + DOUBLE} ${from}V${top}`);
    from = Math.max(from, bottom);
  }
  const end = page.y + page.height + LEGEND;
  pieces.push(`M${x - DOUBLE} ${from}V${end}M${x + DOUBLE} ${from}V${end}`);
  return html`<path class="barrier" d="${pieces.join('')}"/>`;
}

function drawPart(placed: PlacedPart, mains: ReadonlySet<string>, live: DrawSchematic['live']): Markup {
  const { part, at: corner, shape, labels, feet } = placed;
  const fails = labels.some(({ mark }) => mark === 'fail');
  const answers = live === undefined ? NOTHING : html` role="button" tabindex="-1" aria-label="${live.partWords(part.id)}"`;
  return html`<g class="part${fails ? ' failing' : ''}" data-part="${part.id}"${answers}>${live === undefined ? NOTHING : drawReach(placed)}<g class="art" transform="translate(${coordinate(corner.x)} ${coordinate(corner.y)})">${shape.art}${joined(
    shape.texts.map(
      ({ at: place, anchor, text }) =>
        html`<text class="second" x="${coordinate(place.x)}" y="${coordinate(place.y)}" text-anchor="${anchor}">${text}</text>`,
    ),
  )}</g>${joined(labels.map((label, index) => drawLabel(label, index === 0 ? 'first' : 'second')))}${joined(feet.map((foot) => drawFoot(foot, mains.has(foot.net))))}</g>`;
}

/** Symbol and texts with a little around them, to be pointed at. */
function drawReach({ at: corner, shape, labels }: PlacedPart): Markup {
  const { x, y, width, height } = around([{ ...corner, width: shape.width, height: shape.height }, ...labels.map(({ box }) => box)]);
  return html`<rect class="hit" x="${coordinate(x - REACH)}" y="${coordinate(y - REACH)}" width="${coordinate(width + 2 * REACH)}" height="${coordinate(height + 2 * REACH)}"/>`;
}

function drawLabel({ box, anchor, text, mark }: Label, kind: string): Markup {
  const end = box.x + box.width - (mark === undefined ? 0 : MARK_ROOM);
  const x = anchor === 'start' ? box.x : anchor === 'end' ? end : (box.x + end) / 2;
  const BASELINE = 3; // from the lower edge of the line of text
  const sign = mark === undefined ? NOTHING : drawPartMark(mark, end + MARK_ROOM / 2, box.y + LINE / 2 + 1);
  return html`<text class="${kind}" x="${coordinate(x)}" y="${coordinate(box.y + LINE - BASELINE)}" text-anchor="${anchor}">${text}</text>${sign}`;
}

/** A bar for the return of the mains side, an open triangle for the other. */
function drawFoot({ at: { x, y }, pin, net }: Foot, mains: boolean): Markup {
  const wire = pin.x === x ? '' : `M${pin.x} ${y}H${x}`;
  const sign = mains
    ? html`<path class="foot" d="${wire}M${x} ${y}V${y + 8}M${x - 8} ${y + 8}H${x + 8}"/>`
    : html`<path class="foot" d="${wire}M${x} ${y}V${y + 8}M${x - 7} ${y + 8}H${x + 7}L${x} ${y + 16}Z"/>`;
  return html`<g data-net="${net}">${sign}</g>`;
}

function drawName({ net, label, line }: NetName): Markup {
  return html`<g class="wire"${net === null ? NOTHING : html` data-net="${net}"`}><path d="M${at(line[0])}L${at(line[1])}"/>${drawLabel(label, 'net')}</g>`;
}

function drawLegend(
  { page, parts }: Schematic,
  returns: readonly string[],
  mains: ReadonlySet<string>,
  { returnWords, markWords }: DrawSchematic,
): Markup {
  let x = page.x + 20;
  const y = page.y + page.height + 2;
  const entry = (sign: (at: number) => Markup, text: string): Markup => {
    const here = x;
    const ROOM = 60; // of the sign and the gap to the next, px
    x += text.length * 7 + ROOM;
    return html`${sign(here)}<text class="second" x="${here + 14}" y="${y + 12}">${text}</text>`;
  };
  const standing = new Set(parts.flatMap(({ labels }) => labels.map(({ mark }) => mark)));
  return joined([
    ...returns.map((net) => entry((here) => drawFoot({ at: { x: here, y }, pin: { x: here, y }, net }, mains.has(net)), returnWords(net))),
    ...PART_MARKS.filter((mark) => standing.has(mark)).map((mark) => entry((here) => drawPartMark(mark, here + 4, y + 8), markWords[mark])),
  ]);
}
