import type { CircuitPart } from '../circuit/circuit.ts';
import type { Winding as TracedWinding } from '../circuit/graph/links.ts';
import type { ExhibitOf } from '../evidence/case.ts';
import type { Winding } from '../solver/circuit.ts';
import { exhibitsOf } from '../working/bench/bench.ts';
import { findRead } from '../working/bench/open-value.ts';
import { turnsOf } from '../working/circuit/turns-of.ts';
import { coreValues } from '../working/transformer/core-values.ts';
import { readCount, readStackValue } from '../working/transformer/stack-value.ts';
import type { Draft } from './draft.ts';

const LEAKAGE_SHARE = 0.02;
const OHM_PER_HENRY = 1500;
const CORE_OHM_PER_HENRY = 2.5e8;
const BETWEEN_OHMS = 10;
/** Capacitance of the first winding; fewer turns have more. */
const SELF_F = 50e-12;
/** What is left of an inductance beyond saturation. House choice: the permeability of a gapped core falls to about that of its air. */
const SATURATED_SHARE = 0.1;
/** Half of the leakage that is measured at the primary with the secondary shorted lies on either side. */
const HALF = 0.5;

export type Stack = ExhibitOf<'stack'>;

export function stackOf(draft: Draft, part: CircuitPart): Stack | null {
  return exhibitsOf(draft.bench, 'stack').find((one) => one.part === part.id && one.struck === undefined) ?? null;
}

/** A figure that the stack of the transformer holds, SI; null without a reading. */
export function stackFigure(
  draft: Draft,
  stack: Stack | null,
  key: 'inductance' | 'leakage' | 'frequency' | 'peakCurrent' | 'longestOn',
): number | null {
  if (stack === null) return null;
  const kinds = {
    inductance: 'inductance',
    leakage: 'inductance',
    frequency: 'frequency',
    peakCurrent: 'current',
    longestOn: 'ratio',
  } as const;
  return readStackValue(draft.bench, stack, stack[key], `/exhibits/${stack.id}/${key}`, kinds[key], 'x').at?.value ?? null;
}

/** The transformer of a switched converter: inductance from the unwound stack, turns as traced, else as unwound. */
export function addTransformer(draft: Draft, part: CircuitPart): void {
  const { graph, converter } = draft.recognised;
  const stack = stackOf(draft, part);
  const henries = stackFigure(draft, stack, 'inductance');
  if (henries === null) draft.lack('inductance', part.ref);
  const primary = converter?.primary ?? null;
  const all = graph.windings.filter((one) => one.part === part.id && one.dot !== null && one.end !== null && one.dot !== one.end);
  const ordered = [...all.filter((one) => one.name === primary?.name), ...all.filter((one) => one.name !== primary?.name)];
  const turns = ordered.map((winding) => turnsFor(draft, part, stack, winding));
  if (henries === null || turns.includes(null)) return;
  const first = turns[0]!;
  const leakage = stackFigure(draft, stack, 'leakage') ?? draft.assume('leakageShare', part.ref, LEAKAGE_SHARE * henries);
  const windings = ordered.map(({ name, dot, end }, index): Winding => {
    const ratio = turns[index]! / first;
    return {
      name,
      pins: [dot!, end!],
      turns: turns[index]!,
      ohms: draft.assume('windingResistance', `${part.ref} ${name}`, OHM_PER_HENRY * henries * ratio * ratio),
      leakageH: HALF * leakage * ratio * ratio,
      selfF: draft.assume('windingSelf', `${part.ref} ${name}`, SELF_F / ratio),
    };
  });
  const secondary = ordered.find((one) => converter?.secondaries.some(({ winding }) => winding.name === one.name)) ?? null;
  const between =
    secondary === null || primary === null
      ? []
      : [{ windings: [primary.name, secondary.name] as const, farads: draft.assume('windingCapacitance', part.ref), ohms: BETWEEN_OHMS }];
  const saturationA = saturationOf(draft, part, stack, first, henries);
  draft.add({
    kind: 'transformer',
    ref: part.ref,
    windings,
    magnetisingH: henries - HALF * leakage,
    coreOhms: draft.assume('coreResistance', part.ref, CORE_OHM_PER_HENRY * henries),
    between,
    ...(saturationA === null ? {} : { saturation: { amps: saturationA, share: SATURATED_SHARE } }),
  });
}

function turnsFor(draft: Draft, part: CircuitPart, stack: Stack | null, winding: TracedWinding): number | null {
  const traced = turnsOf(draft.bench, winding, 'N');
  if (!('opened' in traced)) return traced.value;
  const { converter } = draft.recognised;
  const role =
    winding.name === converter?.primary?.name
      ? 'primary'
      : converter?.secondaries.some((one) => one.winding.name === winding.name)
        ? 'secondary'
        : 'auxiliary';
  const unwound = (stack?.outsideIn ?? []).flatMap((layer) =>
    layer.is === 'winding' && findRead(layer.role) === role ? (readCount(stack!, layer.turns, '', 'N').at?.value ?? []) : [],
  );
  if (unwound.length === 0) {
    draft.lack('turns', `${part.ref} ${winding.name}`);
    return null;
  }
  return draft.assume(
    'turnsFromStack',
    `${part.ref} ${winding.name}`,
    unwound.reduce((sum, one) => sum + one, 0),
  );
}

/** Current at which the core saturates, hot: B N A over L. */
function saturationOf(draft: Draft, part: CircuitPart, stack: Stack | null, turns: number, henries: number): number | null {
  const core = stack === null ? null : coreValues(draft.bench, stack);
  if (core === null || core.area === null) {
    draft.assume('noSaturation', part.ref);
    return null;
  }
  return (core.saturates.value * turns * core.area.value) / henries;
}
