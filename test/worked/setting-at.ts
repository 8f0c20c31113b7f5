import { chosen, type Derived, given } from '../../src/core/trace/derived.ts';
import type { SettingFacts } from '../../src/core/working/setting/setting-facts.ts';

/** A voltage that is known exactly. */
export function voltage(value: number, id: string): Derived {
  return given('typed', value, 'V', { id: `example/${id}`, name: id });
}

/** The assumptions of an example: mains, overvoltage category and altitude matter, the rest is any. */
export function settingAt({
  mains,
  category,
  altitude,
}: {
  mains: number;
  category: 'I' | 'II' | 'III' | 'IV';
  altitude: number;
}): SettingFacts {
  const word = (text: string, id: string) => chosen(text, { id: `example/${id}`, name: id });
  const frequency = given('typed', 50, 'Hz', { id: 'example/frequency', name: 'frequency' });
  return {
    nominal: voltage(mains, 'nominal'),
    frequency,
    low: voltage(mains * 0.9, 'low'),
    high: voltage(mains * 1.1, 'high'),
    highFrequency: frequency,
    highestAmbient: given('typed', 313.15, 'K', { id: 'example/ambient', name: 'ambient' }),
    altitude: given('typed', altitude, 'm', { id: 'example/altitude', name: 'altitude' }),
    overvoltageCategory: word(category, 'category'),
    pollutionDegree: word('2', 'degree'),
    contact: word('1to10s', 'contact'),
    decision: { passAt: 0.95, failAt: 0.05, changed: false },
    entries: {},
  };
}
