import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { findRead, openValue } from '../bench/open-value.ts';
import { type BridgingPath, suppressionAbsent } from '../board/bridging-facts.ts';
import { strengthOfParts } from '../board/bridging-worth.ts';
import type { PairFacts } from '../insulation/pair-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import type { StackFacts } from '../transformer/stack-facts.ts';
import { handPair, limitsOf, strengthOfReading } from './distance-strength.ts';
import { earthWays } from './earth-ways.ts';
import { findFewestFailures, findPaths } from './find-paths.ts';
import { findWaist, type Waist } from './find-waist.ts';
import type { Graph, Node, Path } from './graph.ts';
import { asWay, type BarrierWay, DOUBLE, fixed, open, type Strength } from './strength.ts';
import { coreOf, facesOf, nodeOf } from './winding-place.ts';
import { windingWays } from './winding-ways.ts';

/** Everything that stands between the mains and a hand, as far as anybody looked. */
export interface BarrierFacts {
  readonly nodes: readonly (Node & { readonly name: string })[];
  readonly ways: readonly BarrierWay[];
  /** Weakest paths by what is surely there, weakest first. */
  readonly weakest: readonly Path[];
  /** The weakest path if everything unknown turns out well. */
  readonly atBest: Path | null;
  readonly fewest: Path | null;
  readonly waist: Waist | null;
  /** Ways between earth and either side, which are no paths. */
  readonly earth: readonly BarrierWay[];
  /** Keys of what nobody looked at, without which the map is not whole. */
  readonly missing: readonly string[];
  /** Keys of what somebody looked at and could not tell. */
  readonly open: readonly string[];
}

const MOST_PATHS = 12;

export function barrierFacts(
  bench: Bench,
  setting: SettingFacts,
  pairs: readonly PairFacts[],
  bridging: readonly BridgingPath[],
  stacks: readonly StackFacts[],
): BarrierFacts {
  const hand = handPair(bench, setting);
  const limits = limitsOf(bench, setting, hand.pair, 'surface', { group: 'III', dirty: false });
  const ways = [
    ...distanceWays(bench, setting, pairs, hand.pair),
    ...bridging.flatMap((path) => partWay(path)),
    ...optocouplerWays(bench),
    ...stacks.flatMap((stack) => windingWays(bench, stack, setting, limits)),
    ...stacks.flatMap((stack) => joints(bench, stack)),
  ].sort((a, b) => (a.id < b.id ? -1 : 1));
  const nodes = nodesOf(bench, stacks, ways);
  const known = new Set(nodes.map(({ id }) => id));
  const inside = ways.filter(({ ends }) => ends.every((end) => known.has(end)));
  const graph = (which: 'low' | 'high'): Graph => ({ nodes, ways: inside.map((way) => asWay(way, which)) });
  const low = graph('low');
  return {
    nodes,
    ways: inside,
    weakest: findPaths(low, MOST_PATHS),
    atBest: findPaths(graph('high'), 1)[0] ?? null,
    fewest: findFewestFailures(low),
    waist: findWaist(low),
    earth: earthWays(bench, setting, pairs, bridging),
    ...gaps(bench, pairs, bridging, stacks, inside),
  };
}

const ACROSS: ReadonlySet<PairFacts['insulation']> = new Set(['reinforced', 'floating']);

function distanceWays(bench: Bench, setting: SettingFacts, pairs: readonly PairFacts[], hand: PairFacts): BarrierWay[] {
  return pairs
    .filter((pair) => ACROSS.has(pair.insulation) || bothFloat(bench, pair))
    .flatMap((pair) =>
      (['air', 'surface'] as const).flatMap((path): BarrierWay[] => {
        const limitPair = pair.insulation === 'reinforced' ? pair : hand;
        // several measurements of one gap: the smallest credible one
        const readings = pair[path].filter(({ opened }) => opened.state !== 'struck');
        const [weakest] = readings
          .map((reading) => strengthOfReading(bench, setting, pair, limitPair, path, reading))
          .toSorted((a, b) => a.high - b.high || a.low - b.low);
        if (weakest === undefined) return [];
        return [{ id: `${path}:${pair.id}`, ends: pair.ends, kind: path, about: pair.about, strength: weakest }];
      }),
    );
}

function bothFloat(bench: Bench, { ends }: PairFacts): boolean {
  return ends.some((end) => findRead(bench.conductors.get(end)?.side) === 'floating');
}

function partWay(path: BridgingPath): BarrierWay[] {
  const [from, to] = path.ends;
  if (path.towards === 'basic' || path.farEnd !== 'known' || to === null) return [];
  const { low, high, notLooked } = strengthOfParts(path);
  const fields = path.parts.flatMap(({ id }) => [`/parts/${id}/kind`, `/parts/${id}/safetyClass`]);
  return [{ id: `part:${path.id}`, ends: [from, to], kind: 'part', about: path.about, strength: fixed(low, high, { notLooked, fields }) }];
}

/** An optocoupler is reinforced when its identity is established; its pins are distances of their own. */
export function optocouplerWays(bench: Bench): BarrierWay[] {
  return bench.one.parts.flatMap((part): BarrierWay[] => {
    if (findRead(part.kind) !== 'optocoupler') return [];
    const nets = (part.pins ?? []).flatMap(({ net }) => findRead(net) ?? []);
    const on = (sides: readonly string[]): string | undefined =>
      nets.find((net) => sides.includes(findRead(bench.conductors.get(net)?.side) ?? ''));
    const [from, to] = [on(['mains']), on(['output', 'touchable'])];
    if (from === undefined || to === undefined) return [];
    return [
      {
        id: `part:${part.id}`,
        ends: [from, to],
        kind: 'optocoupler',
        about: part.ref,
        strength: optocouplerStrength(part.identity, part.id),
      },
    ];
  });
}

function optocouplerStrength(identity: BarrierOptocoupler, id: string): Strength {
  const opened = openValue(identity);
  const fields = [`/parts/${id}/identity`];
  if (opened.state === 'read' && opened.v === 'established') return fixed(DOUBLE, DOUBLE, { fields });
  return open({
    fields,
    notLooked: opened.state === 'notLooked' || opened.state === 'struck',
    notes: [{ key: 'identityNotEstablished', args: {} }],
  });
}

type BarrierOptocoupler = Bench['one']['parts'][number]['identity'];

/** A floating winding stands on the floating nets of its pins. */
function joints(bench: Bench, stack: StackFacts): BarrierWay[] {
  return stack.windings
    .filter((winding) => facesOf(winding) === 'between')
    .flatMap((winding) =>
      (winding.evidence.pins ?? []).flatMap((value) => {
        const pin = findRead(value);
        const own = (stack.part.pins ?? []).filter((one) => one.pin === pin).flatMap(({ net }) => findRead(net) ?? []);
        const nets = own.length > 0 || pin === null || !bench.conductors.has(pin) ? own : [pin];
        return nets.map((net): BarrierWay => {
          return {
            id: `joint:${stack.part.id}:${winding.id}:${net}`,
            ends: [nodeOf(stack, winding), net],
            kind: 'joint',
            about: `${winding.name}, ${nameOf(bench, net)}`,
            strength: fixed(0, 0),
          };
        });
      }),
    );
}

function nodesOf(bench: Bench, stacks: readonly StackFacts[], ways: readonly BarrierWay[]): BarrierFacts['nodes'] {
  const used = new Set(ways.flatMap(({ ends }) => ends));
  const conductors = bench.one.conductors.flatMap((conductor) => {
    const side = findRead(conductor.side);
    const stands = side === 'mains' ? 'mains' : side === 'output' || side === 'touchable' ? 'hand' : side === 'floating' ? 'between' : null;
    return stands === null || !used.has(conductor.id) ? [] : [{ id: conductor.id, name: conductor.name, stands } as const];
  });
  const listed = new Set(bench.one.conductors.map(({ id }) => id));
  const wound = stacks.flatMap((stack) => [
    ...stack.windings.flatMap((winding) => {
      const faces = facesOf(winding);
      return faces === 'unknown' ? [] : [{ id: nodeOf(stack, winding), name: `${stack.part.ref} ${winding.name}`, stands: faces } as const];
    }),
    ...(listed.has(coreOf(stack)) ? [] : [{ id: coreOf(stack), name: `${stack.part.ref} core`, stands: 'between' } as const]),
  ]);
  return [...conductors, ...wound];
}

/** What is not on the map because nobody looked, or because nobody could tell. */
function gaps(
  bench: Bench,
  pairs: readonly PairFacts[],
  bridging: readonly BridgingPath[],
  stacks: readonly StackFacts[],
  ways: readonly BarrierWay[],
): Pick<BarrierFacts, 'missing' | 'open'> {
  const missing: string[] = [];
  const doubts: string[] = [];
  const direct = pairs.filter(({ insulation }) => insulation === 'reinforced');
  if (!direct.some(({ surface }) => surface.length > 0)) missing.push('distanceSurface');
  if (!direct.some(({ air }) => air.length > 0)) missing.push('distanceAir');
  if (bridging.length === 0 && !suppressionAbsent(bench)) missing.push('bridgingParts');
  if (bridging.some(({ farEnd }) => farEnd === 'notLooked')) missing.push('farFoot');
  if (bridging.some(({ farEnd }) => farEnd === 'unknown')) doubts.push('farFoot');
  if (pairs.some(({ insulation }) => insulation === 'unknown')) doubts.push('sideNotStated');
  const transformers = bench.one.parts.filter(({ kind }) => findRead(kind) === 'transformer');
  if (transformers.length === 0 || transformers.some(({ id }) => !stacks.some(({ part }) => part.id === id))) missing.push('stack');
  for (const { side, evidence } of stacks.flatMap(({ windings }) => windings)) {
    if (side.state === 'notLooked') missing.push('windingSide');
    else if (side.state !== 'read') doubts.push('windingSide');
    if (evidence.leads === undefined) missing.push('leads');
  }
  for (const stack of stacks)
    if (!(['mains', 'hand'] as const).every((side) => stack.windings.some((winding) => facesOf(winding) === side)))
      missing.push('windings');
  if (ways.some(({ strength }) => strength.notLooked)) missing.push('waysNotLooked');
  if (exhibitsOf(bench, 'stack').length > stacks.length && stacks.length === 0) missing.push('stack');
  return { missing: [...new Set(missing)], open: [...new Set(doubts)] };
}
