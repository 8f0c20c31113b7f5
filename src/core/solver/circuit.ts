/**
 * What the solver runs: parts between named nets, in SI units. It knows nothing of cases, photos or exhibits; a traced circuit is
 * translated into it. Pins are given in order; "dot first" for windings, anode first for diodes, drain or collector first for switches.
 */
export type Pins = readonly [string, string];
/** Points of a current-voltage curve, amperes then volts, both rising. */
export type CurvePoints = readonly (readonly [amps: number, volts: number])[];

interface Named {
  readonly ref: string;
}
export interface Resistor extends Named {
  readonly kind: 'resistor';
  readonly pins: Pins;
  readonly ohms: number;
}
/** A fuse or a fusible resistor: opens when the heat of i² since the start, less what leaves it, reaches its melting integral. */
export interface Fuse extends Named {
  readonly kind: 'fuse';
  readonly pins: Pins;
  readonly ohms: number;
  readonly meltingA2s: number;
  /** Current it carries for ever. */
  readonly holdingA: number;
}
/** Resistor that falls with its own heat: R = R25 exp(B (1/T - 1/298.15 K)). */
export interface Thermistor extends Named {
  readonly kind: 'thermistor';
  readonly pins: Pins;
  readonly ohms25: number;
  readonly betaK: number;
  readonly heatJPerK: number;
  readonly lossWPerK: number;
}
export interface Varistor extends Named {
  readonly kind: 'varistor';
  readonly pins: Pins;
  /** Two or three points of one half of the symmetrical curve. */
  readonly curve: CurvePoints;
}
export interface Capacitor extends Named {
  readonly kind: 'capacitor';
  readonly pins: Pins;
  readonly farads: number;
  /** Series resistance; every capacitor has one. */
  readonly ohms: number;
  readonly initialV?: number;
  readonly ratedV?: number;
  /** Electrolytic: it wears out. */
  readonly electrolytic?: true;
}
export interface Inductor extends Named {
  readonly kind: 'inductor';
  readonly pins: Pins;
  readonly henries: number;
  readonly ohms: number;
  readonly initialA?: number;
  readonly saturation?: Saturation;
}
/** Beyond `amps` of magnetising current (of the first winding) the inductance falls to `share` of its value. */
export interface Saturation {
  readonly amps: number;
  readonly share: number;
}
export interface Diode extends Named {
  readonly kind: 'diode';
  readonly pins: Pins;
  /** Two to four points of the forward curve; the first chord, drawn on, meets zero current at the knee. */
  readonly forward: CurvePoints;
  /** Junction capacitance; 2 pF where nothing is known. */
  readonly junctionF?: number;
  readonly breakdown?: Breakdown;
  /** Leakage conductance when off. */
  readonly leakS?: number;
  /** A Schottky diode: its leakage grows when worn. */
  readonly schottky?: true;
}
export interface Breakdown {
  readonly volts: number;
  readonly ohms: number;
  /** A Zener diode works there; elsewhere reaching it is a finding. */
  readonly intended?: true;
}
export interface Winding {
  readonly name: string;
  readonly pins: Pins;
  readonly turns: number;
  readonly ohms: number;
  /** Leakage inductance of this winding, on its own side. */
  readonly leakageH: number;
  /** Self-capacitance, damped as the winding's own loss damps it. A winding that hangs on nothing else should have one. */
  readonly selfF?: number;
}
export interface Transformer extends Named {
  readonly kind: 'transformer';
  readonly windings: readonly Winding[];
  /** Magnetising inductance seen at the first winding. */
  readonly magnetisingH: number;
  /** Capacitance between two windings, from first pin to first pin. */
  readonly between?: readonly { readonly windings: readonly [string, string]; readonly farads: number; readonly ohms: number }[];
  /** Core loss as a resistance across the first winding. */
  readonly coreOhms?: number;
  readonly saturation?: Saturation;
}
/** Field-effect switch with its body diode, output capacitance and avalanche. A controller drives it. */
export interface Switch extends Named {
  readonly kind: 'switch';
  readonly pins: Pins;
  readonly onOhms: number;
  readonly outputF: number;
  readonly body: CurvePoints;
  readonly breakdown: Breakdown;
}
/**
 * Bipolar transistor by its base charge. Forward, the base is its junction's voltage behind `baseOhms` while charge is stored; the collector carries
 * charge / transitS, no more than saturation allows; charge recombines in `gain` times that time, which is what makes the storage time.
 */
export interface Bipolar extends Named {
  readonly kind: 'bipolar';
  readonly collector: string;
  readonly base: string;
  readonly emitter: string;
  readonly gain: number;
  readonly transitS: number;
  readonly baseV: number;
  readonly baseOhms: number;
  /**
   * How the junction's voltage grows with the charge: two to four points over the collector current that the charge can carry. Without
   * them it is `baseV` at any charge: enough where a base is driven hard, too little where tens of millivolts decide.
   */
  readonly baseCurve?: CurvePoints;
  readonly saturationV: number;
  readonly saturationOhms: number;
  /** Capacitance of collector to emitter, of base to emitter, and where it is known of collector to base. */
  readonly collectorF: number;
  readonly baseF: number;
  readonly collectorBaseF?: number;
  /** Reverse breakdown of base to emitter. */
  readonly baseBreakdownV: number;
  readonly breakdown: Breakdown;
}
/** Adjustable shunt regulator: cathode current gm (Vref pin - refV), never negative, never more than its saturation allows. */
export interface ShuntRegulator extends Named {
  readonly kind: 'shuntRegulator';
  readonly cathode: string;
  readonly anode: string;
  readonly reference: string;
  readonly refV: number;
  readonly siemens: number;
  readonly leastV: number;
  readonly leastOhms: number;
}
export interface Optocoupler extends Named {
  readonly kind: 'optocoupler';
  readonly led: Pins;
  readonly transistor: Pins;
  readonly forward: CurvePoints;
  /** Collector current at each point of the forward curve: the ratio depends on the current. */
  readonly collectorA: readonly number[];
  readonly poleHz: number;
  readonly saturationOhms: number;
}
export interface DcSource extends Named {
  readonly kind: 'dcSource';
  readonly pins: Pins;
  readonly volts: number;
  readonly ohms: number;
}
export interface Mains extends Named {
  readonly kind: 'mains';
  readonly pins: Pins;
  readonly rmsV: number;
  readonly hertz: number;
  /** Phase at the start; 0 is a rising zero crossing. */
  readonly phaseDeg: number;
  readonly ohms: number;
}
export interface Load extends Named {
  readonly kind: 'load';
  readonly pins: Pins;
  /** A resistance, or a current drawn from `fromV` on (an electronic load). */
  readonly draw: { readonly ohms: number } | { readonly amps: number; readonly fromV: number };
}
/** Body network of IEC 60990, figure 4, from the first pin to the second. */
export interface BodyNetwork extends Named {
  readonly kind: 'bodyNetwork';
  readonly pins: Pins;
}
export interface Controller extends Named {
  readonly kind: 'controller';
  readonly law: ControlLaw;
  /** The switch it drives. */
  readonly drives: string;
  readonly ground: string;
  readonly supply: string;
  readonly lockout: Lockout;
}
/** Supply pin: what it draws, where it starts and stops, where it trips. */
export interface Lockout {
  readonly startV: number;
  readonly stopV: number;
  readonly idleA: number;
  readonly runningA: number;
  readonly overvoltage?: { readonly volts: number; readonly after: 'latch' | 'hiccup' };
}
export type ControlLaw = PeakCurrentLaw | ValleyLaw | PrimarySideLaw;
interface CurrentLimit {
  /** Net of the current-sense pin. */
  readonly sense: string;
  readonly limitV: number;
  readonly blankS: number;
  /** From the comparator to the switch. */
  readonly delayS: number;
}
interface FeedbackPin {
  readonly feedback: string;
  /** Threshold = (feedback - offsetV) / divider, kept between leastV and limitV. */
  readonly offsetV: number;
  readonly divider: number;
  readonly leastV: number;
  /** No pulses below `stopV` until the pin is back above `goV`. */
  readonly burst: { readonly stopV: number; readonly goV: number };
  /** Feedback above `volts` for `seconds` is an overload. */
  readonly overload?: { readonly volts: number; readonly seconds: number; readonly after: 'latch' | 'hiccup' };
}
export interface PeakCurrentLaw extends CurrentLimit, FeedbackPin {
  readonly type: 'peakCurrent';
  readonly hertz: number;
  readonly dutyMost: number;
  readonly softStartS?: number;
}
/** Turns on in a valley of the drain voltage, found by the auxiliary winding. */
export interface ValleyLaw extends CurrentLimit, FeedbackPin {
  readonly type: 'valley';
  readonly auxiliary: string;
  readonly onMostS: number;
  readonly offLeastS: number;
  readonly offMostS: number;
  /** From the auxiliary's falling zero crossing to the valley. */
  readonly valleyDelayS: number;
  readonly softStartS?: number;
}
/** Regulates by the auxiliary voltage at the knee; limits the output current by the share of time in which the secondary conducts. */
export interface PrimarySideLaw extends CurrentLimit {
  readonly type: 'primarySide';
  readonly auxiliary: string;
  readonly kneeV: number;
  /** Where between turn-off and the end of conduction the auxiliary is sampled. */
  readonly sampleAt: number;
  readonly hertzMost: number;
  readonly hertzLeast: number;
  readonly onMostS: number;
  /** Smallest threshold, as a share of limitV; the controller lowers the current first, then the frequency. */
  readonly leastShare: number;
  /** Per volt of error: proportional and per-cycle integral. */
  readonly gainPerV: number;
  readonly stepPerV: number;
  /** Secondary conduction time over period at which the current limit works. */
  readonly conductionMost: number;
}
export type Part =
  | Resistor
  | Fuse
  | Thermistor
  | Varistor
  | Capacitor
  | Inductor
  | Diode
  | Transformer
  | Switch
  | Bipolar
  | ShuntRegulator
  | Optocoupler
  | DcSource
  | Mains
  | Load
  | BodyNetwork
  | Controller;

export interface Circuit {
  readonly title: string;
  /** The net all voltages are counted from; usually earth. */
  readonly earth: string;
  readonly parts: readonly Part[];
}
