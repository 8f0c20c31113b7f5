import elk, { type ElkNode } from 'elkjs/lib/elk.bundled.js';
import type { Block } from './block.ts';
import { GRID, onGrid, type Point } from './geometry.ts';
import type { SchematicInput } from './schematic-input.ts';

export type Corners = ReadonlyMap<string, Point>;

const optionsFor = (air: number) => ({
  'elk.algorithm': 'layered',
  'elk.direction': 'RIGHT',
  'elk.randomSeed': '1',
  'elk.separateConnectedComponents': 'true',
  'elk.spacing.nodeNode': String(air),
  'elk.spacing.componentComponent': String(air),
  'elk.layered.spacing.nodeNodeBetweenLayers': String(air + GRID),
  'elk.layered.nodePlacement.strategy': 'BRANDES_KOEPF',
  'elk.aspectRatio': '1.6',
});

/**
 * Places the blocks of one side so that what belongs together stands together and the current runs from left to right. The layout engine only
 * places; wires are drawn here. `air` is the room between parts, px. Each block's box already holds its texts. Deterministic: the engine's seed is fixed and the input is sorted.
 */
export async function arrange(
  blocks: readonly Block[],
  input: SchematicInput,
  rankOf: (net: string | null) => number,
  at: 'mains' | 'output',
  air: number,
): Promise<Corners> {
  if (blocks.length === 0) return new Map();
  const netOf = new Map(blocks.map((block) => [block.part.id, new Map(block.part.pins.map(({ pin, net }) => [pin, net]))]));
  const byNet = new Map<string, { node: string; port: string; rank: number; layer: Layer }[]>();
  const children: ElkNode[] = blocks.map((block) => {
    const layer = layerOf(block, input, at);
    return {
      id: block.part.id,
      width: block.width,
      height: block.height,
      layoutOptions: {
        'elk.portConstraints': 'FIXED_POS',
        ...(layer === 'any' ? {} : { 'elk.layered.layering.layerConstraint': layer }),
      },
      ports: block.pins.flatMap(({ pin, x, y, edge }) => {
        const net = netOf.get(block.part.id)?.get(pin) ?? null;
        if (net === null || !belongs(input, net, at)) return [];
        const id = `${block.part.id}/${pin}`;
        byNet.set(net, [
          ...(byNet.get(net) ?? []),
          {
            node: block.part.id,
            port: id,
            rank: RANK_OF[layer] ?? rankOf(net) + ownRank(block, rankOf),
            layer,
          },
        ]);
        return [
          {
            id,
            x: edge === 'left' ? 0 : edge === 'right' ? block.width : x,
            y: edge === 'top' ? 0 : edge === 'bottom' ? block.height : y,
            width: 0,
            height: 0,
            layoutOptions: { 'elk.port.side': SIDE[edge] },
          },
        ];
      }),
    };
  });
  const edges = [...byNet].flatMap(([net, ends]) => {
    const [from, ...to] = ends.toSorted((a, b) => a.rank - b.rank || (a.port < b.port ? -1 : 1));
    if (from === undefined || input.returns.has(net)) return [];
    return (
      to
        // between two that both come first, or both last, nothing runs from left to right
        .filter(({ node, layer }) => node !== from.node && (layer === 'any' || layer !== from.layer))
        .map((end, index) => ({ id: `${net}/${index}`, sources: [from.port], targets: [end.port] }))
    );
  });
  const laid = await new elk.default().layout({ id: 'root', layoutOptions: optionsFor(air), children, edges });
  return new Map((laid.children ?? []).map(({ id, x, y }) => [id, { x: onGrid(x ?? 0), y: onGrid(y ?? 0) }]));
}

type Layer = 'FIRST' | 'LAST' | 'any';
const LAST = 1000; // behind every rank that a small board has
const RANK_OF: Readonly<Record<Layer, number | null>> = { FIRST: -1, LAST: 3 * LAST, any: null };
const SIDE = { left: 'WEST', right: 'EAST', top: 'NORTH', bottom: 'SOUTH' } as const;

/** The inlet comes first and the outlet last; what crosses the barrier stands at its edge of either side. */
function layerOf({ zone, part }: Block, input: SchematicInput, at: 'mains' | 'output'): Layer {
  if (zone === 'across') return at === 'mains' ? 'LAST' : 'FIRST';
  if (part.kind !== 'connector') return 'any';
  return part.pins.some(({ net }) => net !== null && input.inlet.has(net)) ? 'FIRST' : 'LAST';
}

function belongs(input: SchematicInput, net: string, at: 'mains' | 'output'): boolean {
  return ((input.sideOf.get(net) ?? 'mains') === 'mains') === (at === 'mains');
}

function ownRank(block: Block, rankOf: (net: string | null) => number): number {
  const ranks = block.part.pins.map(({ net }) => rankOf(net)).filter((rank) => rank < LAST);
  return ranks.length === 0 ? LAST : ranks.reduce((sum, rank) => sum + rank, 0) / ranks.length;
}
