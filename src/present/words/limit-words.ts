import type { Limit } from '../../core/result/assessment.ts';
import { amountText, type Show } from './amount-text.ts';
import { sentenceFor, type Templates } from './fill-template.ts';
import { foundText } from './found-words.ts';

/** Which limit it is. "fail" is the line that decides and needs no name of its own. */
export const LIMIT_NAMES: Templates = {
  fail: '',
  basic: 'basic',
  reinforced: 'reinforced',
  supplementary: 'supplementary',
  functional: 'functional',
  comfort: 'row of the table that covers it',
  coordinationBasic: 'basic, by insulation coordination',
  coordinationReinforced: 'reinforced, by insulation coordination',
  layersAsked: 'layers of insulation in a row',
  thickestEnamel: 'thickest ordinary enamel',
  ratedCoupler: 'a part whose maker and series are known',
  workingVoltageAssumed: 'assumed where nobody measures',
  saturation: 'saturation of the ferrite, hot',
  ratedVoltage: 'rating of the part',
  deviceStandsOnce: 'after a fault, what a device on that socket must stand',
  ignites: 'from which a part can set something alight',
  noPartBeyond: 'no part beyond its rating',
  keptShare: 'kept by makers, without ringing',
  copperHabit: 'of the power in the core, our own convention',
  powerClaimed: 'as claimed',
  screenFitted: 'a screen between the windings',
  slotWidth: 'a slot that counts',
  olderTouch: 'plastic, older edition',
  olderReinforced: 'reinforced, older edition',
  coatedBoard: 'for a coating that a laboratory has tested',
  basicStrength: 'strength of basic insulation, peak or d.c.',
  reinforcedStrength: 'strength of reinforced insulation, peak or d.c.',
  householdStrength: 'strength, household appliances, as a peak',
  olderStrength: 'strength, older edition, as a peak',
  voluntary: 'promised by makers, voluntary',
  pinsFromEdge: 'from a pin to the edge of the face',
  es1: 'first limit of touch current',
  es2: 'second limit of touch current',
  class2: 'class II, older edition',
  phoneSupply: 'supply for a telephone',
  oneY1OrTwoY2: 'across reinforced insulation',
  oneY2: 'across basic insulation',
  madeWithTwoSides: 'made with two sides',
  isolatedOutput: 'the output',
  behindTheFuse: 'where it stands',
  classAcrossMains: 'across the mains',
  blocksCrest: 'what the rectifier blocks',
  leastShare: 'of the marked value',
  soundWork: 'sound work',
  suppressionFitted: 'suppression',
  ratedTemperature: 'as rated',
  runaway: 'where it would run away',
  ofItsKind: 'what its kind bears',
  lowestRating: 'lowest rating of its kind',
  highestRating: 'highest rating of its kind',
  meltingIntegral: 'melting integral of the fuse',
  halfMelting: 'half of it, as the trade does',
  pulseEnergy: 'pulse that the resistor stands',
  crestOfMains: 'crest of the highest mains',
  halfOfCrest: 'half of that crest',
  realFuse: 'a part made to open',
  onTheLabel: 'on the label',
  leastLife: 'two years of day and night',
  settles: 'a temperature that settles',
  windingClass: 'class of the winding',
  touch: 'touch temperature',
  claim: 'as claimed',
  window: 'voltage window',
  ecodesign: 'ecodesign',
  deviceStands: 'what a device stands',
  advertised: 'as advertised',
  levelSix: 'American level VI',
  someLimit: 'a limit of its own',
  printedTogether: 'as printed for all in use',
  interruption: 'a drop-out that a device bears',
  afterFault: 'after a fault',
  noFailure: 'no failure',
  claimedPower: 'as claimed, at the lower edge of the window',
  overshoot: 'for a moment, over',
  undershoot: 'for a moment, under',
  earthSwing: 'a supply for telephones, pulses of 250 ns and more',
  rippleHabit: 'what the trade expects',
  onTheLabelToo: 'as the label prints',
  classOfPlug: 'class of protection',
  ratingOfPlug: 'rating of the plug',
  densest: 'watts in each cubic centimetre, the densest that are sold',
  apparentInput: 'most that can go in by the label',
  torqueOnSocket: 'torque on the socket',
  pinOfSystem: 'pin of the plug, with our own allowance',
  sleevedPins: 'pins of the plug',
  outOfReach: 'live parts',
  staysShut: 'the case',
  wiresHeld: 'mains wires',
  directVoltage: 'direct voltage that may be touched',
  charged: 'charged capacitor that may be touched',
  chargedLeast: 'charged capacitor, the least that can hold this',
  householdOneSecond: 'household appliances, after 1 s',
  olderOneSecond: 'older edition, after 1 s',
};

/** "at most 0.5 mA", "4.75 V to 5.25 V", "Y1 or two Y2 in series". */
export function limitText(limit: Limit, show?: Show): string {
  const at = limit.at === undefined ? wordList(limit) : amountText(limit.at, show);
  switch (limit.kind) {
    case 'atMost':
      return `at most ${at}`;
    case 'atLeast':
      return `at least ${at}`;
    case 'within':
      return limit.to === undefined ? at : `${at} to ${amountText(limit.to, show)}`;
    case 'oneOf':
      return wordList(limit);
  }
}

/** The limit with its name, where the name says something. */
export function namedLimitText(limit: Limit, show?: Show): string {
  const name = sentenceFor(LIMIT_NAMES, limit.name);
  if (name === '') return limitText(limit, show);
  return limit.kind === 'oneOf' ? `${name}: ${limitText(limit, show)}` : `${limitText(limit, show)}, ${name}`;
}

/** "a, b or c". */
function wordList(limit: Limit): string {
  const words = (limit.words ?? []).map(foundText);
  const last = words.at(-1);
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${last}`;
}
