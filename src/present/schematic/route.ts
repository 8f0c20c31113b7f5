import { type Box, GRID, type Point } from './geometry.ts';
import type { Edge } from './shape/shape.ts';

/** A pin that a wire goes to, on the grid, with the way it leaves its part. */
export interface Terminal extends Point {
  readonly edge: Edge;
}

export interface Wire {
  readonly net: string;
  /** Straight pieces from corner to corner. */
  readonly lines: readonly (readonly [Point, Point])[];
  /** Where more than two ends meet. */
  readonly dots: readonly Point[];
}

export interface Routed {
  readonly wires: readonly Wire[];
  /** Pins that no wire could reach: they get the name of their net. */
  readonly named: readonly { readonly net: string; readonly terminal: Terminal }[];
}

const STEPS = [
  { dx: 1, dy: 0 },
  { dx: 0, dy: 1 },
  { dx: -1, dy: 0 },
  { dx: 0, dy: -1 },
] as const;
const OUT: Readonly<Record<Edge, number>> = { right: 0, bottom: 1, left: 2, top: 3 };
const BEND = 4; // in steps: straight wires read better than short ones
const CROSSING = 6;
const MARGIN = 6; // cells around everything

/**
 * Wires on the grid, one net after the other, the shortest first. A wire never runs through a box or along another net; it may cross one at a
 * right angle. What cannot be reached is named and not forced. Nets of `early` go first, in their order.
 */
export function route(
  nets: ReadonlyMap<string, readonly Terminal[]>,
  boxes: readonly Box[],
  walls: readonly number[],
  page: Box,
  early: readonly string[] = [],
): Routed {
  const grid = new Field(page, boxes, walls);
  const wires: Wire[] = [];
  const named: { net: string; terminal: Terminal }[] = [];
  for (const terminals of nets.values()) for (const terminal of terminals) grid.keepFree(terminal);
  const turn = (net: string): number => (early.includes(net) ? early.indexOf(net) : early.length);
  const order = [...nets].sort(([a, one], [b, two]) => turn(a) - turn(b) || spread(one) - spread(two) || (a < b ? -1 : 1));
  for (const [net, terminals] of order) {
    const [first, ...rest] = terminals;
    if (first === undefined || rest.length === 0) continue;
    const tree = new Set([grid.index(first)]);
    const lines: (readonly [Point, Point])[] = [];
    const open = new Set(rest);
    while (open.size > 0) {
      const [next] = [...open].sort((a, b) => grid.distance(a, tree) - grid.distance(b, tree) || a.x - b.x || a.y - b.y);
      open.delete(next!);
      const path = grid.find(net, next!, tree);
      if (path === null) named.push({ net, terminal: next! });
      else {
        for (const cell of path) tree.add(cell);
        lines.push(...grid.take(net, path));
      }
    }
    if (lines.length === 0) named.push({ net, terminal: first });
    else if (named.some((one) => one.net === net)) named.push({ net, terminal: first });
    if (lines.length > 0) wires.push({ net, lines, dots: dotsOf(lines, terminals) });
  }
  return { wires, named };
}

function spread(terminals: readonly Terminal[]): number {
  const [xs, ys] = [terminals.map(({ x }) => x), terminals.map(({ y }) => y)];
  return Math.max(...xs) - Math.min(...xs) + Math.max(...ys) - Math.min(...ys);
}

/** Points where three or more pieces, counting a pin as one, come together. */
function dotsOf(lines: readonly (readonly [Point, Point])[], terminals: readonly Terminal[]): Point[] {
  const arms = new Map<string, Set<string>>();
  const key = ({ x, y }: Point): string => `${x} ${y}`;
  const add = (at: Point, arm: string): void => {
    arms.set(key(at), (arms.get(key(at)) ?? new Set()).add(arm));
  };
  for (const [from, to] of lines) {
    const dx = Math.sign(to.x - from.x) * GRID;
    const dy = Math.sign(to.y - from.y) * GRID;
    for (let { x, y } = from; x !== to.x || y !== to.y; x += dx, y += dy) {
      add({ x, y }, `${dx} ${dy}`);
      add({ x: x + dx, y: y + dy }, `${-dx} ${-dy}`);
    }
  }
  for (const terminal of terminals) add(terminal, 'pin');
  const MEETING = 3;
  return [...arms].filter(([, own]) => own.size >= MEETING).map(([at]) => ({ x: Number(at.split(' ')[0]), y: Number(at.split(' ')[1]) }));
}

/** Cells of the page: what is blocked, and which net runs through, lying and standing. */
class Field {
  private readonly left: number;
  private readonly top: number;
  private readonly columns: number;
  private readonly rows: number;
  private readonly blocked: Uint8Array;
  /** Number of the net that runs through a cell; 0 for none. */
  private readonly lying: Int32Array;
  private readonly standing: Int32Array;
  private readonly numbers = new Map<string, number>();
  private readonly pins = new Map<number, Terminal>();
  private readonly cost: Float64Array;
  private readonly before: Int32Array;
  /** Number of the search that last wrote a state, so that nothing has to be wiped in between. */
  private readonly stamp: Int32Array;
  /** Number of the search in whose tree a cell last was. */
  private readonly joined: Int32Array;
  private search = 0;

  constructor(page: Box, boxes: readonly Box[], walls: readonly number[]) {
    this.left = Math.floor(page.x / GRID) - MARGIN;
    this.top = Math.floor(page.y / GRID) - MARGIN;
    this.columns = Math.ceil(page.width / GRID) + 2 * MARGIN + 2;
    this.rows = Math.ceil(page.height / GRID) + 2 * MARGIN + 2;
    const cells = this.columns * this.rows;
    this.blocked = new Uint8Array(cells);
    this.lying = new Int32Array(cells);
    this.standing = new Int32Array(cells);
    this.cost = new Float64Array(cells * STEPS.length);
    this.before = new Int32Array(cells * STEPS.length);
    this.stamp = new Int32Array(cells * STEPS.length);
    this.joined = new Int32Array(cells);
    for (const { x, y, width, height } of boxes)
      for (let row = Math.floor(y / GRID); row <= Math.ceil((y + height) / GRID); row += 1)
        for (let column = Math.floor(x / GRID); column <= Math.ceil((x + width) / GRID); column += 1)
          this.block(column - this.left, row - this.top);
    for (const wall of walls) for (let row = 0; row < this.rows; row += 1) this.block(wall / GRID - this.left, row);
  }

  private numberOf(net: string): number {
    const known = this.numbers.get(net);
    if (known !== undefined) return known;
    this.numbers.set(net, this.numbers.size + 1);
    return this.numbers.size;
  }

  private block(column: number, row: number): void {
    if (column >= 0 && row >= 0 && column < this.columns && row < this.rows) this.blocked[row * this.columns + column] = 1;
  }

  index({ x, y }: Point): number {
    if (x % GRID !== 0 || y % GRID !== 0) throw new Error(`a pin at ${x}, ${y} is off the grid`);
    return (y / GRID - this.top) * this.columns + (x / GRID - this.left);
  }

  private point(index: number): Point {
    return { x: ((index % this.columns) + this.left) * GRID, y: (Math.floor(index / this.columns) + this.top) * GRID };
  }

  /** A pin lies on the edge of its own box, which is blocked: it can be entered and left the way it points only. */
  keepFree(terminal: Terminal): void {
    this.pins.set(this.index(terminal), terminal);
  }

  distance(from: Point, tree: ReadonlySet<number>): number {
    let least = Number.POSITIVE_INFINITY;
    for (const cell of tree) {
      const { x, y } = this.point(cell);
      least = Math.min(least, Math.abs(x - from.x) + Math.abs(y - from.y));
    }
    return least;
  }

  /** The cheapest way from a pin to any cell of the net's tree; null when there is none. States are cells with the direction of arrival. */
  find(net: string, from: Terminal, tree: ReadonlySet<number>): number[] | null {
    const own = this.numberOf(net);
    const start = this.index(from) * STEPS.length + OUT[from.edge];
    const ahead = this.distanceTo(tree);
    this.search += 1;
    for (const cell of tree) this.joined[cell] = this.search;
    this.cost[start] = 0;
    this.stamp[start] = this.search;
    this.before[start] = -1;
    const queue = new Heap();
    queue.push(start, ahead(Math.floor(start / STEPS.length)));
    for (let state = queue.pop(); state !== null; state = queue.pop()) {
      const cell = Math.floor(state / STEPS.length);
      const direction = state % STEPS.length;
      if (state !== start && this.joined[cell] === this.search) return this.unwind(state);
      for (let turn = 0; turn < STEPS.length; turn += 1) {
        if (state === start ? turn !== direction : (turn + 2) % STEPS.length === direction) continue;
        const { dx, dy } = STEPS[turn]!;
        const column = (cell % this.columns) + dx;
        const row = Math.floor(cell / this.columns) + dy;
        if (column < 0 || row < 0 || column >= this.columns || row >= this.rows) continue;
        const next = row * this.columns + column;
        const price = this.price(own, cell, next, turn, direction);
        if (price === null) continue;
        const sum = this.cost[state]! + price;
        const key = next * STEPS.length + turn;
        if (this.stamp[key] === this.search && sum >= this.cost[key]!) continue;
        this.stamp[key] = this.search;
        this.cost[key] = sum;
        this.before[key] = state;
        queue.push(key, sum + ahead(next));
      }
    }
    return null;
  }

  /** Steps that are left at least: to the rectangle around the tree. */
  private distanceTo(tree: ReadonlySet<number>): (cell: number) => number {
    let [left, right, top, bottom] = [Number.POSITIVE_INFINITY, 0, Number.POSITIVE_INFINITY, 0];
    for (const cell of tree) {
      const [column, row] = [cell % this.columns, Math.floor(cell / this.columns)];
      left = Math.min(left, column);
      right = Math.max(right, column);
      top = Math.min(top, row);
      bottom = Math.max(bottom, row);
    }
    return (cell) => {
      const [column, row] = [cell % this.columns, Math.floor(cell / this.columns)];
      return Math.max(0, left - column, column - right) + Math.max(0, top - row, row - bottom);
    };
  }

  /** Of one step; null where it must not go. */
  private price(net: number, cell: number, next: number, turn: number, direction: number): number | null {
    const lies = turn % 2 === 0;
    const joins = this.joined[next] === this.search;
    const pin = this.pins.get(next);
    if (pin !== undefined) {
      // only into a pin of this net, against the way it points
      if (!joins || (OUT[pin.edge] + 2) % STEPS.length !== turn) return null;
    } else if (this.blocked[next] === 1) return null;
    if (joins && this.foreign(next, net)) return null; // no joint on a crossing
    const [along, across] = lies ? [this.lying, this.standing] : [this.standing, this.lying];
    if (along[next] !== 0 && along[next] !== net) return null;
    const crosses = across[next] !== 0 && across[next] !== net;
    // no bend on a cell that another net crosses
    if (turn !== direction && this.foreign(cell, net)) return null;
    return 1 + (turn === direction ? 0 : BEND) + (crosses ? CROSSING : 0);
  }

  private foreign(cell: number, net: number): boolean {
    return (this.lying[cell] !== 0 && this.lying[cell] !== net) || (this.standing[cell] !== 0 && this.standing[cell] !== net);
  }

  private unwind(state: number): number[] {
    const path: number[] = [];
    for (let at = state; at >= 0; at = this.before[at]!) path.push(Math.floor(at / STEPS.length));
    return path.reverse();
  }

  /** Marks the cells of a path as taken and gives its straight pieces. */
  take(net: string, path: readonly number[]): (readonly [Point, Point])[] {
    const own = this.numberOf(net);
    const points = path.map((cell) => this.point(cell));
    for (const [index, cell] of path.entries()) {
      const [here, prior, next] = [points[index]!, points[index - 1], points[index + 1]];
      const lies = [prior, next].some((other) => other !== undefined && other.y === here.y);
      const stands = [prior, next].some((other) => other !== undefined && other.x === here.x);
      const ends = index === 0 || index === path.length - 1;
      if (lies || ends) this.lying[cell] = own;
      if (stands || ends) this.standing[cell] = own;
    }
    const lines: (readonly [Point, Point])[] = [];
    let from = points[0]!;
    for (let index = 1; index < points.length; index += 1) {
      const [here, next] = [points[index]!, points[index + 1]];
      if (next !== undefined && (next.x - here.x) * (here.y - from.y) === 0 && (next.y - here.y) * (here.x - from.x) === 0) continue;
      lines.push([from, here]);
      from = here;
    }
    return lines;
  }
}

/** The cheapest first; equal costs in the order they came, so that the same circuit gives the same wires. Three numbers an entry, side by side. */
class Heap {
  private readonly states: number[] = [];
  private readonly costs: number[] = [];
  private readonly orders: number[] = [];
  private count = 0;

  push(state: number, cost: number): void {
    let at = this.states.length;
    const order = this.count++;
    this.put(at, state, cost, order);
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (!this.isBefore(cost, order, parent)) break;
      this.put(at, this.states[parent]!, this.costs[parent]!, this.orders[parent]!);
      at = parent;
    }
    this.put(at, state, cost, order);
  }

  pop(): number | null {
    const top = this.states[0];
    const state = this.states.pop();
    const cost = this.costs.pop();
    const order = this.orders.pop();
    if (top === undefined || state === undefined || cost === undefined || order === undefined) return null;
    const length = this.states.length;
    if (length === 0) return top;
    let at = 0;
    for (let child = 1; child < length; child = 2 * at + 1) {
      if (child + 1 < length && this.isBefore(this.costs[child + 1]!, this.orders[child + 1]!, child)) child += 1;
      if (this.isBefore(cost, order, child)) break;
      this.put(at, this.states[child]!, this.costs[child]!, this.orders[child]!);
      at = child;
    }
    this.put(at, state, cost, order);
    return top;
  }

  private put(at: number, state: number, cost: number, order: number): void {
    this.states[at] = state;
    this.costs[at] = cost;
    this.orders[at] = order;
  }

  private isBefore(cost: number, order: number, other: number): boolean {
    const than = this.costs[other]!;
    return cost < than || (cost === than && order < this.orders[other]!);
  }
}
