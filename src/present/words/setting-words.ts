import type { Templates } from './fill-template.ts';

/** What the judgement assumed. A key that is not here is shown as it is. */
export const SETTINGS: Templates = {
  market: 'market',
  mains: 'mains',
  'mains.nominal': 'mains, nominal',
  'mains.frequency': 'frequency',
  'mains.low': 'mains, lowest',
  'mains.high': 'mains, highest',
  'mains.highFrequency': 'frequency at highest mains',
  highestAmbient: 'highest ambient',
  altitude: 'altitude, up to',
  overvoltageCategory: 'overvoltage category',
  pollutionDegree: 'pollution degree',
  productStandards: 'product standards',
  editions: 'editions',
  contact: 'contact with the case',
  decision: 'passes from / fails up to',
};

/** Typed words of the setting that are not for reading. */
export const SETTING_VALUES: Templates = {
  under1s: 'under 1 s',
  '1to10s': '1 to 10 s',
  '10to60s': '10 to 60 s',
  over1min: 'over 1 min',
  other: 'another market',
};

/** Settings that a case always has to give: nothing was changed by giving them. */
export const ALWAYS_GIVEN: readonly string[] = ['market'];
