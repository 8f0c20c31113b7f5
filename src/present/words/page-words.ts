/** Labels of what can be entered, by the member's name in the case; a name that is not here is told by its own words. */
const MEMBERS: Readonly<Record<string, string>> = {
  leftOut: 'given up then',
  seriesResistance: 'series resistance',
  aftermath: 'afterwards',
  ambient: 'ambient',
  asTyped: 'as typed',
  at: 'when',
  because: 'because',
  bears: 'temperature printed on it',
  beforeFuse: 'stands before the fuse',
  between: 'between',
  beyond: 'beyond the last row',
  bleeders: 'bleeder resistors',
  bought: 'bought',
  bulk: 'bulk capacitors',
  by: 'read by',
  cameraEmissivity: 'emissivity set in the camera',
  captive: 'lead that stays on',
  centreOfMass: 'centre of mass before the socket face',
  cti: 'tracking index',
  dataLines: 'data lines',
  draws: 'draws',
  drops: 'drops from 1 m',
  dropHeight: 'height of the drop',
  dwell: 'time at each point',
  ends: 'how it ends',
  examinedBy: 'examined by',
  fusePart: 'which part that is',
  highestAmbient: 'highest ambient',
  i2t: 'I²t',
  invented: 'invented',
  livePartTouchable: 'a live part can be touched',
  mains: 'mains',
  meltingI2t: 'melting I²t',
  minutes: 'after',
  moved: 'with the wire moved',
  offers: 'offers',
  onto: 'laid on another photo',
  others: 'other ports meanwhile',
  outsideIn: 'windings and insulation, outside in',
  overvoltageCategory: 'overvoltage category',
  plugSystem: 'kind of plug',
  pollutionDegree: 'pollution degree',
  printed: 'printed current',
  pullUp: 'pull-up',
  ref: 'reference',
  reflected: 'what is reflected there',
  surface: 'what the camera looks at',
  substance: 'which plastic, tape, sleeve or wire',
  takes: 'what counts of its pixels',
  rms: 'r.m.s.',
  safetyClass: 'safety class',
  seamOpens: 'the seam opens',
  sense: 'read at',
  senses: 'sounds and smells',
  sharesWith: 'shares its budget with',
  side: 'side',
  start: 'start',
  struck: 'struck out, because',
  testVoltage: 'at',
  tries: 'tries',
  under: 'conditions',
  upTo: 'up to',
  wire: 'wire, bare',
  overall: 'wire, overall',
  wiresHeld: 'mains wires held by more than solder',
};

/** Units and words behind the choices of an entry. */
const CHOICES: Readonly<Record<string, string>> = {
  '1to10s': '1 to 10 s',
  '10to60s': '10 to 60 s',
  A: 'A',
  B: 'B',
  air: 'through air',
  bs1363: 'BS 1363',
  nema1: 'NEMA 1-15',
  as3112: 'AS 3112',
  otherInBody: 'another, in the body',
  bipolarTransistor: 'bipolar transistor',
  brownOut: 'brown-out',
  cableEnd: 'the end of the cable',
  strength: 'high-voltage test',
  dc: 'direct',
  ac: 'alternating, rms',
  held: 'held it',
  fr4HighCti: 'FR-4, high tracking index',
  fr4: 'FR-4',
  fr1: 'FR-1',
  fr2: 'FR-2',
  cem1: 'CEM-1',
  cem3: 'CEM-3',
  pbt: 'PBT',
  abs: 'ABS',
  polycarbonateAbs: 'polycarbonate with ABS',
  polyamideGlass: 'polyamide with glass',
  pbtGlass: 'PBT with glass',
  petGlass: 'PET with glass',
  pvcTape: 'PVC tape',
  pvcWire: 'PVC wire',
  pc: 'PC',
  pet: 'PET',
  keepsGiving: 'keeps giving current',
  led: 'LED',
  microB: 'micro-B',
  mosfet: 'MOSFET',
  ntc: 'NTC',
  over1min: 'over 1 min',
  plugIn: 'plugging in',
  printedWiring: 'along printed wiring',
  surface: 'over the surface',
  triesAgain: 'stops and tries again',
  hottest: 'the hottest',
  mean: 'their mean',
  staysOff: 'stays off until taken away',
  touchCurrentPeak: 'touch current, peak',
  touchCurrentRms: 'touch current, r.m.s.',
  pinsAfterUnplugging: 'pins after unplugging',
  voltageToEarth: 'voltage to earth',
  under1s: 'under 1 s',
  usbA: 'USB-A',
  usbC: 'USB-C',
  enclosure: 'drop, seam and reach',
  touchBothWays: 'touch current, both plug ways',
  spotOutside: 'heat outside',
  soakLogged: 'soak to its end',
  coldInsulation: 'insulation before power',
  plugDischarge: 'pins after unplugging',
  sweepWithInput: 'sweep with input power',
  sweepAtEnds: 'sweep at both ends of the mains',
  sweepBeyond: 'sweep beyond the claim',
  portsTogether: 'outputs together',
  idleAndStarts: 'idle and starts',
  transient: 'peaks and dips',
  spotWinding: 'heat of the winding',
  spotParts: 'heat of the parts',
  spotMaterial: 'heat of the material',
};

/** Kinds of evidence, one and several. */
export const EXHIBIT_WORDS: Readonly<Record<string, { readonly one: string; readonly many: string }>> = {
  advertised: { one: 'advertised levels', many: 'What the outputs advertise' },
  board: { one: 'board', many: 'The board as a whole' },
  body: { one: 'body and plug', many: 'Body and plug' },
  capture: { one: 'capture', many: 'Captures' },
  cold: { one: 'cold reading', many: 'Before power' },
  earthSwing: { one: 'swing against earth', many: 'Swing against earth' },
  distance: { one: 'distance', many: 'Distances' },
  event: { one: 'event', many: 'Events, with tries' },
  label: { one: 'label', many: 'Label and promises' },
  part: { one: 'part', many: 'Parts' },
  photo: { one: 'photo', many: 'Photos' },
  residual: { one: 'voltage left', many: 'Left on the capacitors after unplugging' },
  ripple: { one: 'ripple', many: 'Ripple' },
  soak: { one: 'soak', many: 'Soaks' },
  spots: { one: 'spot readings', many: 'Spot readings' },
  stack: { one: 'transformer', many: 'Transformer, outside in' },
  sweep: { one: 'sweep', many: 'Load sweeps' },
  thermalPicture: { one: 'thermal picture', many: 'Thermal pictures' },
  touch: { one: 'touch reading', many: 'Under power' },
  workingVoltage: { one: 'working voltage', many: 'Working voltages' },
};

/** Lists of the case, one and several. */
export const LIST_WORDS: Readonly<Record<string, { readonly one: string; readonly many: string }>> = {
  conductors: { one: 'conductor', many: 'Conductors' },
  days: { one: 'day', many: 'Days at the bench' },
  events: { one: 'event', many: 'What happened to the sample' },
  files: { one: 'file', many: 'Files' },
  instruments: { one: 'instrument', many: 'Instruments' },
  parts: { one: 'part', many: 'Parts' },
  places: { one: 'place', many: 'Places for temperatures' },
  ports: { one: 'output', many: 'Outputs' },
};

/** States of a value that are no reading, with the key that sets them in a cell. */
export const STATE_CHOICES: readonly {
  readonly state: string;
  readonly words: string;
  readonly key: string;
  readonly asks: string | null;
}[] = [
  { state: 'notLooked', words: 'not looked', key: '', asks: null },
  { state: 'absent', words: 'absent', key: '-', asks: 'looked for and not there: where it was looked for' },
  { state: 'unknown', words: 'unknown', key: '?', asks: 'looked, could not tell: why' },
  { state: 'cannotNow', words: 'cannot now', key: '', asks: null },
];

/** What an entry of a kind looks like. */
export const EXAMPLES: Readonly<Record<string, string>> = {
  voltage: '5.1 V',
  current: '1.72 A',
  power: '24.8 W',
  resistance: '4k7',
  capacitance: '2.2nF',
  inductance: '1.2 mH',
  length: '4,9 mm',
  time: '30 min',
  temperature: '83 °C',
  frequency: '50 Hz',
  mass: '38 g',
  energy: '1.5 J',
  ratio: '0.95',
  meltingIntegral: '9.2 A²s',
};

/** "seamOpens" as "seam opens" where no better words are known. */
export function memberWords(key: string): string {
  return Object.hasOwn(MEMBERS, key) ? (MEMBERS[key] ?? key) : apart(key);
}

export function choiceWords(choice: string | number): string {
  const key = String(choice);
  return Object.hasOwn(CHOICES, key) ? (CHOICES[key] ?? key) : apart(key);
}

function apart(key: string): string {
  return key.replace(/([a-z])([A-Z0-9])/g, (_whole, before: string, after: string) => `${before} ${after.toLowerCase()}`);
}

/** After what stands in the way of the disk: the entry is not gone. */
export const STILL_HERE = (sentence: string): string => `${sentence} What was typed stays in this page and is sent again.`;
