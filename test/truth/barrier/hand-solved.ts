import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Rung } from '../../../src/core/result/assessment.ts';
import { across, board, CONDUCTORS, gap, type PartInput, workingVoltage } from '../evidence-pieces.ts';

type ExhibitInput = NonNullable<CaseInput['exhibits']>[number];
type Stack = Extract<ExhibitInput, { kind: 'stack' }>;
type Layer = Stack['outsideIn'][number];
type Winding = Extract<Layer, { is: 'winding' }>;
type Insulation = Extract<Layer, { is: 'insulation' }>;

/**
 * Barriers solved by hand before there was a program. Mains 230 V, 250 V rms measured between the sides, pollution degree 2, material unknown: a way over
 * a surface is basic at 2.5 mm and reinforced at 5.0 mm (table 17 row 250, doubled), through air 1.5 and 3.0 mm; a piece of less than
 * 1.0 mm counts for nothing when pieces are added. One strength is one basic layer; two are double or reinforced.
 */
export interface HandSolved {
  readonly title: string;
  readonly parts?: readonly PartInput[];
  readonly exhibits?: readonly ExhibitInput[];
  /** Replaces the sound transformer; null leaves it wound. */
  readonly stack?: Stack | null;
  readonly outcome: 'pass' | 'fail' | 'inconclusive' | 'notAssessed';
  readonly rung?: Rung;
  /** Ways of the weakest path, in order from the mains. */
  readonly weakest?: readonly string[];
}

const EXACT = '± 0.02 mm';
export const mm = (length: number): string => `${length.toFixed(2)} mm ${EXACT}`;

export function winding(id: string, side: 'mains' | 'output' | 'floating', more: Partial<Winding> = {}): Winding {
  return {
    id,
    is: 'winding',
    name: id,
    side,
    turns: '10',
    wireKind: 'enamelled',
    margins: [mm(3), mm(3)],
    toCore: mm(4),
    leads: [],
    ...more,
  };
}

export function tape(id: string, layers: string, more: Partial<Insulation> = {}): Insulation {
  return { id, is: 'insulation', layers, each: '0.05 mm ± 0.005 mm', covers: 'whole', ...more };
}

export function stackOf(outsideIn: Layer[], more: Partial<Stack> = {}): Stack {
  return { id: 'stack-1', kind: 'stack', part: 't1', core: 'EE16', outsideIn, ...more };
}

/** Three layers of tape between, margins of 3 mm at either end, 4 mm to the core from either winding. */
export const SOUND = stackOf([winding('s', 'output'), tape('tape', '3'), winding('p', 'mains')]);

const Y = (id: string, safetyClass: PartInput['safetyClass'], from: string, to: string, more: Partial<PartInput> = {}): PartInput =>
  across(id, from, to, { value: '2.2 nF', identity: 'established', ...(safetyClass === undefined ? {} : { safetyClass }), ...more });
const ordinary = { state: 'absent', because: 'no class on either face' } as const;

/** The case around each row: two distances of the board, the voltage between the sides, and somebody who looked for parts across. */
export function caseOf(row: HandSolved): Partial<CaseInput> {
  const stack = row.stack === undefined ? SOUND : row.stack;
  const own = new Set((row.exhibits ?? []).map(({ id }) => id));
  const usual: ExhibitInput[] = [
    gap(mm(8)),
    gap(mm(6), { id: 'gap-air', path: 'air' }),
    workingVoltage('250 V ± 0 V'),
    board({ rectifier: 'bridge', suppression: { state: 'absent', because: 'none fitted' } }),
  ];
  return {
    conductors: CONDUCTORS.filter(({ id }) => id !== 'screw' && id !== 'shell'),
    parts: [{ id: 't1', ref: 'T1', kind: 'transformer' }, ...(row.parts ?? [])],
    exhibits: [...usual.filter(({ id }) => !own.has(id)), ...(row.exhibits ?? []), ...(stack === null ? [] : [stack])],
  };
}

const surface = (value: string, more: Parameters<typeof gap>[1] = {}): ExhibitInput => gap(value, more);
const opto = (more: Partial<PartInput>): PartInput => across('u2', 'out-minus', 'hv-minus', { kind: 'optocoupler', ...more });

export const HAND_SOLVED: readonly HandSolved[] = [
  {
    title: 'sound everywhere: 8 mm on the board, three tapes, 3 + 3 mm margins, 4 + 4 mm over the core',
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: '3.1 mm on the board is basic (1.24 layers) and not reinforced',
    exhibits: [surface(mm(3.1))],
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['surface:hv-minus~out-minus'],
  },
  {
    title: '1.6 mm on the board is below basic',
    exhibits: [surface(mm(1.6))],
    outcome: 'fail',
    rung: 'belowBasic',
    weakest: ['surface:hv-minus~out-minus'],
  },
  {
    title: '2.0 mm through air is basic although the surface way is long',
    exhibits: [gap(mm(2), { id: 'gap-air', path: 'air' })],
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['air:hv-minus~out-minus'],
  },
  {
    title: 'a slot of 0.5 mm is bridged: 3.0 mm straight across count, not 8 mm along its walls',
    exhibits: [surface(mm(8), { slot: { width: mm(0.5), straight: mm(3) } })],
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['surface:hv-minus~out-minus'],
  },
  {
    title: 'a slot of 1.5 mm counts along its walls: 8 mm',
    exhibits: [surface(mm(8), { slot: { width: mm(1.5), straight: mm(3) } })],
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  { title: 'one Y1 stands for reinforced', parts: [Y('c5', 'Y1', 'hv-minus', 'out-minus')], outcome: 'pass', rung: 'reinforcedMet' },
  {
    title: 'one Y2 alone is one basic layer',
    parts: [Y('c5', 'Y2', 'hv-minus', 'out-minus')],
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['part:c5'],
  },
  {
    title: 'two equal Y2 in series make double',
    parts: [Y('c5', 'Y2', 'hv-minus', 'middle'), Y('c6', 'Y2', 'middle', 'out-minus')],
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'two Y2 of unlike value do not make double',
    parts: [Y('c5', 'Y2', 'hv-minus', 'middle'), Y('c6', 'Y2', 'middle', 'out-minus', { value: '470 pF' })],
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['part:c5+c6'],
  },
  {
    title: 'an ordinary ceramic across is nothing',
    parts: [Y('c3', ordinary, 'hv-minus', 'out-minus')],
    outcome: 'fail',
    rung: 'bridgedOrAbsent',
    weakest: ['part:c3'],
  },
  {
    title: 'a Y2 and an ordinary ceramic in series are one layer: the missing one is nothing',
    parts: [Y('c5', 'Y2', 'hv-minus', 'middle'), Y('c6', ordinary, 'middle', 'out-minus')],
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['part:c5+c6'],
  },
  {
    title: 'an optocoupler whose identity is established stands for reinforced',
    parts: [opto({ identity: 'established' })],
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'an optocoupler that only claims to be one leaves the barrier open',
    parts: [opto({ identity: 'claimed' })],
    outcome: 'inconclusive',
    rung: 'undecided',
  },
  {
    title: 'one tape between primary and secondary is basic at most',
    stack: stackOf([winding('s', 'output'), tape('tape', '1'), winding('p', 'mains')]),
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['through:t1:p~s'],
  },
  {
    title: 'two tapes are double only if each passes the test alone, which nobody made',
    stack: stackOf([winding('s', 'output'), tape('tape', '2'), winding('p', 'mains')]),
    outcome: 'inconclusive',
    rung: 'undecided',
  },
  {
    title: 'no tape at all: enamel counts for nothing',
    stack: stackOf([winding('s', 'output'), winding('p', 'mains')]),
    outcome: 'fail',
    rung: 'bridgedOrAbsent',
    weakest: ['through:t1:p~s'],
  },
  {
    title: 'two single tapes with an insulating sheet between count as three',
    stack: stackOf([winding('s', 'output'), tape('a', '1'), tape('b', '1'), tape('c', '1'), winding('p', 'mains')]),
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'a moulded part of 0.5 mm between the windings is reinforced alone',
    stack: stackOf([winding('s', 'output'), tape('sheet', '1', { each: '0.50 mm ± 0.02 mm' }), winding('p', 'mains')]),
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'margins of 1.3 and 1.3 mm: 2.75 mm round the edge of the tape is basic',
    stack: stackOf([
      winding('s', 'output', { margins: [mm(1.3), mm(3)] }),
      tape('tape', '3'),
      winding('p', 'mains', { margins: [mm(1.3), mm(3)] }),
    ]),
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['edge:t1:p~s'],
  },
  {
    title: 'margins of 0.3 and 0.3 mm: 0.75 mm round the edge is below basic',
    stack: stackOf([
      winding('s', 'output', { margins: [mm(0.3), mm(3)] }),
      tape('tape', '3'),
      winding('p', 'mains', { margins: [mm(0.3), mm(3)] }),
    ]),
    outcome: 'fail',
    rung: 'belowBasic',
    weakest: ['edge:t1:p~s'],
  },
  {
    title: 'a folded tape leaves no way round its edge',
    stack: stackOf([
      winding('s', 'output', { margins: [mm(0.3), mm(0.3)] }),
      tape('tape', '3', { folded: true }),
      winding('p', 'mains', { margins: [mm(0.3), mm(0.3)] }),
    ]),
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'a tape that stops short of the wall by more than the margins separates nothing',
    stack: stackOf([
      winding('s', 'output', { margins: [mm(0.3), mm(3)] }),
      tape('tape', '3', { covers: 'stopsShort', short: mm(0.6) }),
      winding('p', 'mains', { margins: [mm(0.3), mm(3)] }),
    ]),
    outcome: 'fail',
    rung: 'bridgedOrAbsent',
    weakest: ['through:t1:p~s'],
  },
  {
    title: 'triple-insulated wire needs neither tape nor margin',
    stack: stackOf([
      winding('s', 'output', { wireKind: 'tripleInsulated', margins: [mm(0), mm(0)], toCore: mm(0) }),
      winding('p', 'mains', { margins: [mm(0), mm(0)], toCore: mm(0) }),
    ]),
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'the core is a conductor: 1.5 mm to it and 1.6 mm on from it make 3.1 mm, basic',
    stack: stackOf([winding('s', 'output', { toCore: mm(1.6) }), tape('tape', '3'), winding('p', 'mains', { toCore: mm(1.5) })]),
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['core:t1:p', 'core:t1:s'],
  },
  {
    title: 'the core lies against the primary: 0.4 mm counts for nothing, 4.2 mm beyond is basic',
    stack: stackOf([winding('s', 'output', { toCore: mm(4.2) }), tape('tape', '3'), winding('p', 'mains', { toCore: mm(0.4) })]),
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['core:t1:p', 'core:t1:s'],
  },
  {
    title: 'over the core 2.6 and 2.6 mm: two basics make double',
    stack: stackOf([winding('s', 'output', { toCore: mm(2.6) }), tape('tape', '3'), winding('p', 'mains', { toCore: mm(2.6) })]),
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'a bare lead-out of the secondary crosses the primary: nothing',
    stack: stackOf([
      winding('s', 'output', { leads: [{ id: 'start', end: 'start', crosses: ['p'], sleeved: false }] }),
      tape('tape', '3'),
      winding('p', 'mains'),
    ]),
    outcome: 'fail',
    rung: 'bridgedOrAbsent',
    weakest: ['lead:t1:s:start:p'],
  },
  {
    title: 'a lead-out in a sleeve of 0.45 mm crosses the primary: reinforced',
    stack: stackOf([
      winding('s', 'output', { leads: [{ id: 'start', end: 'start', crosses: ['p'], sleeved: true, wall: '0.45 mm ± 0.02 mm' }] }),
      tape('tape', '3'),
      winding('p', 'mains'),
    ]),
    outcome: 'pass',
    rung: 'reinforcedMet',
  },
  {
    title: 'a thin sleeve of 0.20 mm is one layer',
    stack: stackOf([
      winding('s', 'output', { leads: [{ id: 'start', end: 'start', crosses: ['p'], sleeved: true, wall: '0.20 mm ± 0.02 mm' }] }),
      tape('tape', '3'),
      winding('p', 'mains'),
    ]),
    outcome: 'fail',
    rung: 'basicNotReinforced',
    weakest: ['lead:t1:s:start:p'],
  },
  {
    title: 'a floating screen with one tape on either side: two basics make double',
    stack: stackOf([
      winding('s', 'output'),
      tape('a', '1'),
      winding('screen', 'floating', { toCore: mm(4) }),
      tape('b', '1'),
      winding('p', 'mains'),
    ]),
    outcome: 'inconclusive',
    rung: 'undecided',
  },
  { title: 'nobody unwound the transformer: what was seen is sound, and the barrier is not assessed', stack: null, outcome: 'notAssessed' },
  {
    title: 'nobody unwound it, and 1.6 mm on the board fail all the same',
    stack: null,
    exhibits: [surface(mm(1.6))],
    outcome: 'fail',
    rung: 'belowBasic',
    weakest: ['surface:hv-minus~out-minus'],
  },
];
