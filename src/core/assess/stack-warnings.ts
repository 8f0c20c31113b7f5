import type { Value } from '../evidence/value.ts';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import { isRefusal } from '../quantity/refusal.ts';
import type { Kind } from '../quantity/unit.ts';
import type { Assessment } from '../result/assessment.ts';
import { findRead } from '../working/bench/open-value.ts';
import type { Facts } from '../working/facts.ts';
import { isUnknownCore } from '../working/transformer/core-values.ts';
import type { StackFacts, Winding } from '../working/transformer/stack-facts.ts';
import { canStand } from '../working/transformer/stack-value.ts';

type Warning = Assessment['warnings'][number];

/** What cannot be right in a winding stack: said once, at the field; the rest of the chapter goes on without it. */
export function stackWarnings({ stacks, transformers }: Facts): Warning[] {
  return [
    ...stacks.flatMap((stack) => [
      ...coreWarnings(stack),
      ...stack.windings.flatMap((winding) => windingWarnings(stack, winding)),
      ...numberWarnings(stack),
    ]),
    ...transformers.flatMap(({ stack, turns: { disagree } }): Warning[] =>
      disagree === null ? [] : [{ key: 'ratiosDisagree', at: `/exhibits/${stack.exhibit.id}/ratioSeen`, args: { ...disagree } }],
    ),
  ];
}

function coreWarnings({ exhibit }: StackFacts): Warning[] {
  return isUnknownCore(exhibit)
    ? [{ key: 'coreNotInTable', at: `/exhibits/${exhibit.id}/core`, args: { core: findRead(exhibit.core) ?? '' } }]
    : [];
}

function windingWarnings(stack: StackFacts, winding: Winding): Warning[] {
  const { field, name, evidence, contradicts, wire, overall } = winding;
  const found: Warning[] = [];
  const count = findRead(evidence.turns);
  const turns = count === null ? null : parseQuantity(count, 'ratio');
  if (turns !== null && !isRefusal(turns) && turns.value <= 0)
    found.push({ key: 'turnsNotPositive', at: `${field}/turns`, args: { name, turns: turns.value } });
  if (contradicts) found.push({ key: 'windingOnBothSides', at: `${field}/pins`, args: { name } });
  if (wire.at !== null && overall.at !== null && overall.at.value < wire.at.value)
    found.push({ key: 'coverThinnerThanWire', at: `${field}/overall`, args: { name } });
  const ids = new Set(stack.order.map(({ id }) => id));
  for (const lead of evidence.leads ?? [])
    for (const crossed of lead.crosses)
      if (!ids.has(crossed))
        found.push({ key: 'layerOutsideStack', at: `${field}/leads/${lead.id}/crosses`, args: { name, layer: crossed } });
  return found;
}

const OF_WHOLE = [
  ['inductance', 'inductance'],
  ['leakage', 'inductance'],
  ['frequency', 'frequency'],
  ['peakCurrent', 'current'],
  ['longestOn', 'ratio'],
  ['ratioSeen', 'ratio'],
  ['clamp', 'voltage'],
  ['gap', 'length'],
  ['coreArea', 'area'],
  ['coreLength', 'length'],
  ['meanTurn', 'length'],
  ['switchResistance', 'resistance'],
  ['fallTime', 'time'],
  ['riseTime', 'time'],
] as const;
const OF_LAYER = [
  ['layers', 'ratio'],
  ['strands', 'ratio'],
  ['wire', 'length'],
  ['overall', 'length'],
  ['each', 'length'],
] as const;

/** Zero or less where there must be something: a wire of no thickness, a tape in no layers. */
function numberWarnings({ exhibit, order }: StackFacts): Warning[] {
  const warn = (value: Value | undefined, kind: Kind, at: string): Warning[] => {
    const typed = findRead(value);
    const quantity = typed === null ? null : parseQuantity(typed, kind);
    if (typed === null || quantity === null || isRefusal(quantity) || canStand(quantity.value, at)) return [];
    return [{ key: 'notAboveZero', at, args: { typed } }];
  };
  return [
    ...OF_WHOLE.flatMap(([key, kind]) => warn(exhibit[key], kind, `/exhibits/${exhibit.id}/${key}`)),
    ...order.flatMap(({ evidence, field }) =>
      OF_LAYER.flatMap(([key, kind]) => warn((evidence as Readonly<Record<string, Value | undefined>>)[key], kind, `${field}/${key}`)),
    ),
  ];
}
