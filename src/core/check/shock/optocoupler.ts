import type { Part } from '../../evidence/sample.ts';
import { cite } from '../../source/source.ts';
import { optocouplerWays } from '../../working/barrier/barrier-facts.ts';
import { findRead, openValue } from '../../working/bench/open-value.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

interface Coupler extends Subject {
  readonly part: Part;
}

const asked: LimitLine = {
  name: 'ratedCoupler',
  kind: 'oneOf',
  at: null,
  words: ['established'],
  source: cite('iec-62368-1', 'annex G.12: 0.4 mm through insulation, or a part tested to its own standard', 'memory'),
  grade: 'memory',
};

/** Is the optocoupler across the barrier one whose maker and series are known, so that its insulation is what its sheet says? */
export const optocoupler = defineCheck<Coupler>({
  id: 'shock/optocoupler',
  consequence: 'lethal',
  needs: ['optocoupler'],
  subjects: ({ bench, stacks }) => {
    const across = optocouplerWays(bench).map(({ id }) => id.replace(/^part:/, ''));
    const couplers = bench.one.parts
      .filter(({ id }) => across.includes(id))
      .map((part): Coupler => ({ id: part.id, about: part.ref, part }));
    if (couplers.length > 0) return couplers;
    if (bench.one.parts.some(({ kind }) => findRead(kind) === 'optocoupler')) return 'unknownValue';
    // a unit that is regulated from the primary side has none
    return stacks.some(({ exhibit }) => findRead(exhibit.law) === 'primaryCurrent') ? 'doesNotApply' : 'notLooked';
  },
  judge: ({ pairs }, { part }) => {
    const field = `/parts/${part.id}/identity`;
    const opened = openValue(part.identity);
    const nets = (part.pins ?? []).flatMap(({ net }) => findRead(net) ?? []);
    // the way between its pins is judged with every other distance; here only whether somebody measured it
    const pins = pairs.some((pair) => pair.ends.every((end) => nets.includes(end)) && pair.surface.length > 0);
    const notes = pins ? [] : [{ key: 'couplerPinsNotMeasured', args: {} }];
    if (opened.state !== 'read') return { judgement: judgeState(opened, field), notes };
    if (opened.v !== 'established')
      return {
        judgement: undecided('inconclusive', 'unknownValue', { limit: asked, fields: [field] }),
        rung: 'undecided',
        notes: [{ key: 'identityNotEstablished', args: {} }, ...notes],
      };
    return { judgement: oneOf('established', asked, true, [field]), rung: 'reinforcedMet', notes };
  },
});
