import type { Json } from '../../app/casebook/change.ts';
import type { LastChance } from '../../present/workspace/next-view.ts';

export type Tree = Readonly<Record<string, Json>>;
export type Point = LastChance['before'];

/** One step of the day at the bench. */
export interface DayStep {
  readonly id: string;
  /** Proposed measurements that it takes. */
  readonly measures: readonly string[];
  /** Evidence in the case that shows it was done. */
  readonly shows: (exhibit: Tree) => boolean;
  /** The unit runs: a residual measured before counts no longer. */
  readonly powered?: true;
  /** The mains side lies open: `dead` wants a residual first, `live` wants it before the mains comes on and then takes marks only. */
  readonly open?: 'dead' | 'live';
  /** The chapter of the case page where it is entered, when the bench has no entry for it. */
  readonly desk?: string;
}

const isKind =
  (...kinds: readonly string[]) =>
  (exhibit: Tree): boolean =>
    kinds.includes(String(exhibit['kind']));
const isEvent =
  (...what: readonly string[]) =>
  (exhibit: Tree): boolean =>
    exhibit['kind'] === 'event' && what.includes(String(exhibit['what']));
const isTouch =
  (...quantities: readonly string[]) =>
  (exhibit: Tree): boolean =>
    exhibit['kind'] === 'touch' && quantities.includes(String(exhibit['quantity']));
const conditionsOf = (exhibit: Tree): Tree => (exhibit['under'] as Tree | undefined) ?? {};
const isHot = (exhibit: Tree): boolean => conditionsOf(exhibit)['start'] === 'hot';

/** The order of a day, with the points after which something can never be measured again; the trade's habit, common practice. */
export const DAY: readonly (DayStep | { readonly point: Point })[] = [
  { id: 'photographs', measures: [], shows: isKind('photo'), desk: 'files' },
  { id: 'body', measures: ['label', 'plug'], shows: isKind('body', 'label') },
  { id: 'cold', measures: ['coldResistance', 'coldCapacitance', 'coldInsulation'], shows: isKind('cold') },
  { id: 'powerUp', measures: [], shows: (exhibit) => isEvent('start', 'plugIn')(exhibit) && !isHot(exhibit), powered: true },
  {
    id: 'touch',
    measures: ['idleVoltage', 'idlePower', 'touchBothWays', 'outputToEarth'],
    shows: isTouch('touchCurrentRms', 'touchCurrentPeak', 'voltageToEarth'),
    powered: true,
  },
  { id: 'advertised', measures: ['advertised'], shows: isKind('advertised'), powered: true },
  {
    id: 'sweeps',
    measures: ['sweep', 'sweepWithInput', 'sweepAtEnds', 'sweepBeyond', 'portsTogether'],
    shows: isKind('sweep'),
    powered: true,
  },
  {
    id: 'events',
    measures: ['idleAndStarts', 'transient', 'ripple'],
    shows: (exhibit) => isKind('ripple')(exhibit) || isEvent('start', 'brownOut', 'plugIn', 'unplug', 'step', 'idle')(exhibit),
    powered: true,
  },
  {
    id: 'soak',
    measures: ['soak', 'soakLogged', 'spotOutside'],
    shows: (exhibit) => isKind('soak', 'spots')(exhibit) && conditionsOf(exhibit)['cover'] !== 'open',
    powered: true,
  },
  { id: 'hotAndShort', measures: ['short'], shows: (exhibit) => isEvent('short', 'overload')(exhibit) || isHot(exhibit), powered: true },
  { id: 'pins', measures: ['plugDischarge'], shows: isTouch('pinsAfterUnplugging'), powered: true },
  { id: 'drop', measures: ['enclosure'], shows: (exhibit) => exhibit['kind'] === 'body' && exhibit['drops'] !== undefined },
  { point: 'opening' },
  { id: 'open', measures: [], shows: isKind('residual'), open: 'dead' },
  {
    id: 'board',
    measures: [
      'distanceAir',
      'distanceSurface',
      'bridgingParts',
      'optocoupler',
      'firstPart',
      'capacitorValues',
      'bulkCapacitor',
      'inrushParts',
      'workmanship',
    ],
    shows: isKind('board', 'distance'),
    open: 'dead',
  },
  { id: 'circuit', measures: ['circuit', 'circuitRun', 'faultRun'], shows: () => false, open: 'dead', desk: 'circuit' },
  {
    id: 'thermal',
    measures: ['spotWinding', 'spotParts', 'spotMaterial'],
    shows: (exhibit) => exhibit['kind'] === 'thermalPicture' || (exhibit['kind'] === 'spots' && conditionsOf(exhibit)['cover'] === 'open'),
    open: 'live',
  },
  { id: 'waveforms', measures: ['workingVoltage', 'capture'], shows: isKind('workingVoltage', 'capture'), open: 'live' },
  { point: 'desoldering' },
  {
    id: 'partsOff',
    measures: [],
    shows: (exhibit) => exhibit['kind'] === 'stack' && (exhibit['inductance'] !== undefined || exhibit['leakage'] !== undefined),
    open: 'dead',
  },
  { point: 'unwinding' },
  { id: 'transformer', measures: ['stack'], shows: isKind('stack'), open: 'dead' },
];

export const STEPS: readonly DayStep[] = DAY.filter((one) => 'id' in one);

/** Points of no return that lie before a step, in order. */
export function pointsBefore(step: string): readonly Point[] {
  const at = DAY.findIndex((one) => 'id' in one && one.id === step);
  return DAY.slice(0, at).flatMap((one) => ('point' in one ? [one.point] : []));
}

/** The step in which a proposed measurement is taken. */
export function stepOfMeasure(measure: string): string | null {
  return STEPS.find(({ measures }) => measures.includes(measure))?.id ?? null;
}
