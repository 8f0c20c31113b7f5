import type { Part } from '../../evidence/sample.ts';
import { cite } from '../../source/source.ts';
import { nameOf } from '../../working/bench/bench.ts';
import { findRead } from '../../working/bench/open-value.ts';
import type { BridgingPath } from '../../working/board/bridging-facts.ts';
import type { CircuitFacts } from '../../working/circuit/circuit-facts.ts';
import type { Facts } from '../../working/facts.ts';
import { type LimitLine, oneOf } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeBridging } from '../judge-bridging.ts';

interface Crossing extends Subject {
  /** Parts of the way from the mains outwards; none where the output itself hangs on the mains. */
  readonly parts: readonly Part[];
  readonly towards: BridgingPath['towards'];
}

const TWO_SIDED = new Set(['transformer', 'optocoupler']);
/** Made with two sides: what lies between them is judged by distances, windings and the wire. */
const madeForIt: LimitLine = {
  name: 'madeWithTwoSides',
  kind: 'oneOf',
  at: null,
  words: ['transformer', 'optocoupler'],
  source: cite('iec-62368-1', '5.4 and annex G: parts that may stand across the insulation', 'memory'),
  grade: 'memory',
};
const isolated: LimitLine = {
  name: 'isolatedOutput',
  kind: 'oneOf',
  at: null,
  words: ['isolated'],
  source: cite('iec-61140', 'protective separation of a touchable circuit from the mains', 'memory'),
  grade: 'memory',
};

/** May every part that the trace finds across the barrier be there? The sides follow from the parts, so that no part hides behind an unnamed net. */
export const partAcrossBarrier = defineCheck<Crossing>({
  id: 'shock/part-across-barrier',
  consequence: 'lethal',
  needs: ['circuit'],
  subjects: (facts) => {
    if (facts.circuit === null) return 'notLooked';
    const sides = new Set(facts.circuit.recognised.graph.sideOf.values());
    const found = [...bareOutput(facts.circuit), ...crossings(facts, facts.circuit)];
    if (found.length > 0) return found;
    return sides.has('mains') && (sides.has('output') || sides.has('touchable')) ? 'doesNotApply' : 'notLooked';
  },
  judge: (facts, { id, about, parts, towards }): Answer => {
    if (parts.length === 0) return { judgement: oneOf('bridged', isolated, false, []), rung: 'bridgedOrAbsent' };
    const kinds = parts.map(({ kind }) => findRead<string>(kind) ?? '');
    const twoSided = kinds.find((kind) => TWO_SIDED.has(kind));
    if (twoSided !== undefined)
      return {
        judgement: oneOf(
          twoSided,
          madeForIt,
          true,
          parts.map((part) => `/parts/${part.id}/kind`),
        ),
        notes: [{ key: 'insulationJudgedElsewhere', args: {} }],
      };
    return besideBridging(judgeBridging({ id, about, parts, towards, farEnd: 'known' }), facts, parts);
  },
});

/** The nets may show the same parts across the barrier that the trace finds: one defect, told twice and counted once. */
function besideBridging(answer: Answer, { bridging }: Facts, parts: readonly Part[]): Answer {
  const ids = (of: readonly Part[]): string =>
    of
      .map((part) => part.id)
      .toSorted()
      .join('+');
  const same = bridging.find((path) => ids(path.parts) === ids(parts));
  if (same === undefined || answer.judgement.outcome !== 'fail' || judgeBridging(same).judgement.outcome !== 'fail') return answer;
  return {
    ...answer,
    sameAs: `shock/bridging-part@${same.id}`,
    notes: [...(answer.notes ?? []), { key: 'samePart', args: { parts: same.about } }],
  };
}

function bareOutput({ recognised: { topology } }: CircuitFacts): Crossing[] {
  return topology.isolated === false ? [{ id: 'output', about: 'the output', parts: [], towards: 'reinforced' }] : [];
}

function crossings({ bench }: Facts, { ways, recognised }: CircuitFacts): Crossing[] {
  const found = new Map<string, Crossing>();
  for (const { parts, nets } of ways) {
    const id = parts.join('+');
    const end = nets.at(-1)!;
    const towards = recognised.graph.sideOf.get(end) === 'earth' ? 'basic' : 'reinforced';
    if (found.has(id) && towards === 'basic') continue; // the way that asks for more stands for the part
    const own = parts.flatMap((part) => bench.parts.get(part) ?? []);
    found.set(id, { id, about: `${own.map(({ ref }) => ref).join(' and ')}, to ${nameOf(bench, end)}`, parts: own, towards });
  }
  return [...found.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}
