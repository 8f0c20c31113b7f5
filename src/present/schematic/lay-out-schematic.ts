import { arrange } from './arrange.ts';
import { type Block, toBlock } from './block.ts';
import { around, type Box, GRID, moved, onGrid, type Point } from './geometry.ts';
import { makeWay, onOwnSide } from './make-way.ts';
import { ranksOf } from './rank.ts';
import { route, type Terminal } from './route.ts';
import type { PlacedPart, Schematic } from './schematic.ts';
import type { SchematicInput } from './schematic-input.ts';

const AISLE = 60; // free on both sides of the barrier column, for wires and short net names, px
const BETWEEN = 40; // between parts in the barrier column, px
const MARGIN = 30;

/**
 * Lays a circuit out: mains at the left, output at the right, the barrier between them crossed only by the parts that cross it. Parts moved by
 * hand stand where they were put (`moves`: corner of the symbol, by part), on their own side, and the others make way; x counts from the left on
 * the mains side and from the barrier on the other, so that a hand's work stays when the mains side grows; in the barrier column only the height
 * counts.
 */
export async function layOutSchematic(input: SchematicInput, moves: ReadonlyMap<string, Point> = new Map()): Promise<Schematic> {
  const rankOf = ranksOf(input);
  const parts = input.circuit.parts.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  // nets that found no way even with more room are written at their pins instead, and the blocks make room for that
  const written = new Set(input.lone);
  for (;;) {
    const blocks = parts.map((part) => toBlock(part, { ...input, lone: written }, rankOf));
    let failed: ReadonlySet<string> = new Set();
    for (const air of AIRS) {
      const laid = await layOut(blocks, input, rankOf, moves, air);
      failed = laid.failed;
      if (failed.size === 0) return laid.schematic;
    }
    for (const net of failed) written.add(net);
  }
}

async function layOut(
  blocks: readonly Block[],
  input: SchematicInput,
  rankOf: (net: string | null) => number,
  moves: ReadonlyMap<string, Point>,
  air: number,
): Promise<{ schematic: Schematic; failed: ReadonlySet<string> }> {
  const of = (...zones: readonly Block['zone'][]): Block[] => blocks.filter(({ zone }) => zones.includes(zone));
  const left = await arrange(of('mains', 'across'), input, rankOf, 'mains', air);
  const right = await arrange(of('output', 'across'), input, rankOf, 'output', air);
  const corners = joinSides(blocks, left, right);
  const barrier = barrierOf(blocks, corners);
  const wanted = new Map(blocks.map((block) => [block.part.id, handMoved(block, corners.get(block.part.id)!, moves, barrier)]));
  const settled = makeWay(blocks, wanted, new Set(moves.keys()), barrier);
  return withWires(
    blocks.map((block) => place(block, settled.get(block.part.id)!)),
    input,
    barrier,
  );
}

const AIRS = [20, 30, 40, 60, 90]; // room between parts, px: more is tried only where a wire found no way

/** The mains side as it was arranged, the barrier column beside it, the output side beside that. */
function joinSides(blocks: readonly Block[], left: ReadonlyMap<string, Point>, right: ReadonlyMap<string, Point>): Map<string, Point> {
  const corners = new Map<string, Point>();
  const of = (zone: Block['zone']): Block[] => blocks.filter((block) => block.zone === zone);
  const top = (map: ReadonlyMap<string, Point>, own: readonly Block[]): number =>
    Math.min(0, ...own.map(({ part }) => map.get(part.id)?.y ?? 0));
  for (const { part } of of('mains')) corners.set(part.id, left.get(part.id)!);
  const across = of('across');
  const width = Math.max(0, ...of('mains').map((block) => left.get(block.part.id)!.x + block.width));
  const column = Math.max(
    0,
    ...across.map((block) => Math.max(block.symbolAt.x + block.shape.width / 2, block.width - block.symbolAt.x - block.shape.width / 2)),
  );
  const middle = across.length === 0 ? width : onGrid(width + AISLE + column);
  let below = Math.min(top(left, across), top(right, across));
  const height = (block: Block): number => ((left.get(block.part.id)?.y ?? 0) + (right.get(block.part.id)?.y ?? 0)) / 2;
  for (const block of across.toSorted((a, b) => height(a) - height(b) || (a.part.id < b.part.id ? -1 : 1))) {
    const y = Math.max(onGrid(height(block)), below);
    corners.set(block.part.id, { x: middle - onGrid(block.symbolAt.x + block.shape.width / 2), y });
    below = y + block.height + BETWEEN;
  }
  const offset = across.length === 0 ? (width === 0 ? 0 : width + AISLE) : onGrid(middle + column + AISLE);
  const outputs = of('output');
  const first = Math.min(...outputs.map(({ part }) => right.get(part.id)!.x), Number.POSITIVE_INFINITY);
  for (const { part } of outputs) {
    const { x, y } = right.get(part.id)!;
    corners.set(part.id, { x: offset + x - first, y });
  }
  return corners;
}

function barrierOf(blocks: readonly Block[], corners: ReadonlyMap<string, Point>): number | null {
  const [block] = blocks.filter(({ zone }) => zone === 'across');
  return block === undefined ? null : corners.get(block.part.id)!.x + block.symbolAt.x + block.shape.width / 2;
}

function handMoved(block: Block, corner: Point, moves: ReadonlyMap<string, Point>, barrier: number | null): Point {
  const wanted = moves.get(block.part.id);
  if (wanted === undefined) return corner;
  const from = block.zone === 'output' && barrier !== null ? onGrid(barrier) : 0;
  const [x, y] = [onGrid(wanted.x) + from - block.symbolAt.x, onGrid(wanted.y) - block.symbolAt.y];
  if (barrier === null) return { x, y };
  return block.zone === 'across' ? { x: corner.x, y } : { x: onOwnSide(block, x, barrier), y };
}

interface Placed extends PlacedPart {
  readonly pins: readonly (Terminal & { readonly net: string | null })[];
}

function place(block: Block, corner: Point): Placed {
  const by = ({ x, y }: Point): Point => ({ x: x + corner.x, y: y + corner.y });
  const netOf = new Map(block.part.pins.map(({ pin, net }) => [pin, net]));
  return {
    part: block.part,
    zone: block.zone,
    shape: block.shape,
    at: { x: corner.x + block.symbolAt.x, y: corner.y + block.symbolAt.y },
    labels: block.labels.map((label) => ({ ...label, box: moved(label.box, corner) })),
    names: block.names.map((name) => ({
      ...name,
      label: { ...name.label, box: moved(name.label.box, corner) },
      line: [by(name.line[0]), by(name.line[1])] as const,
    })),
    feet: block.feet.map((foot) => ({ ...foot, at: by(foot.at), pin: by(foot.pin) })),
    pins: block.pins.map(({ pin, x, y, edge }) => ({ x: x + corner.x, y: y + corner.y, edge, net: netOf.get(pin) ?? null })),
  };
}

export function symbolBox({ at, shape }: Pick<PlacedPart, 'at' | 'shape'>): Box {
  return { ...at, width: shape.width, height: shape.height };
}

export function footBox({ at }: { readonly at: Point }): Box {
  return { x: at.x - GRID, y: at.y, width: 2 * GRID, height: 2 * GRID };
}

function withWires(
  placed: readonly Placed[],
  input: SchematicInput,
  barrier: number | null,
): { schematic: Schematic; failed: ReadonlySet<string> } {
  const nets = new Map<string, Terminal[]>();
  for (const { pins } of placed)
    for (const { net, ...terminal } of pins) if (net !== null) nets.set(net, [...(nets.get(net) ?? []), terminal]);
  const names = placed.flatMap((part) => part.names);
  const boxes = placed.flatMap(boxesOf);
  const page = around(boxes);
  // a wall in the barrier: wires of one side never come to the other
  const walls = barrier === null ? [] : [onGrid(barrier)];
  const early: string[] = [];
  let routed = route(nets, boxes, walls, page);
  for (let again = 0; routed.named.length > 0 && again < MOST_TRIES; again += 1) {
    const late = routed.named.map(({ net }) => net).filter((net) => !early.includes(net));
    if (late.length === 0) break; // the same order would find the same ways
    for (const net of late) if (!early.includes(net)) early.unshift(net); // what found no way goes first the next time
    const other = route(nets, boxes, walls, page, early);
    if (other.named.length < routed.named.length || other.named.length === 0) routed = other;
  }
  const inner = around([...boxes, ...routed.wires.flatMap(({ lines }) => lines.map(lineBox))]);
  return {
    failed: new Set(routed.named.map(({ net }) => net)),
    schematic: {
      page: { x: inner.x - MARGIN, y: inner.y - MARGIN, width: inner.width + 2 * MARGIN, height: inner.height + 2 * MARGIN },
      parts: placed,
      wires: routed.wires,
      names,
      barrier,
      netNames: input.netNames,
    },
  };
}

/** Everything solid of a part. */
export function boxesOf(part: PlacedPart): Box[] {
  return [
    symbolBox(part),
    ...part.labels.map(({ box }) => box),
    ...part.feet.flatMap((foot) => [footBox(foot), lineBox([foot.pin, foot.at])]),
    ...part.names.flatMap(({ label, line }) => [label.box, lineBox(line)]),
  ];
}

const MOST_TRIES = 6;
export function lineBox([from, to]: readonly [Point, Point]): Box {
  return { x: Math.min(from.x, to.x), y: Math.min(from.y, to.y), width: Math.abs(to.x - from.x), height: Math.abs(to.y - from.y) };
}
