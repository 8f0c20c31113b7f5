/** Steps of the day at the bench, in its list and over the entry. */
export const DAY_WORDS: Readonly<Record<string, string>> = {
  photographs: 'Photographs and purchase',
  body: 'Plug, body and seam',
  cold: 'Cold checks',
  powerUp: 'First power-up, behind a screen',
  touch: 'Idle and touch, both plug ways',
  advertised: 'What it advertises',
  sweeps: 'Sweeps at several mains',
  events: 'Starts, brown-out, transients',
  soak: 'Soak, cover on',
  hotAndShort: 'Hot start, short',
  pins: 'Pins after unplugging',
  drop: 'Drop',
  open: 'Open and discharge',
  board: 'Board',
  circuit: 'Circuit',
  thermal: 'Thermal picture, cover off',
  waveforms: 'Waveforms',
  transformer: 'Transformer apart',
};

export const PROGRESS_WORDS = { open: 'open', begun: 'begun', done: 'done', left: 'left out' } as const;

/** Points of no return: what is about to be done, what was done, and the key that does it all the same. */
export const POINT_WORDS = {
  opening: { before: 'Before you open', point: 'opening', done: 'opened', anyway: 'Open anyway', go: 'Open it', still: 'while it is shut' },
  desoldering: {
    before: 'Before you desolder',
    point: 'desoldering',
    done: 'desoldered',
    anyway: 'Desolder anyway',
    go: 'Desolder it',
    still: 'while it still runs',
  },
  unwinding: {
    before: 'Before you unwind',
    point: 'unwinding',
    done: 'unwound',
    anyway: 'Unwind anyway',
    go: 'Unwind it',
    still: 'while the transformer is whole',
  },
} as const;

/** One thing to do: over the field, and the name of the number in it. */
export const TASK_WORDS: Readonly<Record<string, { readonly title: string; readonly what: string }>> = {
  plugSystem: { title: 'Which plug is it?', what: 'kind of plug' },
  mass: { title: 'Weigh it', what: 'mass' },
  pinDiameter: { title: 'Measure a pin across', what: 'diameter of a pin' },
  pinLength: { title: 'Measure a pin along', what: 'length of a pin' },
  pinSleeved: { title: 'Are the pins sleeved?', what: 'sleeves on the pins' },
  centreOfMass: { title: 'Balance it on an edge', what: 'centre of mass before the socket face' },
  seamOpens: { title: 'Does the seam open, nail and 50 N?', what: 'the seam opens' },
  livePartTouchable: { title: 'Can a live part be touched?', what: 'a live part in reach' },
  coldResistance: { title: 'Resistance between the plug pins', what: 'resistance, cold' },
  coldCapacitance: { title: 'Capacitance from pins to output', what: 'capacitance, cold' },
  coldInsulation: { title: 'Insulation from pins to output', what: 'insulation resistance' },
  firstStart: { title: 'Power up, stand back, look', what: 'first start' },
  voltageToEarth: { title: 'Output to earth', what: 'voltage to earth' },
  touchCurrentRms: { title: 'Touch current, r.m.s.', what: 'touch current, r.m.s.' },
  touchCurrentPeak: { title: 'Touch current, peak', what: 'touch current, peak' },
  idle: { title: 'Nothing connected', what: 'output voltage, idle' },
  offer: { title: 'Read one offer', what: 'voltage offered' },
  idleTries: { title: 'Idle: does it stay steady?', what: 'idle' },
  starts: { title: 'Start it under load, five times', what: 'starts' },
  brownOuts: { title: 'Brown-out and slow return', what: 'brown-outs' },
  plugInPeak: { title: 'Peak while plugging in', what: 'peak, plugging in' },
  stepPeak: { title: 'Peak at a load step', what: 'peak, load step' },
  stepTrough: { title: 'Dip at a load step', what: 'dip, load step' },
  soakRow: { title: 'Soak: read the case', what: 'temperature of the case' },
  spotOutside: { title: 'A spot outside', what: 'temperature' },
  hotStarts: { title: 'Start it hot, at the lowest mains', what: 'hot starts' },
  shorts: { title: 'Short the output', what: 'shorts' },
  shortPower: { title: 'Input power while shorted', what: 'input power, shorted' },
  aftermath: { title: 'After the short', what: 'afterwards' },
  pinsAfterUnplugging: { title: 'Pins after unplugging', what: 'voltage on the pins' },
  drops: { title: 'Drop it from 1 m, three times', what: 'drops' },
  residual: { title: 'Open, discharge, measure', what: 'residual' },
  distance: { title: 'One distance, one way', what: 'distance' },
  firstPart: { title: 'First part behind the plug', what: 'first part' },
  rectifier: { title: 'Which rectifier?', what: 'rectifier' },
  wiresHeld: { title: 'Mains wires held by more than solder?', what: 'mains wires' },
  spotInside: { title: 'Mark at each picture', what: 'temperature inside' },
  workingRms: { title: 'Mark at each capture', what: 'working voltage, r.m.s.' },
  workingPeak: { title: 'Mark at each peak', what: 'working voltage, peak' },
  sweep: { title: 'Load sweep', what: 'output voltage' },
  turns: { title: 'Unwind, outside in', what: 'turns off' },
};

/** The other number of a pair. */
export const OTHER_WORDS: Readonly<Record<string, string>> = {
  idlePower: 'input power',
  offerCurrent: 'current offered',
  ambient: 'ambient',
  minutes: 'minutes at this load',
  inputPower: 'input power',
};

/** What has to be chosen before a reading can be kept. */
export const ASK_WORDS: Readonly<Record<string, string>> = {
  supply: 'supply',
  orientation: 'plug way',
  mains: 'mains',
  frequency: 'frequency',
  port: 'output',
  level: 'level',
  place: 'place',
  from: 'touched conductor',
  mainsConductor: 'mains-side conductor',
  outputConductor: 'other conductor',
  between: 'first conductor',
  and: 'second conductor',
  draws: 'load',
  method: 'method',
  distanceMethod: 'method',
  testVoltage: 'test voltage',
  after: 'time after',
  path: 'way',
  by: 'kind of sensor',
  sense: 'point of reading',
  order: 'direction',
  cover: 'cover',
  dwell: 'settling time',
};

export const PICK_WORDS: Readonly<Record<string, string>> = {
  yes: 'Yes',
  no: 'No',
  noFuse: 'none of any kind',
  recovers: 'came back by itself',
  staysOff: 'stays off until unplugged',
  dead: 'dead',
  smoke: 'smoke',
  flame: 'flame',
  livePart: 'a live part in reach',
  nothingConnected: 'nothing connected',
  shorted: 'shorted',
  cableEnd: 'end of the cable',
  up: 'rising',
  down: 'falling',
  direct: 'direct, earthed neutral',
  isolating: 'isolating transformer',
  electronic: 'electronic source',
};

/** Sentences that go into the case when a key of the bench says them. */
export const BENCH_NOTES = {
  noFuse: 'looked at the bench: no fuse, no fusible resistor, no thin track',
  planDone: 'all planned currents taken',
  byHand: 'ended by hand',
  loadOff: (clock: string, last: string): string => `load off at ${clock}${last === '' ? '' : `, after ${last}`}`,
} as const;

/** Said on the page of the bench, beside the keys. */
export const BENCH_WORDS = {
  alarm: (what: string, at: string): string => `Stop: ${what} past ${at}`,
  connect: 'Connect everything now, hands out, screen up. From “mains on” nothing is typed: mark each moment, fill it in afterwards.',
  desk: 'This is entered at the desk, by picture, file or line.',
  opened: 'Opened. Photograph both sides before anything is touched, and measure the residual a second time after a minute.',
  live: 'Open and live. Only marks until the plug is out.',
  chooseFirst: (what: string): string => `Choose the ${what} first`,
  closed: 'Shut until the residual above is measured at 10 V or less.',
  dead: 'Plug out first; discharge and measure before hands go in.',
  discharge: 'Unplug, discharge, measure the residual:',
  liveOnly: 'Open and live: nothing is typed. Mark only.',
  lostCount: 'Lost count? Say so: it is kept as unknown with its reason; a guess is not.',
  mayStop: 'You may stop here: the insulation between the windings has failed already, and the rest changes no word of the verdict.',
  notYet: 'Not decided yet: go on.',
  notRead: (text: string, wanted: string): string => `“${text}” is not read as ${wanted}. It stays here until it is.`,
  noStops: 'No stop limit is worked out for this unit: copy the label, and write the limits into the load.',
  planNeeded: 'No printed current to plan from: type the currents to set.',
} as const;
