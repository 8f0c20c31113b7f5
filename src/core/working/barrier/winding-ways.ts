import { derive } from '../../formula/derive.ts';
import { wayRoundEdge } from '../../formula/insulation/way-round-edge.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import type { DistanceLimits } from '../insulation/clearance-limits.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import type { StackFacts, Winding } from '../transformer/stack-facts.ts';
import { strengthOfDistance } from './distance-strength.ts';
import { leadWays } from './lead-ways.ts';
import { type BarrierWay, open, type Strength } from './strength.ts';
import { tapesBetween, throughStrength } from './through-strength.ts';
import { coreOf, facesOf, nodeOf } from './winding-place.ts';
import { withWires } from './wire-strength.ts';

/** Every way between two windings that do not stand on one side, between each winding and the core, and along each lead-out. */
export function windingWays(bench: Bench, stack: StackFacts, setting: SettingFacts, limits: DistanceLimits | null): BarrierWay[] {
  const { windings, part } = stack;
  const pairs = windings.flatMap((a, index) =>
    windings.slice(index + 1).map((b) => (facesOf(b) === 'mains' ? ([b, a] as const) : ([a, b] as const))),
  );
  const across = pairs.filter(([a, b]) => facesOf(a) !== facesOf(b) || facesOf(a) === 'between');
  return [
    ...across.flatMap(([a, b]) => pairWays(stack, a, b, setting, limits)),
    ...windings.map((winding): BarrierWay => {
      return {
        id: `core:${part.id}:${winding.id}`,
        ends: [nodeOf(stack, winding), coreOf(stack)],
        kind: 'core',
        about: `${part.ref}: ${winding.name} to the core`,
        strength: withWires(coreStrength(stack, winding, setting, limits), [winding]),
      };
    }),
    ...leadWays(bench, stack, setting.decision.passAt),
  ];
}

function pairWays(stack: StackFacts, a: Winding, b: Winding, setting: SettingFacts, limits: DistanceLimits | null): BarrierWay[] {
  const key = `${stack.part.id}:${a.id}~${b.id}`;
  const about = `${stack.part.ref}: ${a.name} to ${b.name}`;
  const ends = [nodeOf(stack, a), nodeOf(stack, b)] as const;
  const through: BarrierWay = {
    id: `through:${key}`,
    ends,
    kind: 'through',
    about,
    strength: withWires(throughStrength(stack, a, b, setting.decision.passAt), [a, b]),
  };
  const tapes = tapesBetween(stack, a, b);
  if (tapes.length === 0 || tapes.some(({ folded }) => folded)) return [through];
  const edge: BarrierWay = {
    id: `edge:${key}`,
    ends,
    kind: 'edge',
    about,
    strength: withWires(edgeStrength(stack, a, b, setting, limits), [a, b]),
  };
  return [through, edge];
}

function edgeStrength(stack: StackFacts, a: Winding, b: Winding, setting: SettingFacts, limits: DistanceLimits | null): Strength {
  const id = `barrier/${stack.part.id}/${a.id}~${b.id}/edge`;
  const { margins: one } = a;
  const { margins: other } = b;
  const fields = [...(one ?? []), ...(other ?? [])].map(({ field }) => field);
  if (one === null || other === null) return open({ notLooked: true, notes: [{ key: 'marginsNotRead', args: {} }] });
  const states = [...one, ...other];
  if (limits === null) return open({ fields });
  if (states.some(({ at }) => at === null))
    return open({
      fields,
      notLooked: states.some(({ opened }) => opened.state === 'notLooked'),
      notes: [{ key: 'marginsNotRead', args: {} }],
    });
  const tapes = tapesBetween(stack, a, b);
  const thickness = tapes.reduce<Derived>(
    (sum, tape, index) => {
      if (tape.each.at === null || tape.layers.at === null) return sum;
      const all = times(tape.each.at, tape.layers.at, `${id}/thickness-${index}`);
      return plus(sum, all, `${id}/thickness-to-${index}`);
    },
    given('constant', 0, 'm', { id: `${id}/no-thickness`, name: 'noThickness', symbol: 't' }),
  );
  const shorts = tapes.flatMap(({ covers, short }) => (covers.state === 'read' && covers.v === 'stopsShort' ? [short] : []));
  if (shorts.some(({ at }) => at === null))
    return open({ fields: [...fields, ...shorts.map(({ field }) => field)], notes: [{ key: 'shortNotRead', args: {} }] });
  const short =
    shorts.map(({ at }) => at!).toSorted((x, y) => y.value - x.value)[0] ??
    given('constant', 0, 'm', { id: `${id}/reaches-wall`, name: 'reachesWall', symbol: 's' });
  const piece = facesOf(a) === 'between' || facesOf(b) === 'between';
  const ways = [0, 1].map((end) => {
    const inner = one[end as 0 | 1].at!;
    const outer = other[end as 0 | 1].at!;
    const distance = derive(wayRoundEdge, { inner, outer, short, thickness }, `${id}/way-${end}`);
    const strength = strengthOfDistance(distance, limits, `${id}/layers-${end}`, {
      degree: setting.pollutionDegree.word,
      piece,
      setting,
      fields,
    });
    return {
      ...strength,
      notes: [...strength.notes, { key: 'wayRoundEdge', args: { inner: inner.value, outer: outer.value, way: distance.value } }],
    };
  });
  return ways.toSorted((x, y) => x.high - y.high || x.low - y.low)[0]!;
}

function coreStrength(stack: StackFacts, winding: Winding, setting: SettingFacts, limits: DistanceLimits | null): Strength {
  const { toCore } = winding;
  const fields = [toCore.field];
  if (toCore.opened.state === 'absent') return open({ low: 0, high: 0, fields });
  if (toCore.at === null)
    return open({
      fields,
      notLooked: toCore.opened.state !== 'unknown' && toCore.opened.state !== 'read',
      notes: [{ key: 'toCoreNotRead', args: { name: winding.name } }],
    });
  if (limits === null) return open({ fields });
  return strengthOfDistance(toCore.at, limits, `barrier/${stack.part.id}/${winding.id}/core`, {
    degree: setting.pollutionDegree.word,
    piece: true,
    setting,
    fields,
  });
}

function times(a: Derived, b: Derived, id: string): Derived {
  return combine(
    {
      kind: 'reduce',
      unit: 'm',
      formula: null,
      symbols: { a: 't', b: 'n' },
      moves: { a: 'up', b: 'up' },
      compute: (plain) => plain.a * plain.b,
    },
    { a, b },
    { id, name: 'allLayers', symbol: 't', show: 'millimetres' },
  );
}

function plus(a: Derived, b: Derived, id: string): Derived {
  return combine(
    {
      kind: 'reduce',
      unit: 'm',
      formula: null,
      symbols: { a: 't_1', b: 't_2' },
      moves: { a: 'up', b: 'up' },
      compute: (plain) => plain.a + plain.b,
    },
    { a, b },
    { id, name: 'allLayers', symbol: 't', show: 'millimetres' },
  );
}
