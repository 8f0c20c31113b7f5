import { DOUBLE } from '../../working/barrier/strength.ts';
import { facesOf } from '../../working/barrier/winding-place.ts';
import { coverOverEnamel, wireStrength } from '../../working/barrier/wire-strength.ts';
import type { Winding } from '../../working/transformer/stack-facts.ts';
import { atMost, limitLine, undecided } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

interface Wire extends Subject {
  readonly winding: Winding;
}

/** Is a wire that is counted as insulation of a kind made for it? Enamel is not: it is then the layers that count. */
export const wireInsulation = defineCheck<Wire>({
  id: 'shock/wire-insulation',
  consequence: 'lethal',
  needs: ['stack'],
  subjects: ({ stacks }) => {
    const wires = stacks.flatMap(({ part, windings }) =>
      windings
        .filter((winding) => facesOf(winding) === 'mains' || facesOf(winding) === 'hand')
        .map((winding): Wire => ({ id: `${part.id}/${winding.id}`, about: `${part.ref}: ${winding.name}`, winding })),
    );
    return wires.length > 0 ? wires : 'notLooked';
  },
  judge: (facts, { winding }) => judgeWire(winding, facts.setting.decision),
});

function judgeWire(winding: Winding, rule: Parameters<typeof atMost>[2]): Answer {
  const { wireKind, field } = winding;
  const strength = wireStrength(winding);
  const fields = [`${field}/wireKind`];
  if (wireKind.state !== 'read' && wireKind.state !== 'unknown') return { judgement: judgeState(wireKind, `${field}/wireKind`) };
  const claimed = wireKind.state === 'read' && (wireKind.v === 'tripleInsulated' || wireKind.v === 'fullyInsulated');
  const cover = coverOverEnamel(winding);
  const shown = cover === null ? null : atMost(cover.overall, limitLine('thickestEnamel', 'atMost', cover.thickest), rule);
  const dressed =
    shown === null ? {} : { measured: shown.measured, limit: shown.limit, margin: shown.margin, marginBand: shown.marginBand };
  if (!claimed && strength.high === 0)
    return {
      judgement: undecided('notApplicable', 'doesNotApply', { fields }),
      notes: [{ key: 'enamelIsNothing', args: {} }, ...strength.notes],
    };
  if (strength.low >= DOUBLE)
    return {
      judgement: {
        ...undecided('inconclusive', 'unknownValue', { fields, ...dressed }),
        outcome: 'pass',
        reason: 'met',
        measured: { word: word(winding) },
      },
      rung: 'reinforcedMet',
      notes: strength.notes,
    };
  if (strength.high === 0)
    return {
      judgement: {
        ...undecided('inconclusive', 'unknownValue', { fields, ...dressed }),
        outcome: 'fail',
        reason: 'notMet',
        headline: true,
      },
      rung: 'bridgedOrAbsent',
      notes: strength.notes,
    };
  return {
    judgement: undecided('inconclusive', 'unknownValue', { fields, ...dressed }),
    rung: 'undecided',
    notes: strength.notes,
  };
}

function word({ wireKind }: Winding): string {
  return wireKind.state === 'read' ? wireKind.v : wireKind.state;
}
