import type { Value } from '../evidence/value.ts';
import { parseQuantity } from '../quantity/parse-quantity.ts';
import { isRefusal } from '../quantity/refusal.ts';
import type { TransformerSheet } from '../result/transformer-sheet.ts';
import type { StepNode } from '../trace/step.ts';
import type { BarrierWay } from '../working/barrier/strength.ts';
import { facesOf, nodeOf } from '../working/barrier/winding-place.ts';
import { findRead, openValue } from '../working/bench/open-value.ts';
import type { Facts } from '../working/facts.ts';
import type { StackFacts, Tape, Winding } from '../working/transformer/stack-facts.ts';
import { toAmount } from './to-finding.ts';

/** The transformers of an Assessment with the steps of their numbers. */
export function toTransformers(facts: Facts): { sheets: TransformerSheet[]; roots: StepNode[] } {
  const sheets = facts.transformers.map(({ stack, turns, numbers, blocked }): TransformerSheet => {
    const { exhibit, part } = stack;
    const window = findRead(exhibit.window);
    const former = findRead(exhibit.former);
    const [width, height] = [lengthOf(window?.width), lengthOf(window?.height)];
    const [tube, wall] = [lengthOf(former?.tube), lengthOf(former?.wall)];
    return {
      exhibit: exhibit.id,
      part: part.id,
      name: part.ref,
      core: findRead(exhibit.core),
      gap: lengthOf(findRead(exhibit.gap)),
      window: width === null || height === null || width <= 0 || height <= 0 ? null : { width, height },
      former: tube === null || wall === null ? null : { tube, wall },
      layers: stack.order.map((layer) => (layer.is === 'winding' ? toWinding(layer) : toTape(layer))),
      weakest: weakestOf(stack, facts.barrier.ways),
      numbers: numbers.map(({ key, about, at }) => ({ key, about: about ?? null, value: toAmount(at), step: at.step.id })),
      blocked: blocked.map(({ key, missing }) => ({ key, missing: [...missing] })),
      disagree: turns.disagree === null ? null : { ...turns.disagree },
    };
  });
  return { sheets, roots: facts.transformers.flatMap(({ numbers }) => numbers.map(({ at }) => at.step)) };
}

function toWinding(winding: Winding): TransformerSheet['layers'][number] {
  const { id, name, role, turns, layers, strands, wire, overall, wireKind, margins, evidence } = winding;
  return {
    is: 'winding',
    id,
    name,
    stands: facesOf(winding),
    role,
    turns: turns.at?.value ?? null,
    rows: layers.at?.value ?? null,
    strands: strands.at?.value ?? null,
    wire: wire.at?.value ?? null,
    overall: overall.at?.value ?? null,
    wireKind: wireKind.state === 'read' ? wireKind.v : null,
    margins: margins === null ? [null, null] : [margins[0].at?.value ?? null, margins[1].at?.value ?? null],
    leads: (evidence.leads ?? [])
      .filter(({ crosses }) => crosses.length > 0)
      .map((lead) => ({ id: lead.id, end: lead.end ?? null, crosses: [...lead.crosses], sleeved: sleevedOf(lead.sleeved) })),
  };
}

/** Looked for and not there is no sleeve. */
function sleevedOf(value: Value<boolean> | undefined): boolean | null {
  const opened = openValue(value);
  return opened.state === 'read' ? opened.v : opened.state === 'absent' ? false : null;
}

function toTape({ id, layers, each, covers, short, folded }: Tape): TransformerSheet['layers'][number] {
  return {
    is: 'insulation',
    id,
    count: layers.at?.value ?? null,
    each: each.at?.value ?? null,
    covers: covers.state === 'read' ? covers.v : null,
    short: short.at?.value ?? null,
    folded,
  };
}

function weakestOf(stack: StackFacts, ways: readonly BarrierWay[]): TransformerSheet['weakest'] {
  const id = (node: string): string | undefined => stack.windings.find((winding) => nodeOf(stack, winding) === node)?.id;
  const faces = (one: string): string => facesOf(stack.windings.find((winding) => winding.id === one)!);
  const found = ways.flatMap(({ id: way, kind, ends, strength }) => {
    const [a, b] = [id(ends[0]), id(ends[1])];
    if (a === undefined || b === undefined || (kind !== 'through' && kind !== 'edge' && kind !== 'lead')) return [];
    if (![faces(a), faces(b)].includes('mains') || ![faces(a), faces(b)].includes('hand')) return [];
    return [{ way, kind, between: [a, b] as [string, string], strength }];
  });
  const [weakest] = found.toSorted((x, y) => x.strength.high - y.strength.high || x.strength.low - y.strength.low);
  return weakest === undefined ? null : { way: weakest.way, kind: weakest.kind, between: weakest.between };
}

function lengthOf(text: string | null | undefined): number | null {
  if (text === null || text === undefined) return null;
  const quantity = parseQuantity(text, 'length');
  return isRefusal(quantity) ? null : quantity.value;
}
