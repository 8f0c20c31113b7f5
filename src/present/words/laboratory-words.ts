import type { LABORATORY } from '../../core/check/bench-set.ts';

export type LaboratoryKey = (typeof LABORATORY)[number];

export const LABORATORY_TITLE = 'Cannot be judged without a laboratory, for any unit';

export const LABORATORY_WORDS: Readonly<Record<LaboratoryKey, string>> = {
  flammability: 'flammability of the plastics',
  ballPressure: 'ball pressure at heat',
  humidity: 'insulation after humidity',
  impulse: 'impulse voltage',
  electricStrength: 'electric strength',
  faultsForHours: 'faults held for hours',
  emissions: 'conducted and radiated emissions',
  materialsTracking: 'tracking of materials',
};

export function laboratoryText(keys: readonly string[]): string {
  return keys.map((key) => (Object.hasOwn(LABORATORY_WORDS, key) ? LABORATORY_WORDS[key as LaboratoryKey] : key)).join(', ');
}
