import type { Circuit, Load } from '../solver/circuit.ts';
import type { Assumption, Missing } from './assumed.ts';

/** A level of a port: what the output is meant to hold, and how much it was promised to give. */
export interface Level {
  readonly port: string;
  readonly id: string;
  readonly name: string;
  readonly volts: number;
  readonly amps: number;
}

export interface MainsChoice {
  readonly rmsV: number;
  readonly hertz: number;
}

/** A traced circuit that can be run. Nets are the conductors of the case; parts have their references. A part or net with "/" is the model's own. */
export interface Model {
  readonly circuit: Circuit;
  readonly level: Level;
  /** References of what stands around the circuit. */
  readonly source: typeof MAINS_REF;
  readonly load: typeof LOAD_REF;
  readonly body: typeof BODY_REF | null;
  /** Nets of the output, plus first. */
  readonly output: readonly [string, string];
  readonly bulk: readonly [string, string] | null;
  /** Reference of switch and output rectifier in the circuit, and the winding that the switch drives. */
  readonly switch: string | null;
  readonly rectifiers: readonly string[];
  readonly mainsRectifiers: readonly string[];
  readonly primary: { readonly ref: string; readonly winding: string } | null;
  /** What opens before everything else, by reference; none is a finding of its own. */
  readonly fuses: readonly string[];
  /** Time after which the mains does the same again, seconds. */
  readonly windowS: number;
  readonly assumptions: readonly Assumption[];
  /** Parts that stand for nothing in the run. */
  readonly leftOut: readonly string[];
  /** The controller has an overvoltage trip of a known figure, or there is no controller. */
  readonly tripKnown: boolean;
}

export interface NoModel {
  readonly because: 'noCircuit' | 'missing' | 'notAFlyback';
  readonly missing: readonly Missing[];
}

export const MAINS_REF = 'mains';
export const LOAD_REF = 'load';
export const BODY_REF = 'body';
export const TRACK_REF = 'track';
export const isOwn = (ref: string): boolean => ref.includes('/') || [MAINS_REF, LOAD_REF, BODY_REF].includes(ref);

const OPEN_OHMS = 1e5; // what stands for no load: a voltmeter with its leads; house choice

/** Loads by name: nothing, 50 mA, and shares of what was promised. */
export function drawOf(level: Level, load: LoadChoice): Load['draw'] {
  if (load === 'none') return { ohms: OPEN_OHMS };
  if (load === 'standby') return { amps: STANDBY_A, fromV: 1 };
  return { ohms: level.volts / (level.amps * load) };
}
/** A share of the promised current drawn by a resistor; or nothing; or 50 mA. */
export type LoadChoice = 'none' | 'standby' | number;
/** Load at which the commonest way to harm a phone shows (a device that has just begun to charge). Practice of the bench. */
const STANDBY_A = 0.05;
