import type { Block } from './block.ts';
import { type Box, GRID, onGrid, overlaps, type Point } from './geometry.ts';

const OFF_BARRIER = 2 * GRID; // least distance of a part from a barrier that it does not cross, px
const STEP = 2 * GRID; // from one place that is tried to the next, px
const GAP = 2 * GRID; // left for a wire between a part that made way and its neighbours, px

/** The nearest x at which a block lies wholly on its side. */
export function onOwnSide({ zone, width }: Block, x: number, barrier: number): number {
  return zone === 'mains' ? Math.min(x, onGrid(barrier) - OFF_BARRIER - width) : Math.max(x, onGrid(barrier) + OFF_BARRIER);
}

/**
 * Keeps blocks off each other once some were moved by hand: the moved ones stand (the later of two that meet gives way), every other one
 * that one of them covers goes to the nearest free place of its side; in the barrier column only up or down. Nothing moves where nothing was
 * moved by hand. Corners by part.
 */
export function makeWay(
  blocks: readonly Block[],
  wanted: ReadonlyMap<string, Point>,
  byHand: ReadonlySet<string>,
  barrier: number | null,
): ReadonlyMap<string, Point> {
  const moved = blocks.filter(({ part }) => byHand.has(part.id));
  if (moved.length === 0) return wanted;
  const settled = new Map(wanted);
  const standing: Box[] = [];
  const settle = (block: Block, at: Point): void => {
    settled.set(block.part.id, at);
    standing.push(boxAt(block, at));
  };
  for (const block of moved) settle(block, nearestFree(block, wanted.get(block.part.id)!, standing, barrier));
  const others = blocks.filter((block) => !moved.includes(block));
  const covered = others.filter((block) => !isFree(boxAt(block, wanted.get(block.part.id)!), standing));
  for (const block of others) if (!covered.includes(block)) settle(block, wanted.get(block.part.id)!);
  for (const block of covered) settle(block, nearestFree(block, wanted.get(block.part.id)!, standing, barrier));
  return settled;
}

function boxAt({ width, height }: Block, at: Point): Box {
  return { ...at, width, height };
}

function isFree(box: Box, standing: readonly Box[], gap = 0): boolean {
  const wide = { x: box.x - gap, y: box.y - gap, width: box.width + 2 * gap, height: box.height + 2 * gap };
  return standing.every((other) => !overlaps(wide, other));
}

/** Rings around the wanted place, nearest first; below everything there is always room. */
function nearestFree(block: Block, at: Point, standing: readonly Box[], barrier: number | null): Point {
  if (isFree(boxAt(block, at), standing)) return at;
  for (let ring = 1; ; ring += 1) {
    const around = ringOf(ring).map(({ x, y }) => ({ x: block.zone === 'across' ? at.x : at.x + x, y: at.y + y }));
    const places = around.map(({ x, y }) => ({ x: block.zone === 'across' || barrier === null ? x : onOwnSide(block, x, barrier), y }));
    const free = places.find((place) => isFree(boxAt(block, place), standing, GAP));
    if (free !== undefined) return free;
  }
}

/** Steps of a square ring, the straight ones first. */
function ringOf(ring: number): Point[] {
  const points: Point[] = [];
  for (let x = -ring; x <= ring; x += 1)
    for (let y = -ring; y <= ring; y += 1) if (Math.max(Math.abs(x), Math.abs(y)) === ring) points.push({ x: x * STEP, y: y * STEP });
  return points.toSorted((a, b) => a.x * a.x + a.y * a.y - (b.x * b.x + b.y * b.y) || b.y - a.y || a.x - b.x);
}
