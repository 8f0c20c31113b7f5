import type { Note } from '../../trace/step.ts';
import type { BarrierFacts } from '../../working/barrier/barrier-facts.ts';
import type { Path } from '../../working/barrier/graph.ts';
import { personNote } from '../../working/barrier/person.ts';
import type { BarrierWay } from '../../working/barrier/strength.ts';
import { DOUBLE } from '../../working/barrier/strength.ts';
import type { Facts } from '../../working/facts.ts';
import { undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeWays } from '../judge-way.ts';

/** Does every way from the mains to a hand cross double or reinforced insulation? The weakest of them decides. */
export const barrier = defineCheck<Subject>({
  id: 'shock/barrier',
  consequence: 'lethal',
  needs: ['stack'],
  subjects: ({ barrier: map }) => (map.ways.length === 0 ? 'notLooked' : [{ id: 'hand', about: 'mains to what can be touched' }]),
  judge: (facts) => judgeMap(facts),
});

function judgeMap({ barrier: map, setting, bench }: Facts): Answer {
  const [weakest] = map.weakest;
  const { atBest } = map;
  if (weakest === undefined || atBest === null) return { judgement: undecided('notAssessed', 'notLooked'), notes: gapNotes(map) };
  // the path that is weakest even at best carries a failure; else the weakest by what is surely there
  const failing = atBest.strength < DOUBLE ? atBest : weakest;
  const ways = waysOf(map, failing);
  const answer = judgeWays(ways, 'barrier/weakest', { low: weakest.strength, high: atBest.strength }, setting.decision);
  const told = [...(answer.notes ?? []), ...pathNotes(map, failing)];
  if (answer.judgement.outcome === 'fail') {
    const person = answer.consequence === 'lethal' ? personNote(bench, setting) : null;
    return {
      ...answer,
      notes: [...told, ...gapNotes(map), ...(person === null ? [] : [person.note])],
      beside: person === null ? [] : person.steps,
    };
  }
  if (map.missing.length > 0)
    return { judgement: undecided('notAssessed', 'notLooked', { fields: answer.judgement.fields }), notes: gapNotes(map) };
  if (map.open.length > 0 && answer.judgement.outcome === 'pass')
    return {
      judgement: undecided('inconclusive', 'unknownValue', { fields: answer.judgement.fields }),
      rung: 'undecided',
      notes: gapNotes(map),
    };
  return { ...answer, notes: told };
}

function waysOf(map: BarrierFacts, path: Path): BarrierWay[] {
  return path.ways.map((id) => map.ways.find((way) => way.id === id)!);
}

function pathNotes(map: BarrierFacts, path: Path): Note[] {
  const names = path.nodes.map((id) => map.nodes.find((node) => node.id === id)?.name ?? id);
  const through = waysOf(map, path).map(({ about }) => about);
  const weakest = { key: 'weakestPath', args: { path: names.join(' → '), ways: through.join('; ') } };
  const { fewest } = map;
  if (fewest === null) return [weakest];
  const pieces = fewest.ways.map((id) => map.ways.find((way) => way.id === id)?.about ?? id).join('; ');
  return [
    weakest,
    fewest.failures === 0 ? { key: 'defeatedAlready', args: { pieces } } : { key: 'defeatedBy', args: { count: fewest.failures, pieces } },
  ];
}

function gapNotes({ missing, open }: BarrierFacts): Note[] {
  return [
    ...missing.map((what): Note => ({ key: 'barrierGap', args: { what } })),
    ...open.map((what): Note => ({ key: 'barrierOpen', args: { what } })),
  ];
}
