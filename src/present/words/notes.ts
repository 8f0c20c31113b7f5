import type { Templates } from './fill-template.ts';

/**
 * Remarks on findings and steps. `{name}` puts an argument in as it is, `{name|V}` as a quantity in that SI unit, `{name|percent}` the way
 * `show` says. A remark that has no sentence here appears in the report as its key.
 */
export const NOTES: Templates = {
  outOfRange: 'Used outside the stated range of the formula: {input} is {value}, the range goes from {from} to {to}.',
  otherBranch: 'Within its uncertainty this could also be "{branch}".',
  basicMetRestUndecided: 'Basic insulation is met for certain; whether reinforced is met cannot be told.',
  estimated: 'Estimated, not measured.',
  workingVoltageEstimated: 'The working voltage was not measured; it is estimated from the mains, with its spread in the uncertainty.',
  scaledToHighestMains: 'Scaled from the mains at which it was read to the highest mains of the setting.',
  scaledToHighestAmbient: 'Scaled from the ambient at which it was read to the highest ambient of the setting.',
  asRead: 'As read, near room temperature.',
  extrapolated: 'Taken from the end of the fitted curve; the unit had not settled.',
  interpolated: 'Read between two points of the sweep.',
  belowHeadline: 'Not beyond a limit from memory by 1.3 times; it does not set the headline.',
  limitFromMemory: 'The limit is from memory and was not verified.',
  isolatedSupply: 'Taken behind an isolating supply; touch current cannot be judged there.',
  assumedMaterialGroup: 'Material group {group} is assumed; the laminate is not marked.',
  worstOf: 'The worst of {count} readings.',
  plugWay: 'Plug way {way}.',
  supplyKind: 'Supply: {kind}.',
};

/** Things about the case as a whole that a reader must know. */
export const WARNINGS: Templates = {
  readingsDisagree: 'Readings of the same thing differ by more than their uncertainty.',
  unknownInstrument: 'A reading names an instrument that is not described.',
  missingAmbient: 'The ambient temperature is not given.',
  staleResult: 'A slow result was computed from evidence that has changed since.',
  decisionChanged: 'The decision rule differs from the default.',
};
