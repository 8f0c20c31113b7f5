import type { Consequence, Hazard } from '../result/assessment.ts';

/** Chapter of the examination in which a check's evidence is gathered. */
export type Chapter = 'label' | 'cold' | 'touch' | 'load' | 'heat' | 'board' | 'transformer' | 'circuit' | 'scope' | 'faults';

export interface BenchCheck {
  readonly id: string;
  readonly hazard: Hazard;
  /** Worst consequence a failing finding can carry; a rung or a level can lower it for one finding. */
  readonly worst: Consequence;
  readonly chapter: Chapter;
  /** Evidence that is lost at a point of no return. */
  readonly before?: 'opening' | 'desoldering' | 'unwinding';
}

function check(id: string, worst: Consequence, chapter: Chapter, before?: BenchCheck['before']): BenchCheck {
  const base = { id, hazard: id.split('/')[0] as Hazard, worst, chapter };
  return before === undefined ? base : { ...base, before };
}

/**
 * Every check that a bench like this can settle, planned for any chapter, from the first day: one that is not written yet reports
 * "not assessed, not implemented", so coverage never says "examined" because nobody wrote the check. Consequences follow the class table
 * of docs/decisions/0003-verdict.md.
 */
export const BENCH_SET: readonly BenchCheck[] = [
  check('shock/clearance', 'lethal', 'board'),
  check('shock/creepage', 'lethal', 'board'),
  check('shock/barrier', 'lethal', 'transformer'),
  check('shock/winding-insulation', 'lethal', 'transformer'),
  check('shock/wire-insulation', 'lethal', 'transformer'),
  check('shock/optocoupler', 'lethal', 'board'),
  check('shock/part-across-barrier', 'lethal', 'circuit'),
  check('shock/bridging-part', 'lethal', 'board'),
  check('shock/touch-current', 'lethal', 'touch', 'opening'),
  check('shock/fault-touch-current', 'lethal', 'faults'),
  check('shock/cold-insulation', 'lethal', 'cold', 'desoldering'),
  check('shock/enclosure', 'lethal', 'label', 'opening'),
  check('shock/plug-discharge', 'injurious', 'touch', 'desoldering'),
  check('shock/optocoupler-temperature', 'injurious', 'heat', 'desoldering'),
  check('shock/safety-capacitor-temperature', 'injurious', 'heat', 'desoldering'),
  check('shock/working-voltage', 'informative', 'scope', 'desoldering'),
  check('fire/fuse', 'injurious', 'board'),
  check('fire/winding-temperature', 'injurious', 'heat', 'desoldering'),
  check('fire/inrush', 'injurious', 'board'),
  check('fire/bulk-capacitor-voltage', 'injurious', 'board'),
  check('fire/semiconductor-temperature', 'injurious', 'heat', 'desoldering'),
  check('fire/board-temperature', 'injurious', 'heat', 'desoldering'),
  check('fire/material-temperature', 'injurious', 'heat', 'desoldering'),
  check('fire/short-endurance', 'injurious', 'load', 'opening'),
  check('fire/workmanship', 'injurious', 'board'),
  check('fire/mains-side', 'injurious', 'circuit'),
  check('fire/core-saturation', 'injurious', 'transformer'),
  check('fire/switch-voltage', 'injurious', 'transformer'),
  check('fire/rectifier-voltage', 'injurious', 'transformer'),
  check('fire/winding-loss', 'injurious', 'transformer'),
  check('fire/thermal-runaway', 'injurious', 'heat', 'opening'),
  check('fire/fault-without-fuse', 'injurious', 'faults'),
  check('fire/fault-stress', 'injurious', 'faults'),
  check('fire/switch-stress', 'injurious', 'faults'),
  check('fire/rectifier-stress', 'injurious', 'faults'),
  check('burn/enclosure-temperature', 'injurious', 'heat', 'opening'),
  check('harm/overvoltage', 'damaging', 'load', 'desoldering'),
  check('harm/transient', 'damaging', 'load', 'desoldering'),
  check('harm/ripple', 'damaging', 'load', 'desoldering'),
  check('harm/set-point-tolerance', 'damaging', 'circuit'),
  check('harm/feedback-open', 'damaging', 'circuit'),
  check('harm/fault-overvoltage', 'damaging', 'faults'),
  check('delivery/current', 'disappointing', 'load', 'desoldering'),
  check('delivery/voltage-window', 'disappointing', 'load', 'desoldering'),
  check('delivery/efficiency', 'disappointing', 'load', 'desoldering'),
  check('delivery/power', 'disappointing', 'load', 'desoldering'),
  check('delivery/advertised', 'disappointing', 'load', 'desoldering'),
  check('delivery/mains-range', 'disappointing', 'load', 'desoldering'),
  check('delivery/steadiness', 'disappointing', 'load', 'desoldering'),
  check('delivery/ports', 'disappointing', 'load', 'desoldering'),
  check('delivery/idle-power', 'disappointing', 'load', 'desoldering'),
  check('delivery/power-capability', 'disappointing', 'transformer'),
  check('delivery/set-point', 'disappointing', 'circuit'),
  check('delivery/simulated-limit', 'disappointing', 'faults'),
  check('delivery/regulation-mode', 'informative', 'load', 'desoldering'),
  check('endurance/capacitor-temperature', 'disappointing', 'heat', 'desoldering'),
  check('endurance/capacitor-value', 'disappointing', 'board'),
  check('endurance/capacitor-life', 'disappointing', 'heat', 'desoldering'),
  check('endurance/rectifier-margin', 'disappointing', 'heat', 'desoldering'),
  check('interference/suppression', 'informative', 'board'),
  check('interference/winding-screen', 'informative', 'transformer'),
  check('interference/earth-swing', 'informative', 'load', 'desoldering'),
  check('labelling/ratings', 'informative', 'label'),
  check('labelling/claims', 'disappointing', 'label'),
  check('labelling/plug', 'injurious', 'label'),
];

/** What no bench of this kind can judge; goes with every verdict, always the same, in this order. Keys for the words. */
export const LABORATORY = [
  'flammability',
  'ballPressure',
  'humidity',
  'impulse',
  'electricStrength',
  'faultsForHours',
  'emissions',
  'materialsTracking',
] as const;
