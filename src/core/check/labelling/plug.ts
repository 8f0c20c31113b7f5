import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { windowAround } from '../../formula/label/window-around.ts';
import { cite } from '../../source/source.ts';
import { pins as british } from '../../table/bs-1363/undated/pins.ts';
import { pins } from '../../table/en-50075/1990/pins.ts';
import { plugTorque } from '../../table/iec-60065/2014/plug-torque.ts';
import { getCell } from '../../table/look-up.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { exhibitsOf } from '../../working/bench/bench.ts';
import { findRead, openValue } from '../../working/bench/open-value.ts';
import type { Facts } from '../../working/facts.ts';
import { bodyReading, torqueOf } from '../../working/label/plug-facts.ts';
import { atLeast, atMost, type LimitLine, limitLine, oneOf, undecided, within } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

type Body = ExhibitOf<'body'>;
interface Question extends Subject {
  readonly id: 'torque' | 'pin-diameter' | 'pin-length' | 'pin-sleeves' | 'pin-edge';
  readonly bodies: readonly Body[];
}

const ABOUT = {
  torque: 'torque on the socket',
  'pin-diameter': 'diameter of the pins',
  'pin-length': 'length of the pins',
  'pin-sleeves': 'sleeves on the pins',
  'pin-edge': 'pins to the edge of the face',
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
      [body.mass, body.centreOfMass, body.pin?.diameter, body.pin?.length, body.pin?.sleeved, body.pin?.toEdge].some(
        (value) => openValue<unknown>(value).state !== 'notLooked',
      ),
    );
    if (bodies.length === 0) return 'notLooked';
    // only the British plug keeps its pins from the edge by a figure
    const edge = bodies.filter(({ plugSystem }) => findRead(plugSystem) === 'bs1363');
    return (['torque', 'pin-diameter', 'pin-length', 'pin-sleeves', 'pin-edge'] as const)
      .map((id) => ({ id, about: ABOUT[id], bodies: id === 'pin-edge' ? edge : bodies }))
      .filter((question) => question.bodies.length > 0);
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
  if (id === 'pin-edge') return judgeEdge(facts, body);
  if (system.v === 'bs1363' && id === 'pin-length') return judgeDimension(facts, body, 'length', windowOf(british, 'length'));
  if (system.v !== 'flatTwoPin') return { judgement: undecided('notAssessed', 'limitUnknown') };
  if (id === 'pin-sleeves') return judgeSleeves(body);
  const dimension = id === 'pin-diameter' ? 'diameter' : 'length';
  return judgeDimension(facts, body, dimension, windowOf(pins, dimension));
}

function judgeDimension(facts: Facts, body: Body, dimension: 'diameter' | 'length', limit: LimitLine): Answer {
  const reading = bodyReading(facts.bench, body, body.pin?.[dimension], `pin/${dimension}`, 'length', 'D');
  if (reading.value === null) return { judgement: judgeState(reading.opened, reading.field) };
  // what a pin may be off is a convention of this project, so it never weighs more than this
  return {
    judgement: within(reading.value, limit, facts.setting.decision),
    consequence: 'disappointing',
    show: 'millimetres',
  };
}

/** How near a finger on the face comes to a pin that is half way in. */
function judgeEdge(facts: Facts, body: Body): Answer {
  const reading = bodyReading(facts.bench, body, body.pin?.toEdge, 'pin/toEdge', 'length', 'd');
  if (reading.value === null) return { judgement: judgeState(reading.opened, reading.field) };
  const limit = limitLine('pinsFromEdge', 'atLeast', getCell(british, 'toEdge', 'nominal', 'label/pin-edge', 'd'));
  return { judgement: atLeast(reading.value, limit, facts.setting.decision), show: 'millimetres' };
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

function windowOf(table: typeof pins | typeof british, dimension: 'diameter' | 'length'): LimitLine {
  const nominal = getCell(table, dimension, 'nominal', `label/pin-${dimension}/nominal`, 'D_n');
  const allowance = getCell(table, dimension, 'allowance', `label/pin-${dimension}/allowance`, 'a');
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
