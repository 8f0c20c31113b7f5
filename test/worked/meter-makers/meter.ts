import type { Instrument } from '../../../src/core/evidence/instrument.ts';

/** A voltmeter of one range that states one accuracy. */
export function meter(accuracy: string, basis?: 'statedLimit' | 'standard' | 'expanded2'): Instrument {
  return {
    id: 'm1',
    name: 'meter',
    ranges: [{ of: 'outputVoltage', accuracy, ...(basis === undefined ? {} : { basis }) }],
  };
}
