import type { Next } from '../../core/result/assessment.ts';
import { sentenceFor, type TemplateArgs, type Templates } from './fill-template.ts';

/** What to measure next, as an instruction. Keys come from the room that proposes it; `{about}` is what it is about. */
export const MEASUREMENTS: Templates = {
  label: 'Copy the label as printed, with every rating and mark',
  distanceAir: 'Measure the shortest ways through air between mains and what can be touched, with a scale in the picture',
  distanceSurface: 'Measure the shortest ways over the surface between mains and what can be touched, with a scale in the picture',
  bridgingParts: 'Read the markings of every part that stands across the barrier',
  firstPart: 'Find the first part behind the plug and what it is',
  capacitorValues: 'Copy the value of each electrolytic and film capacitor and measure it, electrolytic ones at 100 or 120 Hz',
  workmanship: 'Look over the joints and wires of the mains side under a lens, and pull each wire',
  spotMaterial: 'Read plastic, tape, sleeve and wire nearest to the hottest parts at the label load, and say what they are',
  spotParts:
    'Read the hottest parts and the board at the label load with ambient and minutes, and copy the temperature printed on each part',
  inrushParts: 'Read the part that limits the inrush, the melting integral or pulse rating of the first part, and the bulk capacitance',
  bulkCapacitor: 'Read rating and value of the capacitors behind the rectifier, and how they are wired',
  plug: 'Weigh it, balance it on an edge, and measure the pins',
  enclosure:
    'Drop it three times from 1 m, try the seam, see whether a live part can be reached and whether every mains wire is held by more than solder',
  touchBothWays: 'Measure the touch current through the standard network, both plug ways, on a direct supply',
  spotOutside: 'Read the outside at the label load with the cover closed, with ambient and minutes',
  soakLogged: 'Log case and winding from cold at the label load, with the ambient, until the log says where they are going',
  spotWinding: 'Read the winding at the label load, with ambient and minutes',
  sweepWithInput: 'Take a load sweep up to the claim and beyond, with input power',
  coldResistance: 'Measure the resistance between the plug pins, before power',
  coldInsulation: 'Measure the insulation resistance from the joined pins to the output, before power',
  coldCapacitance: 'Measure the capacitance from the joined pins to the output, before power',
  outputToEarth: 'Measure the output to earth, both plug ways, before anything earthed touches it',
  plugDischarge: 'Measure the pins after unplugging, one and two seconds after',
  idleVoltage: 'Measure the output without load',
  sweep: 'Take a load sweep up to the claim and beyond',
  advertised: 'Read what the output advertises at each voltage, and sweep it up to that',
  sweepAtEnds: 'Take a load sweep up to the claim at the lowest and at the highest mains of the range',
  idlePower: 'Measure the input power with nothing connected, at nominal mains',
  sweepBeyond: 'Carry a load sweep on beyond the window, down to a tenth of the voltage or until it stops',
  portsTogether:
    'Sweep each output with the others at their printed current, reading their voltage too, and watch for drop-outs as one is put on',
  idleAndStarts: 'Watch the output with nothing connected, and start the unit at least five times under load',
  transient: 'Capture peak and dip at the output while plugging in, unplugging, starting and stepping the load',
  ripple: 'Measure the ripple at full load with the stated bandwidth',
  short: 'Short the output and watch temperature and input power until they settle',
  soak: 'Log the hottest places at the label load until they settle',
  stack:
    'Unwind the transformer outside in: turns, wire bare and over its cover, layers of tape and how far they reach, margins, the way to the core, and what the lead-outs cross',
  optocoupler: 'Read the marking of the optocoupler and measure between its rows of pins',
  workingVoltage: 'Capture the working voltage between the windings with a differential probe',
  circuit: 'Trace the circuit from the board',
  circuitRun: 'Run the traced circuit at its operating points',
  faultRun: 'Run the traced circuit with every single fault',
  capture: 'Capture the switch voltage with its operating point',
};

export const MEASUREMENT_HAZARDS: Templates = {
  discharge: 'the bulk capacitor can hold a lethal charge: measure the residual voltage first, and again a minute later',
  sampleOpened: 'the sample is opened for good',
  liveOutput: 'the output can be live against earth',
  directSupply: 'live mains without isolation',
  liveMains: 'live mains',
  hot: 'hot surfaces',
  neverLeave: 'stay with the unit while it runs',
  mainsOnThermocouple: 'a thermocouple inside can carry the mains',
  venting: 'capacitors can vent: cover and eye protection',
  outputToEarthFirst: 'measure output to earth first, before anything earthed touches the output',
};

export const STOPS: Templates = {
  caseTemperature: 'case temperature',
  outputCurrent: 'output current',
  outputVoltageUp: 'output voltage, rising',
  outputVoltageDown: 'output voltage, falling',
  enclosureTemperature: 'outside',
  windingTemperature: 'winding',
  inputPower: 'input power',
  outputVoltage: 'output voltage',
  current: 'current',
  time: 'time',
  touchCurrent: 'touch current',
  temperature: 'temperature',
};

export const BEFORE_WORDS: Readonly<Record<NonNullable<Next['before']>, string>> = {
  opening: 'before opening',
  desoldering: 'before desoldering',
  unwinding: 'before unwinding',
};

/** What the verdict's word can become. */
export function prospectText({ best, worst }: Pick<Next, 'best' | 'worst'>): string {
  return best === worst
    ? `The word stays ${best} whichever way it comes out.`
    : `If all of it comes out well: ${best}. At worst: ${worst}.`;
}

export function measurementText(key: string, about: readonly string[] = []): string {
  const args: TemplateArgs = about.length === 0 ? {} : { about: about.join(', ') };
  const sentence = sentenceFor(MEASUREMENTS, key);
  return about.length === 0 || sentence.includes('{about}') ? sentenceFor(MEASUREMENTS, key, args) : `${sentence}: ${about.join(', ')}`;
}
