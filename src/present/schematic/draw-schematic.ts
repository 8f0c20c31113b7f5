import { coordinate } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import type { Label, NetName } from './block.ts';
import { LINE, type Point } from './geometry.ts';
import type { PlacedPart, Schematic } from './schematic.ts';

export interface DrawSchematic {
  /** One sentence for ears. */
  readonly spoken: string;
  readonly mainsWords: string;
  readonly touchWords: string;
  /** Parts on which a finding fails; their texts carry a sign, explained below the drawing. */
  readonly failing: ReadonlySet<string>;
  readonly failingWords: string | null;
  /** Nets drawn as returns, explained below the drawing. */
  readonly returnWords: (net: string) => string;
  /** A net or a part that stands out. */
  readonly chosen?: { readonly nets?: ReadonlySet<string>; readonly parts?: ReadonlySet<string> };
}

const LEGEND = 34; // height of the line below the drawing, px
const DOUBLE = 2; // half the distance of the two lines of the barrier, px

/** The schematic as one picture: ground by side, barrier, wires, symbols, texts. Every part and net carries its id. */
export function drawSchematic(schematic: Schematic, words: DrawSchematic): Markup {
  const { page, barrier } = schematic;
  const returns = [...new Set(schematic.parts.flatMap(({ feet }) => feet.map(({ net }) => net)))].sort();
  const height = page.height + LEGEND;
  // returns left of the barrier are those of the mains side
  const mains = new Set(
    schematic.parts.flatMap(({ feet }) => feet.filter((foot) => barrier === null || foot.at.x < barrier).map(({ net }) => net)),
  );
  return html`<svg class="sch" viewBox="${coordinate(page.x)} ${coordinate(page.y)} ${coordinate(page.width)} ${coordinate(height)}" width="${coordinate(page.width)}" height="${coordinate(height)}" role="img" aria-label="${words.spoken}">${ground(schematic, words)}${barrier === null ? NOTHING : drawBarrier(schematic, barrier)}${joined(
    schematic.wires.map(
      ({ net, lines, dots }) =>
        html`<g class="wire${words.chosen?.nets?.has(net) === true ? ' chosen' : ''}" data-net="${net}"><path d="${lines.map(([from, to]) => `M${at(from)}L${at(to)}`).join('')}"/>${joined(dots.map(({ x, y }) => html`<circle class="joint" cx="${x}" cy="${y}" r="2.6"/>`))}</g>`,
    ),
  )}${joined(schematic.names.map(drawName))}${joined(schematic.parts.map((part) => drawPart(part, mains, classesOf(part, words))))}${drawLegend(schematic, returns, mains, words)}</svg>`;
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

function classesOf({ part }: PlacedPart, { chosen, failing }: DrawSchematic): string {
  return ['part', ...(chosen?.parts?.has(part.id) === true ? ['chosen'] : []), ...(failing.has(part.id) ? ['failing'] : [])].join(' ');
}

function drawPart({ part, at: corner, shape, labels, feet }: PlacedPart, mains: ReadonlySet<string>, classes: string): Markup {
  return html`<g class="${classes}" data-part="${part.id}"><g class="art" transform="translate(${coordinate(corner.x)} ${coordinate(corner.y)})">${shape.art}${joined(
    shape.texts.map(
      ({ at: place, anchor, text }) =>
        html`<text class="second" x="${coordinate(place.x)}" y="${coordinate(place.y)}" text-anchor="${anchor}">${text}</text>`,
    ),
  )}</g>${joined(labels.map((label, index) => drawLabel(label, index === 0 ? 'first' : 'second')))}${joined(feet.map((foot) => drawFoot(foot.at, mains.has(foot.net), foot.pin)))}</g>`;
}

function drawLabel({ box, anchor, text }: Label, kind: string): Markup {
  const x = anchor === 'start' ? box.x : anchor === 'end' ? box.x + box.width : box.x + box.width / 2;
  const BASELINE = 3; // from the lower edge of the line of text
  return html`<text class="${kind}" x="${coordinate(x)}" y="${coordinate(box.y + LINE - BASELINE)}" text-anchor="${anchor}">${text}</text>`;
}

/** A bar for the return of the mains side, an open triangle for the other. */
function drawFoot({ x, y }: Point, mains: boolean, pin: Point = { x, y }): Markup {
  const wire = pin.x === x ? '' : `M${pin.x} ${y}H${x}`;
  return mains
    ? html`<path class="foot" d="${wire}M${x} ${y}V${y + 8}M${x - 8} ${y + 8}H${x + 8}"/>`
    : html`<path class="foot" d="${wire}M${x} ${y}V${y + 8}M${x - 7} ${y + 8}H${x + 7}L${x} ${y + 16}Z"/>`;
}

function drawName({ net, label, line }: NetName): Markup {
  return html`<g class="wire"${net === null ? NOTHING : html` data-net="${net}"`}><path d="M${at(line[0])}L${at(line[1])}"/>${drawLabel(label, 'net')}</g>`;
}

function drawLegend(
  { page }: Schematic,
  returns: readonly string[],
  mains: ReadonlySet<string>,
  { returnWords, failingWords }: DrawSchematic,
): Markup {
  let x = page.x + 20;
  const y = page.y + page.height + 2;
  const entries = returns.map((net) => {
    const here = x;
    const text = returnWords(net);
    const ROOM = 60; // of the sign and the gap to the next, px
    x += text.length * 7 + ROOM;
    return html`${drawFoot({ x: here, y }, mains.has(net))}<text class="second" x="${here + 14}" y="${y + 12}">${text}</text>`;
  });
  const failing = failingWords === null ? NOTHING : html`<text class="failing" x="${x}" y="${y + 12}">${failingWords}</text>`;
  return html`${joined(entries)}${failing}`;
}
