import type { Assessment } from '../../core/result/assessment.ts';
import type { BarrierMap } from '../../core/result/barrier-map.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, joined, type Markup, NOTHING } from '../markup/markup.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { strengthText, WAY_WORDS } from '../words/transformer-words.ts';
import { cutText, wrapLines } from './text-width.ts';

export interface MapSize {
  readonly width: number;
}
export const MAP_WIDE: MapSize = { width: 656 };
export const MAP_NARROW: MapSize = { width: 340 };

type Way = BarrierMap['ways'][number];
type Node = BarrierMap['nodes'][number] | NonNullable<BarrierMap['earth']>['nodes'][number];

const NARROW = 560;
const MOST_PATHS = 6; // a map with every way of a good unit is a thicket; the weakest are what decides
const ROW = 46;
const TOP = 34;
const NODE_HEIGHT = 24;
const LINE = 15;
const CLEAR = 8; // between the lowest box and the list
const DISC = 8;
const TEXT = 24;
const CHAR = 7.2;
const BOLD = 0.9; // strong letters are wider
const BASIC = 1;
const DOUBLE = 2;
const BARRIER_HALF = 2; // px between the two lines of the barrier

interface Placed {
  readonly node: Node;
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

/** The weakest ways from the mains to a hand: conductors as boxes, ways as lines by what they insulate, the weakest lit. */
export function drawBarrierMap({ barrier, findings }: Pick<Assessment, 'barrier' | 'findings'>, { width }: MapSize): Markup {
  if (barrier === undefined || barrier.weakest.length === 0) return NOTHING;
  const lit = findLitPath(barrier)!;
  const paths = [lit, ...barrier.weakest.filter((path) => path.ways.join() !== lit.ways.join())].slice(0, MOST_PATHS);
  const across = [...new Set(paths.flatMap((path) => path.ways))].map((id) => barrier.ways.find((way) => way.id === id)!);
  const ways = [...across, ...weakestToEarth(barrier)];
  const used = new Set(ways.flatMap(({ ends }) => ends));
  const known = new Map([...(barrier.earth?.nodes ?? []), ...barrier.nodes].map((node) => [node.id, node]));
  const placed = placeNodes(
    [...known.values()].filter(({ id }) => used.has(id)),
    ways,
    width,
  );
  const bottom = TOP + Math.max(...placed.map(({ y }) => y)) + NODE_HEIGHT;
  const outcome = findings.find(({ check }) => check === 'shock/barrier')?.outcome;
  const tone = outcome === 'pass' ? ' good' : outcome === 'fail' ? '' : ' doubt';
  const edges = drawEdges(ways, placed, new Set(lit.ways), tone);
  const list = drawList(ways, new Set(lit.ways), width, bottom + LINE + CLEAR);
  const middle = width / 2;
  const wall = [-BARRIER_HALF, BARRIER_HALF].map((shift) => html`<path class="wall" d="M${c(middle + shift)} ${TOP - 8}V${c(bottom)}"/>`);
  const heads = (['mains', 'hand'] as const).map(
    (side) =>
      html`<text class="ax strong" x="${side === 'mains' ? 0 : width}" y="12" text-anchor="${side === 'mains' ? 'start' : 'end'}">${side === 'mains' ? 'mains' : 'what a hand can touch'}</text>`,
  );
  const spoken = `Weakest ways from the mains to a hand: ${paths.map((path) => `${path.nodes.map((id) => nameOf(barrier, id)).join(' to ')}, ${strengthText(path.strength, path.strength)}`).join('; ')}`;
  return html`<svg class="ml fig across" width="${width}" height="${c(list.bottom)}" viewBox="0 0 ${width} ${c(list.bottom)}" role="img" aria-label="${spoken}">${joined(heads)}${joined(wall)}${edges}${joined(placed.map(drawNode))}${list.markup}</svg>`;
}

/** The path that decides: weakest even if everything open turns out well, where that would not do; else the weakest by what is surely there. */
export function findLitPath({ atBest, weakest }: BarrierMap): BarrierMap['weakest'][number] | undefined {
  return atBest !== null && atBest.strength < DOUBLE ? atBest : weakest[0];
}

const MOST_TO_EARTH = 4;

/** What stands least between earth and either side; shown below the paths. */
function weakestToEarth({ earth }: BarrierMap): readonly Way[] {
  const ways = earth?.ways ?? [];
  return ways.toSorted((a, b) => a.low - b.low || a.high - b.high).slice(0, MOST_TO_EARTH);
}

function nameOf(map: BarrierMap, id: string): string {
  return map.nodes.find((node) => node.id === id)?.name ?? id;
}

/** Three columns: mains left, what floats in the middle, what a hand can touch right; rows in the order in which the ways come. */
function placeNodes(nodes: readonly Node[], ways: readonly Way[], width: number): Placed[] {
  const order = new Map<string, number>();
  for (const [index, { ends }] of ways.entries()) for (const end of ends) if (!order.has(end)) order.set(end, index);
  const most = width < NARROW ? width * 0.32 : width * 0.27;
  const column = (stands: 'mains' | 'between' | 'hand'): Node[] =>
    nodes
      .filter((node) => node.stands === stands || (stands === 'between' && node.stands === 'earth'))
      .sort((a, b) => order.get(a.id)! - order.get(b.id)!);
  const rows = Math.max(...(['mains', 'hand'] as const).map((stands) => column(stands).length));
  return (['mains', 'between', 'hand'] as const).flatMap((stands) => {
    const own = column(stands);
    return own.map((node, index): Placed => {
      const half = Math.min(most, node.name.length * CHAR + 16) / 2;
      const x = stands === 'mains' ? half : stands === 'hand' ? width - half : width / 2;
      // a shorter column is spread over the height of the longest; what floats stands below both, clear of the ways beside it
      const y = stands === 'between' ? (rows + index) * ROW - ROW / 3 : ((index + 0.5) * rows * ROW) / own.length - ROW / 2;
      return { node, x, y, half };
    });
  });
}

function drawNode({ node, x, y, half }: Placed): Markup {
  const name = cutText(node.name, (2 * half - 8) * BOLD);
  const sign = node.stands === 'earth' ? drawEarthSign(x, TOP + y + NODE_HEIGHT) : NOTHING;
  return html`${sign}<rect class="node ${node.stands}" x="${c(x - half)}" y="${c(TOP + y)}" width="${c(2 * half)}" height="${NODE_HEIGHT}"/><text class="says" x="${c(x)}" y="${c(TOP + y + 16)}" text-anchor="middle">${name}</text>`;
}

/** Three strokes under a box: earth. */
function drawEarthSign(x: number, y: number): Markup {
  return html`<path class="node earth" d="M${c(x)} ${c(y)}v4M${c(x - 7)} ${c(y + 4)}h14M${c(x - 4.5)} ${c(y + 7)}h9M${c(x - 2)} ${c(y + 10)}h4"/>`;
}

/** Each way as a line with its number; ways between the same two conductors fan out. */
function drawEdges(ways: readonly Way[], placed: readonly Placed[], lit: ReadonlySet<string>, tone: string): Markup {
  const beside = new Map<string, number>();
  const lines: Markup[] = [];
  const discs: Markup[] = [];
  for (const [index, way] of ways.entries()) {
    const key = [...way.ends].sort().join('|');
    const nth = beside.get(key) ?? 0;
    beside.set(key, nth + 1);
    const [a, b] = way.ends.map((end) => placed.find(({ node }) => node.id === end)!).sort((one, two) => one!.x - two!.x) as [
      Placed,
      Placed,
    ];
    const shift = (nth % 2 === 0 ? -1 : 1) * Math.ceil(nth / 2) * 2 * DISC;
    const [x1, y1] = [a.x + a.half, TOP + a.y + NODE_HEIGHT / 2];
    const [x2, y2] = [b.x - b.half, TOP + b.y + NODE_HEIGHT / 2];
    const bend = shift * 2;
    const [mx, my] = [(x1 + x2) / 2, (y1 + y2) / 2];
    const d = `M${c(x1)} ${c(y1)}Q${c(mx)} ${c(my + bend)} ${c(x2)} ${c(y2)}`;
    const kind = kindOf(way);
    const on = lit.has(way.id) ? ` lit${tone}` : '';
    lines.push(html`<path class="edge ${kind}${on}" d="${d}"/>${kind === 'double' ? html`<path class="core-line" d="${d}"/>` : NOTHING}`);
    // numbers stand off the middle by turns, so that lines that cross there do not hide them
    const t = [0.3, 0.7, 0.4][index % 3] ?? 0.5;
    const dx = (1 - t) * (1 - t) * x1 + 2 * t * (1 - t) * mx + t * t * x2;
    const dy = (1 - t) * (1 - t) * y1 + 2 * t * (1 - t) * (my + bend) + t * t * y2;
    discs.push(
      html`<circle class="disc${on}" cx="${c(dx)}" cy="${c(dy)}" r="${DISC}"/><text class="ax" x="${c(dx)}" y="${c(dy + 4)}" text-anchor="middle">${index + 1}</text>`,
    );
  }
  return html`${joined(lines)}${joined(discs)}`;
}

/** Nothing, part of basic, basic, double; or open, where it may be any of them. */
function kindOf({ low, high }: Way): 'none' | 'part' | 'basic' | 'double' | 'open' {
  if (low < DOUBLE && high >= DOUBLE) return 'open';
  if (low >= DOUBLE) return 'double';
  if (high <= 0) return 'none';
  return high < BASIC ? 'part' : 'basic';
}

function drawList(ways: readonly Way[], lit: ReadonlySet<string>, width: number, top: number): { markup: Markup; bottom: number } {
  let y = top;
  const rows = ways.map((way, index) => {
    const kind = sentenceFor(WAY_WORDS, way.kind);
    const text = `${way.about}, ${kind}: ${strengthText(way.low, way.high)}${lit.has(way.id) ? ', on the weakest way' : ''}`;
    const lines = wrapLines(text, (width - TEXT) * (lit.has(way.id) ? BOLD : 1));
    const set = html`<text class="ax" x="14" y="${c(y)}" text-anchor="end">${index + 1}</text>${joined(lines.map((line, row) => html`<text class="${lit.has(way.id) ? 'strong' : ''}" x="${TEXT}" y="${c(y + row * LINE)}">${line}</text>`))}`;
    y += lines.length * LINE;
    return set;
  });
  return { markup: joined(rows), bottom: y };
}
