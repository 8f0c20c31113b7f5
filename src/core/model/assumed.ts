import { cite, type Source } from '../source/source.ts';

/** A figure that nobody measured or read off a part: stated, with where it comes from, in every result that hangs on it. */
export interface Assumption {
  readonly key: AssumedKey;
  /** Reference of the part; null where it is about the whole. */
  readonly part: string | null;
  /** SI; null where what is assumed is no number. */
  readonly value: number | null;
  readonly unit: string;
  readonly source: Source;
}

/** What has to be known before a circuit can be run: "needs the primary inductance of T1". */
export interface Missing {
  readonly key:
    | 'value'
    | 'inductance'
    | 'turns'
    | 'law'
    | 'frequency'
    | 'currentLimit'
    | 'net'
    | 'inlet'
    | 'outlet'
    | 'kind'
    | 'kneeVoltage'
    | 'claim';
  readonly part: string;
}

const practice = (why: string): Source => cite('bench', why, 'common-practice');
const sheets = (why: string): Source => cite('bench', why, 'memory');
const house = (why: string): Source => cite('house', why, 'common-practice');

/**
 * Every figure that a model may fall back on. `value` null: it is worked out from something else (a rating, an inductance) by the rule that
 * the source names, and the number is listed with the part.
 */
export const ASSUMED = {
  mainsResistance: { value: 0.4, unit: 'Ω', source: practice('resistance of a household socket circuit') },
  plugWay: { value: null, unit: '', source: house('the plug way in which more current flows to earth') },
  fuseResistance: { value: 0.1, unit: 'Ω', source: practice('cold resistance of a miniature fuse of about 1 A') },
  fuseMelting: { value: null, unit: 'A²s', source: sheets('time-lag fuse: 5 s times the square of its rated current') },
  fuseHolding: { value: null, unit: 'A', source: cite('iec-60127', 'carries 1.5 times its rated current for an hour', 'memory') },
  fusibleMelting: { value: null, unit: 'A²s', source: sheets('fusible resistor: 0.5 s at 30 times its rated power') },
  thermistorBeta: { value: 3000, unit: 'K', source: sheets('inrush thermistors') },
  thermistorHeat: { value: 0.3, unit: 'J/K', source: sheets('inrush thermistor of 8 mm') },
  thermistorLoss: { value: 0.012, unit: 'W/K', source: sheets('inrush thermistor of 8 mm') },
  varistorCurve: { value: null, unit: 'V', source: sheets('metal oxide: clamps at 1.65 times its voltage at 1 mA') },
  chokeLeftOut: { value: 0.2, unit: 'Ω', source: house('a common-mode choke is its resistance: what it does lies above the run') },
  inductorResistance: { value: null, unit: 'Ω', source: practice('1 Ω for each millihenry') },
  linkResistance: { value: 0.01, unit: 'Ω', source: practice('wire link') },
  seriesResistance: { value: null, unit: 'Ω', source: practice('electrolytic capacitor: 25 µs over its capacitance, 50 µs from 100 V on') },
  plainSeriesResistance: { value: 0.1, unit: 'Ω', source: practice('ceramic and film capacitors, with their tracks') },
  junctionLaw: { value: null, unit: '', source: sheets('junction of that kind and size') },
  blockingVoltage: { value: null, unit: 'V', source: sheets('type number') },
  blockingByKind: { value: null, unit: 'V', source: house('what parts in that place are usually rated') },
  junctionCapacitance: { value: null, unit: 'F', source: sheets('diodes of that kind and size') },
  zenerResistance: { value: 5, unit: 'Ω', source: sheets('Zener diodes of half a watt') },
  leakageShare: { value: null, unit: 'H', source: practice('leakage of 2 % of the primary inductance') },
  windingResistance: { value: null, unit: 'Ω', source: practice('1.5 Ω for each millihenry of the winding') },
  coreResistance: { value: null, unit: 'Ω', source: practice('core loss as 250 kΩ for each millihenry across the primary') },
  noSaturation: { value: null, unit: '', source: house('without the cross-section of the core it is taken not to saturate') },
  windingSelf: {
    value: null,
    unit: 'F',
    source: house('50 pF across the primary, more with fewer turns, with a loss that ends its ringing'),
  },
  windingCapacitance: { value: 30e-12, unit: 'F', source: practice('between primary and secondary of a small transformer') },
  onResistance: { value: null, unit: 'Ω', source: sheets('high-voltage switch: 10 V over its rated current') },
  outputCapacitance: { value: null, unit: 'F', source: sheets('high-voltage switch: 20 pF and 8 pF for each ampere') },
  switchCurrent: { value: 4, unit: 'A', source: house('rated current of a switch without a number') },
  transistorGain: { value: null, unit: '1', source: sheets('bipolar transistor of that number or place') },
  transistorStorage: { value: null, unit: 's', source: sheets('transit time of that kind of transistor') },
  idealDrive: { value: null, unit: '', source: house('the controller drives its switch without delay; parts of the drive are left out') },
  startVoltage: { value: 16, unit: 'V', source: sheets('controllers of small adapters') },
  stopVoltage: { value: 9, unit: 'V', source: sheets('controllers of small adapters') },
  idleCurrent: { value: 20e-6, unit: 'A', source: sheets('controllers of small adapters') },
  runningCurrent: { value: 1.5e-3, unit: 'A', source: sheets('controllers of small adapters') },
  noTrip: { value: null, unit: '', source: house('without its figure a controller is taken to have no overvoltage trip') },
  noOverloadTimer: { value: null, unit: '', source: house('without its figure a controller is taken to limit for ever') },
  blanking: { value: 300e-9, unit: 's', source: sheets('leading-edge blanking') },
  turnOffDelay: { value: 100e-9, unit: 's', source: sheets('from comparator to switch') },
  longestOn: { value: 0.75, unit: '1', source: sheets('longest on-time of fixed-frequency controllers') },
  pullVoltage: { value: 5, unit: 'V', source: sheets('feedback pin of small controllers') },
  pullResistance: { value: 20e3, unit: 'Ω', source: sheets('feedback pin of small controllers') },
  feedbackOffset: { value: 0.6, unit: 'V', source: sheets('feedback pin of small controllers') },
  feedbackAtLimit: { value: 3.5, unit: 'V', source: sheets('feedback voltage at which the current limit is reached') },
  leastPeakShare: { value: 0.15, unit: '1', source: sheets('smallest peak current over the limit') },
  sampleShare: { value: 0.7, unit: '1', source: sheets('where a primary-side controller samples') },
  valleyDelay: { value: 300e-9, unit: 's', source: sheets('from zero crossing to valley') },
  referenceGain: { value: 1, unit: 'S', source: sheets('431-type shunt reference') },
  transferRatio: { value: null, unit: '1', source: sheets('geometric middle of what its grade allows, at every current') },
  optocouplerPole: { value: 20e3, unit: 'Hz', source: sheets('optocoupler with a pull-up of some kilohms') },
  outputSwitchOn: { value: 0.02, unit: 'Ω', source: house('the switch of the output is on') },
  chipLeg: { value: 1, unit: 'Ω', source: house('the negotiation chip joins the leg of that level') },
  partLeftOut: { value: null, unit: '', source: house('what nothing is known of is left out') },
  levelByDivider: { value: null, unit: '', source: house('the level is what the parts set') },
  turnsFromStack: { value: null, unit: '1', source: house('turns as unwound, where the tracing has none') },
} as const satisfies Record<string, { readonly value: number | null; readonly unit: string; readonly source: Source }>;
export type AssumedKey = keyof typeof ASSUMED;
