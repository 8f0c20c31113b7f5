import type { Controller, PeakCurrentLaw, PrimarySideLaw, ValleyLaw } from '../../src/core/solver/circuit.ts';

/**
 * Control laws for the reference program, in its own switches, capacitors and behavioural sources: a clock or a row of timers, a latch, and
 * for the primary-side law memories that are switched onto what they have to keep. Timers count a volt for each microsecond.
 */
type Net = (net: string) => string;
const MICRO = 1e6;
/**
 * A short high pass behind a state: each rise puts a charge of RC volt seconds on its positive part, if the state stays up for longer; a
 * pulse lasts no longer than a microsecond or two.
 */
const RISE = { ohms: 1e3, stateF: 1e-9, pulseF: 20e-12 } as const;
type Counted = 'ben' | 'uv' | 'q';
const riseF = (state: Counted): number => (state === 'q' ? RISE.pulseF : RISE.stateF);
const rate = (state: Counted): string => `V(r${state})/${RISE.ohms * riseF(state)}`;
/** Averages of these are how often in a second a burst or a start begins, or a pulse. */
export const RATES = { bursts: rate('ben'), starts: rate('uv'), pulses: rate('q') } as const;

/** The same of a net that rises through a voltage. */
export const RISES_OF_NET = `V(rnet)/${RISE.ohms * RISE.pulseF}`;
export const countRises = (net: string, volts: number): string[] => [
  `Bcnet cnet 0 V=0.5+0.5*tanh((V(${net})-${volts})/10)`,
  `Chnet cnet hnet ${RISE.pulseF} IC=0`,
  `Rhnet hnet 0 ${RISE.ohms}`,
  'Brnet rnet 0 V=max(0,V(hnet))',
];

export interface ControllerChoice {
  /** What a controller remembers at the start. */
  readonly memory: Readonly<Record<string, number>>;
  /** All that is measured: states are counted where it asks for them. */
  readonly measured: string;
}

export function printController(part: Controller, n: Net, { memory, measured }: ControllerChoice): string[] {
  const { law } = part;
  const g = n(part.ground);
  const counts = (['ben', 'uv', 'q'] as const).flatMap((state) =>
    measured.includes(rate(state)) ? counted(state === 'q' ? `q${part.drives}` : state, state, g) : [],
  );
  if (law.type === 'peakCurrent') return [...peakCurrent(part, law, n), ...counts];
  return [...(law.type === 'valley' ? valley(part, law, n) : primarySide(part, law, n, memory)), HELD, ...counts];
}

const HELD = '.model SWH SW(VT=0.5 VH=0.05 RON=10 ROFF=1G)';

function lockout({ ref, lockout: law, supply }: Controller, g: string, n: Net): string[] {
  return [
    `Suv one uv ${n(supply)} ${g} SWU ON`,
    `Ruv uv ${g} 10k`,
    `.model SWU SW(VT=${(law.startV + law.stopV) / 2} VH=${(law.startV - law.stopV) / 2} RON=10 ROFF=1G)`,
    `BS${ref} ${n(supply)} ${g} I=V(uv,${g})*${law.runningA}+(1-V(uv,${g}))*${law.idleA}`,
  ];
}

const burst = ({ burst: { stopV, goV }, feedback }: PeakCurrentLaw | ValleyLaw, g: string, n: Net): string[] => [
  `Sben one ben ${n(feedback)} ${g} SWB`,
  `Rben ben ${g} 10k`,
  `.model SWB SW(VT=${(stopV + goV) / 2} VH=${(goV - stopV) / 2} RON=10 ROFF=1G)`,
];

const latch = (q: string, g: string): string[] => [
  `Sset one ${q} set ${g} SWS`,
  `Srst ${q} ${g} rst ${g} SWR`,
  '.model SWS SW(VT=0.5 VH=0.05 RON=100 ROFF=1G)',
  '.model SWR SW(VT=0.05 VH=0.04 RON=20 ROFF=1G)',
  `Cq ${q} ${g} 10p IC=0`,
  // regenerative, so that the latch cannot stop half way
  `Bq ${g} ${q} I=(0.5+0.5*tanh(20*(V(${q},${g})-0.5))-V(${q},${g}))/1k`,
];

const counted = (net: string, state: Counted, g: string): string[] => [
  `Bc${state} c${state} ${g} V=V(${net},${g})`,
  `Ch${state} c${state} h${state} ${riseF(state)} IC=0`,
  `Rh${state} h${state} ${g} ${RISE.ohms}`,
  `Br${state} r${state} 0 V=max(0,V(h${state},${g}))`,
];

/** A timer at a volt for each microsecond, held at zero while a state is high. */
const timer = (name: string, held: string, g: string, from = 0): string[] => [
  `I${name} ${g} ${name} 1m`,
  `C${name} ${name} ${g} 1n IC=${from}`,
  `S${name} ${name} ${g} ${held} ${g} SWH`,
];

/** A bit with its own regeneration: set and reset by voltages that rise above half a volt. */
const bit = (name: string, set: string, reset: string, g: string): string[] => [
  `Bs${name} s${name} ${g} V=${set}`,
  `Br${name} c${name} ${g} V=${reset}`,
  `Ss${name} one ${name} s${name} ${g} SWH`,
  `Sr${name} ${name} ${g} c${name} ${g} SWH`,
  `C${name} ${name} ${g} 10p IC=0`,
  `B${name} ${g} ${name} I=(0.5+0.5*tanh(20*(V(${name},${g})-0.5))-V(${name},${g}))/10k`,
];

const asked = ({ limitV, leastV, offsetV, divider, feedback }: PeakCurrentLaw | ValleyLaw, g: string, n: Net): string =>
  `min(${limitV},max(${leastV},(V(${n(feedback)},${g})-${offsetV})/${divider}))`;

function peakCurrent(part: Controller, law: PeakCurrentLaw, n: Net): string[] {
  const g = n(part.ground);
  const period = 1 / law.hertz;
  const q = `q${part.drives}`;
  return [
    `Vone one ${g} 1`,
    `Vclk clk ${g} PULSE(0 1 1u 5n 5n 100n ${period})`,
    `Vbl bl ${g} PULSE(1 0 1u 5n 5n ${law.blankS} ${period})`,
    `Vdm dm ${g} PULSE(0 1 ${1e-6 + law.dutyMost * period} 5n 5n 100n ${period})`,
    ...burst(law, g, n),
    ...lockout(part, g, n),
    `Bth th ${g} V=${asked(law, g, n)}`,
    `Bset set ${g} V=V(clk,${g})*V(ben,${g})*V(uv,${g})`,
    `Brst rst ${g} V=max((V(${n(law.sense)},${g})-V(th,${g}))*V(bl,${g})*100, V(dm,${g})*2)`,
    ...latch(q, g),
  ];
}

/** One where a quantity (volts, as a difference) is above zero, by a slope of ten millivolts. */
const step = (difference: string): string => `(0.5+0.5*tanh((${difference})*100))`;

function valley(part: Controller, law: ValleyLaw, n: Net): string[] {
  const g = n(part.ground);
  const q = `q${part.drives}`;
  const aux = `V(${n(law.auxiliary)},${g})`;
  return [
    `Vone one ${g} 1`,
    ...burst(law, g, n),
    ...lockout(part, g, n),
    `Bqn qn ${g} V=1-V(${q},${g})`,
    // wholly on: what the set input hangs on must not change before the latch has turned
    `Bon on ${g} V=${step(`V(${q},${g})-0.9`)}`,
    ...timer('ton', 'qn', g),
    ...timer('toff', 'on', g, law.offMostS * MICRO),
    // from the least off-time on: first positive, then falling through zero, then the delay to the valley
    ...bit('high', `V(qn,${g})*${step(`V(toff,${g})-${law.offLeastS * MICRO}`)}*${step(aux)}`, `V(on,${g})`, g),
    ...bit('fell', `V(qn,${g})*V(high,${g})*${step(`0-${aux}`)}`, `V(on,${g})`, g),
    `Bnf nf ${g} V=1-V(fell,${g})`,
    ...timer('tval', 'nf', g),
    `Bset set ${g} V=V(qn,${g})*V(ben,${g})*V(uv,${g})*max(${step(`V(tval,${g})-${law.valleyDelayS * MICRO}`)},${step(`V(toff,${g})-${law.offMostS * MICRO}`)})`,
    `Bth th ${g} V=${asked(law, g, n)}`,
    `Brst rst ${g} V=V(${q},${g})*max((V(${n(law.sense)},${g})-V(th,${g}))*${step(`V(ton,${g})-${law.blankS * MICRO}`)}*100, (V(ton,${g})-${law.onMostS * MICRO})*2)`,
    ...latch(q, g),
  ];
}

/** Time in which one sample moves the integral, microseconds. */
const LEARN_US = 0.2;
const RESET_US = 0.2;

function primarySide(part: Controller, law: PrimarySideLaw, n: Net, memory: Readonly<Record<string, number>>): string[] {
  const g = n(part.ground);
  const q = `q${part.drives}`;
  const aux = `V(${n(law.auxiliary)},${g})`;
  const conducted = (memory['conductedS'] ?? law.onMostS) * MICRO;
  const most = MICRO / law.hertzLeast;
  const ratio = Math.log(law.hertzMost / law.hertzLeast);
  const sampled = `${law.sampleAt}*V(prev,${g})`;
  return [
    `Vone one ${g} 1`,
    ...lockout(part, g, n),
    `Bqn qn ${g} V=1-V(${q},${g})`,
    // wholly on: what the set input hangs on must not change before the latch has turned
    `Bon on ${g} V=${step(`V(${q},${g})-0.9`)}`,
    ...timer('ton', 'qn', g),
    ...timer('toff', 'on', g, conducted),
    // since the last turn-on: held at zero in the first fifth of a microsecond of each pulse, which is counted on
    `Bnew new ${g} V=V(on,${g})*${step(`${RESET_US}-V(ton,${g})`)}`,
    ...timer('tper', 'new', g, (memory['periodS'] ?? 0) * MICRO),
    // the secondary conducts: from turn-off until the auxiliary falls below zero, not before the blanking time
    ...bit('cond', `V(on,${g})`, `V(qn,${g})*${step(`V(toff,${g})-${law.blankS * MICRO}`)}*${step(`0-${aux}`)}`, g),
    // how long it did: followed while it does, and handed on in the next pulse
    `Bfol fol ${g} V=V(cond,${g})*V(qn,${g})`,
    `Boff toffb ${g} V=V(toff,${g})`,
    `Slast toffb last fol ${g} SWH`,
    `Clast last ${g} 100p IC=${conducted}`,
    `Bl lastb ${g} V=V(last,${g})`,
    `Sprev lastb prev ${q} ${g} SWH`,
    `Cprev prev ${g} 100p IC=${conducted}`,
    // the sample follows the auxiliary until its time
    `Ba auxb ${g} V=${aux}`,
    `Btrk trk ${g} V=V(fol,${g})*${step(`${sampled}-V(toff,${g})`)}`,
    `Ssmp auxb smp trk ${g} SWH`,
    `Csmp smp ${g} 100p IC=${law.kneeV}`,
    `Blrn lrn ${g} V=V(fol,${g})*${step(`V(toff,${g})-${sampled}`)}*${step(`${sampled}+${LEARN_US}-V(toff,${g})`)}`,
    // kept once it is known to have been taken while the secondary still conducted
    `Bsmp smpb ${g} V=V(smp,${g})`,
    `Shel smpb held lrn ${g} SWH`,
    `Chel held ${g} 100p IC=${law.kneeV}`,
    `Bint ${g} itg I=V(lrn,${g})*${law.stepPerV}*(${law.kneeV}-V(smp,${g}))*${1e-9 / (LEARN_US / MICRO)}`,
    `Citg itg ${g} 1n IC=${memory['integral'] ?? 0}`,
    `Ritg itg ${g} 1G`,
    `Bdem dem ${g} V=min(1,max(0,V(itg,${g})+${law.gainPerV}*(${law.kneeV}-V(held,${g}))))`,
    `Bth th ${g} V=${law.limitV}*(${law.leastShare}+${1 - law.leastShare}*max(0,2*V(dem,${g})-1))`,
    `Bper per ${g} V=${MICRO / law.hertzLeast}*exp(-min(1,2*V(dem,${g}))*${ratio})`,
    `Bset set ${g} V=V(qn,${g})*V(uv,${g})*max((1-V(cond,${g}))*${step(`V(tper,${g})+${RESET_US}-max(V(per,${g}),V(last,${g})/${law.conductionMost})`)},${step(`V(toff,${g})-${most}`)})`,
    `Brst rst ${g} V=V(${q},${g})*max((V(${n(law.sense)},${g})-V(th,${g}))*${step(`V(ton,${g})-${law.blankS * MICRO}`)}*100, (V(ton,${g})-${law.onMostS * MICRO})*2)`,
    ...latch(q, g),
  ];
}
