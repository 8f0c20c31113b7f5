/** A field of numbers, row by row from the top left. */
export interface NumberField {
  readonly width: number;
  readonly height: number;
  readonly values: ArrayLike<number>;
}

type Point = readonly [x: number, y: number];

/** Where the field is at least `level`: closed rings in pixels of the field it was made from, to be filled by the even-odd rule. */
export interface Isotherm {
  readonly level: number;
  readonly rings: readonly (readonly Point[])[];
}

const WIDEST = 120; // pixels of the copy that lines are drawn through: finer than a line is thick
const BLURS = 2;
const LINES = 6; // about as many lines as can be told apart

/** A smaller, smoothed copy: means of blocks, then blurred by 1-2-1 both ways. Pixels without a number are left out of the means. */
export function smoothedCopy({ width, height, values }: NumberField): NumberField & { readonly block: number } {
  const block = Math.max(1, Math.ceil(Math.max(width, height) / WIDEST));
  const [w, h] = [Math.ceil(width / block), Math.ceil(height / block)];
  const sums = new Float64Array(w * h);
  const counts = new Uint32Array(w * h);
  for (let y = 0; y < height; y += 1) {
    const line = Math.floor(y / block) * w;
    for (let x = 0; x < width; x += 1) {
      const value = values[y * width + x]!;
      if (!Number.isFinite(value)) continue;
      const at = line + Math.floor(x / block);
      sums[at]! += value;
      counts[at]! += 1;
    }
  }
  let field: Float64Array = sums.map((sum, at) => (counts[at] === 0 ? Number.NaN : sum / counts[at]!));
  for (let k = 0; k < BLURS; k += 1) field = blurred(blurred(field, w, h, 1, w), w, h, w, h);
  return { width: w, height: h, values: field, block };
}

/** 1-2-1 along one way; `step` from neighbour to neighbour, `length` how many there are that way. */
function blurred(from: Float64Array, w: number, h: number, step: number, length: number): Float64Array {
  const to = new Float64Array(from.length);
  for (let at = 0; at < w * h; at += 1) {
    const along = step === 1 ? at % w : Math.floor(at / w);
    const own = from[at]!;
    const before = along > 0 ? from[at - step]! : own;
    const after = along < length - 1 ? from[at + step]! : own;
    to[at] = ((Number.isNaN(before) ? own : before) + 2 * own + (Number.isNaN(after) ? own : after)) / 4;
  }
  return to;
}

/** Round levels between two temperatures, about six of them. */
export function roundLevels(from: number, to: number): number[] {
  const rough = (to - from) / LINES;
  if (!(rough > 0)) return [];
  const ten = Number(`1e${Math.floor(Math.log10(rough))}`);
  const step = ([1, 2, 5, 10].find((times) => times * ten >= rough) ?? 10) * ten;
  const levels: number[] = [];
  for (let k = Math.floor(from / step) + 1; k * step < to; k += 1) levels.push(Number((k * step).toPrecision(12)));
  return levels;
}

/** Lines of equal temperature of a field, by marching squares on its smoothed copy. */
export function isotherms(field: NumberField, levels: readonly number[]): Isotherm[] {
  const copy = smoothedCopy(field);
  return levels.map((level) => ({ level, rings: ringsAt(copy, level, field) }));
}

/**
 * The copy is taken as surrounded by cold, so that every line closes. In each square of four neighbours a line leaves over the side where, going
 * round clockwise, warm turns cold, and comes in where cold turns warm: what leaves one square comes into the next.
 */
function ringsAt({ width, height, values, block }: ReturnType<typeof smoothedCopy>, level: number, whole: NumberField): Point[][] {
  const wide = width + 2;
  const at = (x: number, y: number): number =>
    x < 1 || y < 1 || x > width || y > height ? Number.NEGATIVE_INFINITY : values[(y - 1) * width + x - 1]!;
  const next = new Map<number, number>();
  const places = new Map<number, Point>();
  const crossing = (x: number, y: number, down: boolean): number => {
    const id = 2 * (y * wide + x) + (down ? 1 : 0);
    if (!places.has(id)) {
      const [a, b] = [at(x, y), down ? at(x, y + 1) : at(x + 1, y)];
      const share = Number.isFinite(a) && Number.isFinite(b) ? (level - a) / (b - a) : 0.5;
      const place = (along: number, most: number): number => Math.min(most, Math.max(0, (along - 0.5) * block));
      places.set(id, [place(x + (down ? 0 : share), whole.width), place(y + (down ? share : 0), whole.height)]);
    }
    return id;
  };
  for (let y = 0; y <= height; y += 1)
    for (let x = 0; x <= width; x += 1) {
      const corners = [at(x, y), at(x + 1, y), at(x + 1, y + 1), at(x, y + 1)];
      const warm = corners.map((value) => value >= level);
      const sides = [
        () => crossing(x, y, false),
        () => crossing(x + 1, y, true),
        () => crossing(x, y + 1, false),
        () => crossing(x, y, true),
      ];
      const leaves = [0, 1, 2, 3].filter((k) => warm[k] && !warm[(k + 1) % 4]);
      const enters = [0, 1, 2, 3].filter((k) => !warm[k] && warm[(k + 1) % 4]);
      const [only] = enters;
      if (leaves.length === 1 && only !== undefined) next.set(sides[leaves[0]!]!(), sides[only]!());
      else if (leaves.length === 2) {
        const middle = corners.reduce((sum, value) => sum + value, 0) / corners.length;
        for (const k of leaves) next.set(sides[k]!(), sides[(k + (middle >= level ? 1 : 3)) % 4]!());
      }
    }
  return toRings(next, places);
}

function toRings(next: Map<number, number>, places: ReadonlyMap<number, Point>): Point[][] {
  const rings: Point[][] = [];
  for (const start of next.keys()) {
    const ring: Point[] = [];
    let id: number | undefined = start;
    while (id !== undefined && next.has(id)) {
      ring.push(places.get(id)!);
      const following: number | undefined = next.get(id);
      next.delete(id);
      id = following;
    }
    if (ring.length > 2) rings.push(ring);
  }
  return rings;
}

/** The rings as one SVG path, to be filled by the even-odd rule. */
export function isothermPath({ rings }: Isotherm, scale = 1): string {
  const text = (value: number): string => String(Math.round(value * scale * 10) / 10);
  return rings.map((ring) => `M${ring.map(([x, y]) => `${text(x)} ${text(y)}`).join('L')}Z`).join('');
}

const APART = 0.38; // of a line’s length, from one number to the next

/** Where the number of a line stands, on its longest ring; each line has its own somewhere else, so that neighbours do not cover each other. */
export function numberPlace({ rings }: Isotherm, index: number): Point | null {
  const longest = rings.reduce<readonly Point[]>((most, ring) => (ring.length > most.length ? ring : most), []);
  return longest[Math.floor(longest.length * ((index * APART) % 1))] ?? null;
}
