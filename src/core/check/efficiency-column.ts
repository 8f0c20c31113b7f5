export const LOW_VOLTAGE_BELOW_V = 6; // EU 2019/1782 annex I: nameplate below 6 V ...
const LOW_VOLTAGE_FROM_A = 0.55; // ... and at least 0.55 A

export type EfficiencyColumn = 'low' | 'basic' | 'multiple';

/** Which line of the regulation a supply of one output voltage stands on. */
export function columnOf(volts: number, amperes: number): 'low' | 'basic' {
  return volts < LOW_VOLTAGE_BELOW_V && amperes >= LOW_VOLTAGE_FROM_A ? 'low' : 'basic';
}
