import type { Templates } from './fill-template.ts';

/** Worked numbers of a transformer, by their key. */
export const NUMBER_NAMES: Templates = {
  ratio: 'turns ratio',
  reflected: 'reflected voltage',
  mostAtLowest: 'most into the core, lowest mains',
  mostAtNominal: 'most into the core, nominal mains',
  valleyAtLowest: 'rail then falls to, lowest mains',
  valleyAtNominal: 'rail then falls to, nominal mains',
  frequency: 'frequency at the limit',
  onShare: 'on-time, share of a period',
  offShare: 'core empties in, share of a period',
  onTime: 'on-time at the limit',
  railCurrent: 'mean current from the rail',
  middleOfStroke: 'primary current, middle of a stroke',
  boundary: 'edge of the discontinuous mode',
  peakForClaim: 'peak current that the claim needs',
  primaryRms: 'primary current, rms',
  secondaryPeak: 'secondary current, peak',
  secondaryRms: 'secondary current, rms',
  capacitorRms: 'ripple current of the output capacitor',
  energy: 'energy of one stroke',
  flux: 'flux density at the limit',
  leastTurns: 'primary turns that saturation asks for, 100 °C',
  gapOfInductance: 'gap that the inductance asks for',
  gapWithoutCore: 'gap that the inductance asks for, ferrite left out',
  inductanceOfGap: 'inductance that the gap gives',
  inductanceWithoutCore: 'inductance that the gap gives, ferrite left out',
  plateau: 'switch plateau, highest mains',
  switchPeak: 'switch peak with its clamp',
  switchClosed: 'heat in the switch, closed',
  switchOpening: 'heat in the switch, opening',
  switchClosing: 'heat in the switch, closing',
  switchLoss: 'heat in the switch, its own capacitance left out',
  reverse: 'rectifier blocks, highest mains',
  clampPower: 'power in the clamp',
  coreLoss: 'core loss',
  resistanceCold: 'resistance, 20 °C',
  resistanceHot: 'resistance, 100 °C',
  windingLoss: 'heat in the winding, 100 °C',
  fill: 'copper in the window',
  fillToExpect: 'copper that a window takes at most',
  shortedOutput: 'output current into a short, without pauses',
  heldCurrent: 'output current that is held',
};

const IN_PERCENT: readonly string[] = ['onShare', 'offShare', 'fill', 'fillToExpect'];
const IN_MILLIMETRES: readonly string[] = ['gapOfInductance', 'gapWithoutCore'];

/** How a worked number is printed, where its unit alone does not say it. */
export function numberShow(key: string): 'percent' | 'millimetres' | undefined {
  return IN_PERCENT.includes(key) ? 'percent' : IN_MILLIMETRES.includes(key) ? 'millimetres' : undefined;
}

/** Kinds of ways across, as they stand in a list. */
export const WAY_WORDS: Templates = {
  air: 'through air',
  surface: 'over the surface',
  part: 'part across',
  optocoupler: 'optocoupler',
  through: 'through the layers',
  edge: 'round the edge of the tape',
  lead: 'past a lead-out',
  core: 'over the core',
  joint: 'the same conductor',
};

export const STANDS_WORDS: Templates = { mains: 'mains', hand: 'touch', between: 'floating', unknown: 'side unknown' };

const BASIC = 1;
const DOUBLE = 2;
const SAME = 1e-6;

/** What a way stands for, in words: by what is surely there, and by what it may be. */
export function strengthText(low: number, high: number): string {
  if (low >= DOUBLE - SAME) return 'double or reinforced';
  if (high >= DOUBLE - SAME) return low >= BASIC - SAME ? 'basic, perhaps more' : 'open';
  if (high < SAME) return 'nothing';
  return high < BASIC - SAME ? 'less than basic' : low < BASIC - SAME ? 'basic at most' : 'basic';
}
