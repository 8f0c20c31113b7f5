import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { windowAround } from '../../formula/label/window-around.ts';
import { cite } from '../../source/source.ts';
import { pins } from '../../table/en-50075/1990/pins.ts';
import { plugTorque } from '../../table/iec-60065/2014/plug-torque.ts';
import { getCell } from '../../table/look-up.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { exhibitsOf } from '../../working/bench/bench.ts';
import { findRead, openValue } from '../../working/bench/open-value.ts';
import type { Facts } from '../../working/facts.ts';
import { bodyReading, torqueOf } from '../../working/label/plug-facts.ts';
import { atMost, type LimitLine, limitLine, oneOf, undecided, within } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

type Body = ExhibitOf<'body'>;
interface Question extends Subject {
  readonly id: 'torque' | 'pin-diameter' | 'pin-length' | 'pin-sleeves';
  readonly bodies: readonly Body[];
}

const ABOUT = {
  torque: 'torque on the socket',
  'pin-diameter': 'diameter of the pins',
  'pin-length': 'length of the pins',
  'pin-sleeves': 'sleeves on the pins',
} as const;

const sleeves: LimitLine = {
  name: 'sleevedPins',
  kind: 'oneOf',
  at: null,
  words: ['sleeved'],
  source: cite('en-50075', 'insulating sleeves on the pins', 'secondary', {
    alsoBy: ['an encyclopaedia article: 10 mm of sleeve', 'a private museum of plugs and sockets: sleeves are compulsory'],
  }),
  grade: 'secondary',
};

/** Do the pins fit the socket, can they be touched half way in, and does the body not lever on the socket? */
export const plug = defineCheck<Question>({
  id: 'labelling/plug',
  consequence: 'injurious',
  needs: ['plug'],
  subjects: ({ bench }) => {
    const bodies = exhibitsOf(bench, 'body').filter((body) =>
      [body.mass, body.centreOfMass, body.pin?.diameter, body.pin?.length, body.pin?.sleeved].some(
        (value) => openValue<unknown>(value).state !== 'notLooked',
      ),
    );
    if (bodies.length === 0) return 'notLooked';
    return (['torque', 'pin-diameter', 'pin-length', 'pin-sleeves'] as const).map((id) => ({ id, about: ABOUT[id], bodies }));
  },
  judge: (facts, { id, bodies }) => worstAnswer(bodies.map((body) => judgeBody(facts, id, body))),
});

function judgeBody(facts: Facts, id: Question['id'], body: Body): Answer {
  const system = openValue(body.plugSystem);
  if (system.state === 'read' && system.v === 'cord') return { judgement: undecided('notApplicable', 'doesNotApply') };
  if (id === 'torque') return judgeTorque(facts, body);
  // the pins of other systems are of other sizes, and not held here
  if (system.state !== 'read')
    return {
      judgement: undecided('notAssessed', system.state === 'notLooked' ? 'notLooked' : 'notComparable', {
        notes: [{ key: 'plugSystemNotStated', args: {} }],
      }),
    };
  if (system.v !== 'flatTwoPin') return { judgement: undecided('notAssessed', 'limitUnknown') };
  if (id === 'pin-sleeves') return judgeSleeves(body);
  const dimension = id === 'pin-diameter' ? 'diameter' : 'length';
  const reading = bodyReading(facts.bench, body, body.pin?.[dimension], `pin/${dimension}`, 'length', 'D');
  if (reading.value === null) return { judgement: judgeState(reading.opened, reading.field) };
  // what a pin may be off is a convention of this project, so it never weighs more than this
  return {
    judgement: within(reading.value, windowOf(dimension), facts.setting.decision),
    consequence: 'disappointing',
    show: 'millimetres',
  };
}

function judgeTorque(facts: Facts, body: Body): Answer {
  const torque = torqueOf(facts.bench, body);
  if (torque.value === null) return { judgement: judgeState(torque.opened, torque.field) };
  const limit = limitLine('torqueOnSocket', 'atMost', getCell(plugTorque, 'plugInBody', 'most', 'label/torque-limit', 'M'));
  const notes = torque.byGreatestDimension ? [{ key: 'torqueByGreatestDimension', args: {} }] : [];
  return { judgement: atMost(torque.value, limit, facts.setting.decision), notes };
}

function judgeSleeves(body: Body): Answer {
  const field = `/exhibits/${body.id}/pin/sleeved`;
  if (body.struck !== undefined) return { judgement: judgeState({ state: 'struck', because: body.struck }, field) };
  const opened = openValue(body.pin?.sleeved);
  if (opened.state === 'absent' || findRead(body.pin?.sleeved) === false) return { judgement: oneOf('bare', sleeves, false, [field]) };
  return { judgement: opened.state === 'read' ? oneOf('sleeved', sleeves, true, [field]) : judgeState(opened, field) };
}

function windowOf(dimension: 'diameter' | 'length'): LimitLine {
  const nominal = getCell(pins, dimension, 'nominal', `label/pin-${dimension}/nominal`, 'D_n');
  const allowance = getCell(pins, dimension, 'allowance', `label/pin-${dimension}/allowance`, 'a');
  const edge = (which: 'least' | 'most'): Derived =>
    derive(
      windowAround,
      {
        nominal,
        sign: given('constant', which === 'least' ? -1 : 1, '1', { id: `label/pin-edge-${which}`, name: `edge-${which}`, symbol: 's' }),
        allowance,
      },
      `label/pin-${dimension}/${which}`,
    );
  return limitLine('pinOfSystem', 'within', edge('least'), edge('most'));
}
