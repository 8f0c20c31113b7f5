import { derive } from '../../formula/derive.ts';
import { boundaryFrequency } from '../../formula/magnetics/boundary-frequency.ts';
import { boundaryPower } from '../../formula/magnetics/boundary-power.ts';
import { continuousPower } from '../../formula/magnetics/continuous-power.ts';
import { continuousShare } from '../../formula/magnetics/continuous-share.ts';
import { heldOutputCurrent } from '../../formula/magnetics/held-output-current.ts';
import { powerOfStrokes } from '../../formula/magnetics/power-of-strokes.ts';
import { rippleCurrent } from '../../formula/magnetics/ripple-current.ts';
import { strokeShare } from '../../formula/magnetics/stroke-share.ts';
import { cite } from '../../source/source.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';

export type Law = 'fixedFrequency' | 'valleySwitched' | 'selfOscillating' | 'primaryCurrent';

/** What the workings of a converter may use; null is not known. */
export interface ConverterInputs {
  readonly law: Law | null;
  readonly inductance: Derived | null;
  readonly peak: Derived | null;
  readonly frequency: Derived | null;
  readonly longestOn: Derived | null;
  readonly reflected: Derived | null;
  readonly ratio: Derived | null;
}

/** One operating point: at the current limit, from one voltage of the rail. */
export interface OperatingPoint {
  readonly rail: Derived;
  /** Power that the core can take. */
  readonly power: Derived;
  /** Peak current that is reached: the limit, or less where the longest on-time ends the stroke before. */
  readonly peak: Derived;
  readonly rise: Derived | null;
  readonly on: Derived;
  readonly off: Derived;
  readonly frequency: Derived;
  readonly mode: 'discontinuous' | 'continuous' | 'boundary';
  readonly cut: boolean;
}

/** Numbers without which a law says nothing, in the order in which a bench gets them. */
export const NEEDED: Readonly<Record<Law, readonly (keyof ConverterInputs)[]>> = {
  fixedFrequency: ['inductance', 'peak', 'frequency', 'reflected'],
  valleySwitched: ['inductance', 'peak', 'reflected'],
  selfOscillating: ['inductance', 'peak', 'reflected'],
  primaryCurrent: ['inductance', 'peak', 'reflected', 'frequency'],
};

/** What is missing before the power of a converter can be worked out; its law comes first, for no formula is used without one. */
export function missingFor(inputs: ConverterInputs): string[] {
  if (inputs.law === null) return ['law'];
  return NEEDED[inputs.law].filter((key) => inputs[key] === null);
}

/** The operating point at the current limit, by the formulas of its own law and of no other; null where a number is missing. */
export function operatingPoint(inputs: ConverterInputs, rail: Derived, id: string): OperatingPoint | null {
  if (inputs.law === null || missingFor(inputs).length > 0 || rail.value <= 0) return null;
  const { inductance, peak, reflected } = inputs;
  if (inductance === null || peak === null || reflected === null) return null;
  return inputs.law === 'fixedFrequency' || inputs.law === 'primaryCurrent'
    ? atFixedFrequency(inductance, peak, inputs.frequency!, reflected, inputs.longestOn, rail, id)
    : atBoundary(inductance, peak, reflected, rail, id);
}

function atBoundary(inductance: Derived, peak: Derived, reflected: Derived, rail: Derived, id: string): OperatingPoint {
  // the wait for the valley of the ring is not known without its capacitance; without it the frequency is an upper bound
  const wait = given('constant', 0, 's', { id: `${id}/no-wait`, name: 'noWait', symbol: 't' });
  const frequency = derive(boundaryFrequency, { inductance, peak, rail, reflected, wait }, `${id}/frequency`);
  return {
    rail,
    power: derive(boundaryPower, { peak, rail, reflected }, `${id}/power`),
    peak,
    rise: null,
    on: derive(strokeShare, { inductance, peak, frequency, voltage: rail }, `${id}/on`),
    off: derive(strokeShare, { inductance, peak, frequency, voltage: reflected }, `${id}/off`),
    frequency,
    mode: 'boundary',
    cut: false,
  };
}

function atFixedFrequency(
  inductance: Derived,
  limit: Derived,
  frequency: Derived,
  reflected: Derived,
  longestOn: Derived | null,
  rail: Derived,
  id: string,
): OperatingPoint {
  const wanted = derive(strokeShare, { inductance, peak: limit, frequency, voltage: rail }, `${id}/on-wanted`);
  const off = derive(strokeShare, { inductance, peak: limit, frequency, voltage: reflected }, `${id}/off`);
  const cut = longestOn !== null && wanted.value > longestOn.value;
  if (!cut && wanted.value + off.value > 1) {
    const on = derive(continuousShare, { reflected, rail }, `${id}/on`);
    const rise = derive(rippleCurrent, { rail, share: on, inductance, frequency }, `${id}/rise`);
    const power = derive(continuousPower, { rail, share: on, peak: limit, rise }, `${id}/power`);
    return { rail, power, peak: limit, rise, on, off: restOf(on, `${id}/off-continuous`), frequency, mode: 'continuous', cut: false };
  }
  // the longest on-time may end the stroke before the current reaches its limit
  const peak = cut ? derive(rippleCurrent, { rail, share: longestOn, inductance, frequency }, `${id}/peak-cut`) : limit;
  return {
    rail,
    power: derive(powerOfStrokes, { inductance, peak, frequency }, `${id}/power`),
    peak,
    rise: null,
    on: cut ? longestOn : wanted,
    off: cut ? derive(strokeShare, { inductance, peak, frequency, voltage: reflected }, `${id}/off-cut`) : off,
    frequency,
    mode: 'discontinuous',
    cut,
  };
}

const COUPLING = 0.965; // middle of 0.93 to 1, practice of the bench
const COUPLING_HALF_WIDTH = 0.035;

/** Output current that a converter holds from the primary side; null for every other law. */
export function outputCurrentHeld(inputs: ConverterInputs, point: OperatingPoint | null, id: string): Derived | null {
  if (inputs.law !== 'primaryCurrent' || inputs.ratio === null || point === null) return null;
  const coupling = given(
    'constant',
    COUPLING,
    '1',
    {
      id: `${id}/coupling`,
      name: 'estimate-coupling',
      symbol: 'k',
      source: cite('bench', 'share of the current that arrives, 0.93 to 1', 'common-practice'),
    },
    { form: doubtOf({ id: 'estimate/coupling', u: rectangular(COUPLING_HALF_WIDTH), means: 'estimatedCoupling' }) },
  );
  return derive(heldOutputCurrent, { coupling, ratio: inputs.ratio, peak: point.peak, share: point.off }, `${id}/held`);
}

function restOf(on: Derived, id: string): Derived {
  return combine(
    { kind: 'reduce', unit: '1', formula: null, symbols: { on: 'D' }, moves: { on: 'down' }, compute: ({ on: share }) => 1 - share },
    { on },
    { id, name: 'restOfPeriod', symbol: 'd' },
  );
}
