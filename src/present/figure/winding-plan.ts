import type { TransformerSheet } from '../../core/result/transformer-sheet.ts';

type Layer = TransformerSheet['layers'][number];
type WindingLayer = Extract<Layer, { is: 'winding' }>;

/** A layer in pixels, measured from the upper left corner of the window. */
export type PlacedLayer =
  | {
      readonly is: 'winding';
      readonly id: string;
      readonly y: number;
      readonly height: number;
      readonly from: number;
      readonly to: number;
      readonly turns: readonly { readonly x: number; readonly y: number }[];
      readonly radius: number;
      readonly outer: number;
      readonly covered: boolean;
      readonly stands: WindingLayer['stands'];
    }
  | {
      readonly is: 'insulation';
      readonly id: string;
      readonly y: number;
      readonly height: number;
      readonly from: number;
      readonly to: number;
      readonly lines: readonly number[];
      readonly stroke: number;
      readonly folded: boolean;
      readonly known: boolean;
    };

export interface WindowPlan {
  readonly perMillimetre: number;
  /** Of the window between the walls, and of the walls. */
  readonly width: number;
  readonly wall: number;
  readonly tube: number;
  readonly height: number;
  readonly layers: readonly PlacedLayer[];
  /** The width of the window was read, so that margins are as drawn. */
  readonly toScale: boolean;
}

const MM = 1e-3;
const USUAL_WALL = 0.7 * MM; // drawn where nobody read the former
const USUAL_TUBE = 0.8 * MM;
const USUAL_TAPE = 0.05 * MM;
const USUAL_WIRE = 0.25 * MM;
const COVER = 1.12; // overall over bare diameter of an enamelled wire, for drawing only
const MOST_TURNS = 400; // of one layer; more are a grey band
const THINNEST = 0.8; // px, so that a tape stays visible on paper
const AIR = 1.2; // px between layers
const HIGHEST = 260; // px; a taller stack is drawn smaller

/** Places every layer of a transformer in a window of the given room, one scale both ways; null without a layer. */
export function placeLayers(sheet: TransformerSheet, room: number): WindowPlan | null {
  if (sheet.layers.length === 0) return null;
  const wall = sheet.former?.wall ?? USUAL_WALL;
  const tube = sheet.former?.tube ?? USUAL_TUBE;
  const window = sheet.window?.width ?? Math.max(...sheet.layers.map(widthOf));
  const tall = sheet.layers.reduce((sum, layer) => sum + heightOf(layer), 0) + tube;
  const scale = Math.min(room / (window + 2 * wall), HIGHEST / tall);
  const width = window * scale;
  let y = AIR;
  const layers = sheet.layers.map((layer): PlacedLayer => {
    const height = Math.max(heightOf(layer) * scale, layer.is === 'insulation' ? THINNEST * Math.max(1, layer.count ?? 1) : THINNEST);
    const placed =
      layer.is === 'winding'
        ? placeWinding(layer, y, height, wall * scale, width, scale)
        : placeTape(layer, y, height, wall * scale, width, scale);
    y += height + AIR;
    return placed;
  });
  return { perMillimetre: scale * MM, width, wall: wall * scale, tube: tube * scale, height: y, layers, toScale: sheet.window !== null };
}

function placeWinding(layer: WindingLayer, y: number, height: number, wall: number, width: number, scale: number): PlacedLayer {
  const outer = (overallOf(layer) * scale) / 2;
  const [left, right] = layer.margins.map((margin) => (margin ?? 0) * scale) as [number, number];
  const [from, to] = [wall + left, wall + width - right];
  const rows = Math.max(1, Math.round(layer.rows ?? 1));
  const wires = Math.round((layer.turns ?? 0) * (layer.strands ?? 1));
  const inRow = Math.ceil(wires / rows);
  const turns =
    wires === 0 || inRow > MOST_TURNS || to - from < 2 * outer
      ? []
      : Array.from({ length: wires }, (_, index) => {
          const place = index % inRow;
          const free = to - from - 2 * outer;
          return {
            x: inRow === 1 ? (from + to) / 2 : from + outer + (free * place) / (inRow - 1),
            y: y + outer + Math.floor(index / inRow) * 2 * outer,
          };
        });
  return {
    is: 'winding',
    id: layer.id,
    y,
    height,
    from,
    to,
    turns,
    radius: ((layer.wire ?? USUAL_WIRE) * scale) / 2,
    outer,
    covered: layer.wireKind === 'tripleInsulated' || layer.wireKind === 'fullyInsulated',
    stands: layer.stands,
  };
}

function placeTape(
  layer: Extract<Layer, { is: 'insulation' }>,
  y: number,
  height: number,
  wall: number,
  width: number,
  scale: number,
): PlacedLayer {
  const count = Math.max(1, Math.round(layer.count ?? 1));
  const short = layer.covers === 'stopsShort' ? (layer.short ?? 0) * scale : 0;
  const each = height / count;
  return {
    is: 'insulation',
    id: layer.id,
    y,
    height,
    from: wall + short,
    to: wall + width - short,
    lines: Array.from({ length: count }, (_, index) => y + (index + 0.5) * each),
    stroke: Math.max(THINNEST, each - 0.5),
    folded: layer.folded,
    known: layer.count !== null && layer.covers !== null,
  };
}

function overallOf({ overall, wire }: WindingLayer): number {
  return overall ?? (wire === null ? USUAL_WIRE : wire * COVER);
}

function heightOf(layer: Layer): number {
  return layer.is === 'winding'
    ? overallOf(layer) * Math.max(1, layer.rows ?? 1)
    : (layer.each ?? USUAL_TAPE) * Math.max(1, layer.count ?? 1);
}

/** Room that a winding takes along the leg, where nobody read the window. */
function widthOf(layer: Layer): number {
  if (layer.is === 'insulation') return 0;
  const rows = Math.max(1, layer.rows ?? 1);
  return ((layer.turns ?? 0) * (layer.strands ?? 1) * overallOf(layer)) / rows + (layer.margins[0] ?? 0) + (layer.margins[1] ?? 0);
}
