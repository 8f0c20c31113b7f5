import type { CircuitPart } from '../../core/circuit/circuit.ts';
import { windingOf } from '../../core/circuit/pin-names.ts';
import { around, type Box, GRID, LINE, type Point, textWidth, upToGrid } from './geometry.ts';
import { MARK_ROOM, type PartMark } from './part-mark.ts';
import type { SchematicInput, Zone } from './schematic-input.ts';
import { boxed, terminals } from './shape/boxed.ts';
import { bridge, choke, type DrawnWinding, optocoupler, transformer } from './shape/many-ended.ts';
import { EDGE_STEP, type Edge, type Shape, type ShapePin } from './shape/shape.ts';
import { shuntReference, transistor } from './shape/three-ended.ts';
import { isTwoEnded, type Lie, twoEnded } from './shape/two-ended.ts';

export interface Label {
  readonly box: Box;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
  /** Stands behind the text, inside the box. */
  readonly mark?: PartMark;
}

/** A return drawn below a pin, or below the end of a short wire out of a pin at the side. */
export interface Foot {
  readonly at: Point;
  readonly pin: Point;
  readonly net: string;
}

/** A part ready to be placed: symbol, texts and returns in one box whose corner is at 0, 0. */
export interface Block {
  readonly part: CircuitPart;
  readonly zone: Zone;
  readonly width: number;
  readonly height: number;
  /** Where the corner of the symbol lies in the box. */
  readonly symbolAt: Point;
  readonly shape: Shape;
  readonly labels: readonly Label[];
  readonly feet: readonly Foot[];
  /** Nets that are written at the end of a short wire: returns at the side, pins that nothing else joins, tracks not followed. */
  readonly names: readonly NetName[];
  /** Pins that wires go to, in coordinates of the box. */
  readonly pins: readonly ShapePin[];
}

/** A net that is written and not drawn to its end; null where the track was not followed. */
export interface NetName {
  readonly net: string | null;
  readonly label: Label;
  /** The pin and the end of its short wire. */
  readonly line: readonly [Point, Point];
}

/** The name of a net at the end of a short wire out of a pin. */
export function nameAt(net: string | null, { x, y, edge }: Pick<ShapePin, 'x' | 'y' | 'edge'>, text: string, steps: number): NetName {
  const { dx, dy } = EDGE_STEP[edge];
  const end = { x: x + dx * GRID * steps, y: y + dy * GRID * steps };
  const width = textWidth(text);
  const box: Box =
    dx === 0
      ? { x: end.x - width / 2, y: dy < 0 ? end.y - LINE : end.y, width, height: LINE }
      : { x: dx < 0 ? end.x - width - 2 : end.x + 2, y: end.y - LINE / 2, width, height: LINE };
  return { net, label: { box, text, anchor: dx === 0 ? 'middle' : dx < 0 ? 'end' : 'start' }, line: [{ x, y }, end] };
}

const NAME_STEPS = 2; // length of the short wire, in grid steps

const FOOT = 20; // room that a return takes below its pin
const FOOT_STEPS = 2; // how far out of a pin at the side a return stands, in grid steps
const GAP = 4;

/** The rank of a net: how far from the plug it is, for choosing what lies left and right. */
export type RankOf = (net: string | null) => number;

export function toBlock(part: CircuitPart, input: SchematicInput, rankOf: RankOf): Block {
  const zone = input.zoneOf.get(part.id) ?? 'mains';
  const shape = shapeOf(part, zone, input, rankOf);
  const netOf = new Map(part.pins.map(({ pin, net }) => [pin, net]));
  const feet = shape.pins.flatMap(({ pin, x, y, edge }) => {
    const net = netOf.get(pin) ?? null;
    if (net === null || !input.returns.has(net) || edge === 'top') return [];
    return [{ at: { x: x + EDGE_STEP[edge].dx * FOOT_STEPS * GRID, y }, pin: { x, y }, net }];
  });
  const labels = placeLabels(shape, input.labels.get(part.id) ?? [part.ref], input.marks.get(part.id));
  const symbol: Box = { x: 0, y: 0, width: shape.width, height: shape.height };
  const footed = new Set(feet.map(({ pin }) => `${pin.x} ${pin.y}`));
  const names = shape.pins.flatMap((pin) => {
    const net = netOf.get(pin.pin) ?? null;
    if (footed.has(`${pin.x} ${pin.y}`) || (net !== null && !input.returns.has(net) && !input.lone.has(net))) return [];
    return [nameAt(net, pin, net === null ? '?' : (input.netNames.get(net) ?? net), NAME_STEPS)];
  });
  const named = new Set(names.map(({ line: [at] }) => `${at.x} ${at.y}`));
  const whole = around([
    symbol,
    ...names.flatMap(({ label, line }) => [label.box, { ...line[1], width: 0, height: 0 }]),
    ...labels.map(({ box }) => box),
    ...feet.map(({ at }) => ({ x: at.x - GRID, y: at.y, width: 2 * GRID, height: FOOT })),
  ]);
  // the symbol stays on the grid whatever the texts take
  const shift = { x: upToGrid(-whole.x), y: upToGrid(-whole.y) };
  const by = <T extends Point>(point: T): T => ({ ...point, x: point.x + shift.x, y: point.y + shift.y });
  return {
    part,
    zone,
    width: upToGrid(shift.x + whole.x + whole.width),
    height: upToGrid(shift.y + whole.y + whole.height),
    symbolAt: shift,
    shape,
    labels: labels.map((label) => ({ ...label, box: by(label.box) })),
    feet: feet.map((foot) => ({ ...foot, at: by(foot.at), pin: by(foot.pin) })),
    names: names.map((name) => ({
      ...name,
      label: { ...name.label, box: by(name.label.box) },
      line: [by(name.line[0]), by(name.line[1])] as const,
    })),
    pins: shape.pins.filter(({ x, y }) => !footed.has(`${x} ${y}`) && !named.has(`${x} ${y}`)).map(by),
  };
}

/** Texts beside what has a pin above, on the side where no pin is; above everything else. The mark goes behind the first. */
function placeLabels(shape: Shape, lines: readonly string[], mark: PartMark | undefined): Label[] {
  const has = (edge: Edge): boolean => shape.pins.some((pin) => pin.edge === edge);
  const texts = lines.filter((line) => line !== '');
  const top = Math.max(0, (shape.height - texts.length * LINE) / 2);
  const left = has('right') && !has('left');
  return texts.map((text, index) => {
    const own = index === 0 && mark !== undefined ? { mark } : {};
    const width = textWidth(text) + (own.mark === undefined ? 0 : MARK_ROOM);
    if (!has('top')) {
      const box = { x: (shape.width - width) / 2, y: (index - texts.length) * LINE - GAP, width, height: LINE };
      return { text, anchor: 'middle', box, ...own };
    }
    const box = { x: left ? -GAP - width : shape.width + GAP, y: top + index * LINE, width, height: LINE };
    return { text, anchor: left ? 'end' : 'start', box, ...own };
  });
}

function shapeOf(part: CircuitPart, zone: Zone, input: SchematicInput, rankOf: RankOf): Shape {
  const netAt = (pin: string): string | null => part.pins.find((one) => one.pin === pin)?.net ?? null;
  const { kind } = part;
  if (kind === 'transformer') return transformerOf(part, input);
  if (kind === 'optocoupler') return optocoupler(input.sideOf.get(netAt('A') ?? netAt('K') ?? '') === 'mains');
  if (kind === 'bipolarTransistor' || kind === 'mosfet') {
    const control = rankOf(netAt(kind === 'mosfet' ? 'G' : 'B'));
    const run = Math.min(rankOf(netAt(kind === 'mosfet' ? 'D' : 'C')), rankOf(netAt(kind === 'mosfet' ? 'S' : 'E')));
    return transistor(kind, zone === 'output' && control > run);
  }
  if (kind === 'shuntReference') return shuntReference(true);
  if (kind === 'bridgeRectifier') return bridge();
  if (kind === 'commonModeChoke') return choke();
  if (kind === 'connector') {
    const isInlet = part.pins.some(({ net }) => net !== null && input.inlet.has(net));
    return terminals(
      part.pins.map(({ pin }) => pin),
      isInlet ? 'right' : 'left',
    );
  }
  const [first, second] = part.pins;
  if (kind !== null && isTwoEnded(kind) && first !== undefined && second !== undefined)
    return twoEnded(kind, [first.pin, second.pin], lieOf(part, zone, input, rankOf));
  return boxed(part.pins.map(({ pin, net }) => ({ pin, edge: edgeOf(net, zone, input, rankOf, part) })));
}

function lieOf({ pins, kind }: CircuitPart, zone: Zone, input: SchematicInput, rankOf: RankOf): Lie {
  const [one, two] = [pins[0]!.net, pins[1]!.net];
  if (zone === 'across') return one !== null && input.sideOf.get(one) === 'mains' ? 'firstLeft' : 'firstRight';
  const isReturn = (net: string | null): boolean => net !== null && input.returns.has(net);
  if (isReturn(two)) return 'firstTop';
  if (isReturn(one)) return 'firstBottom';
  const standing = kind !== null && STANDS.has(kind);
  if (standing && one !== null && two !== null) {
    const [first, second] = input.poles.map((pole) => [pole.has(one), pole.has(two)] as const);
    if ((first![0] && second![1]) || (first![1] && second![0])) return 'firstTop';
    if (input.supplies.has(one) !== input.supplies.has(two)) return input.supplies.has(one) ? 'firstTop' : 'firstBottom';
  }
  return rankOf(one) <= rankOf(two) ? 'firstLeft' : 'firstRight';
}

/** Parts that stand between a supply and what it feeds, or between the poles of the mains. */
const STANDS: ReadonlySet<string> = new Set([
  'resistor',
  'ceramicCapacitor',
  'filmCapacitor',
  'capacitor',
  'electrolyticCapacitor',
  'varistor',
]);

function edgeOf(net: string | null, zone: Zone, input: SchematicInput, rankOf: RankOf, { pins }: CircuitPart): Edge {
  if (net !== null && input.returns.has(net)) return 'bottom';
  if (zone === 'across' && net !== null) return input.sideOf.get(net) === 'mains' ? 'left' : 'right';
  const ranks = pins.map((pin) => rankOf(pin.net)).sort((a, b) => a - b);
  return rankOf(net) <= ranks[Math.floor((ranks.length - 1) / 2)]! ? 'left' : 'right';
}

const LONGEST_WINDING = 4; // letters that fit beside a winding

function transformerOf(part: CircuitPart, input: SchematicInput): Shape {
  const names = [...new Set(part.pins.flatMap(({ pin }) => windingOf(pin)?.winding ?? []))];
  const [left, right]: [DrawnWinding[], DrawnWinding[]] = [[], []];
  for (const name of names) {
    const netAt = (end: '1' | '2'): string | null => part.pins.find(({ pin }) => pin === `${name}.${end}`)?.net ?? null;
    const sides = [netAt('1'), netAt('2')].map((net) => (net === null ? undefined : input.sideOf.get(net)));
    const turns = input.turns.get(part.id)?.get(name);
    const short = turns === undefined ? name : `${name} ${turns}`;
    // what goes to a supply stands above, what goes to a return below
    const up = (net: string | null): number => (net === null ? 1 : input.supplies.has(net) ? 0 : input.returns.has(net) ? 2 : 1);
    const winding = {
      name,
      label: short.length <= LONGEST_WINDING ? short : (turns ?? name).slice(0, LONGEST_WINDING),
      dotUp: up(netAt('1')) <= up(netAt('2')),
    };
    (sides.includes('mains') || sides.every((side) => side === undefined) ? left : right).push(winding);
  }
  return right.length === 0 && left.length > 1 ? transformer(left.slice(0, 1), left.slice(1)) : transformer(left, right);
}
