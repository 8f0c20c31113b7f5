import type { CaseInput } from '../../src/core/evidence/case.ts';
import { boundOf, parseAccuracy } from '../../src/core/quantity/accuracy.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import type { Kind } from '../../src/core/quantity/unit.ts';
import { noiseFor } from './noise.ts';

type InstrumentInput = NonNullable<CaseInput['instruments']>[number];

/** The invented instruments of the demo bench, with the accuracies that such instruments state. */
export const DEMO_INSTRUMENTS: InstrumentInput[] = [
  {
    id: 'load-1',
    name: 'electronic load, invented',
    ranges: [
      { of: 'outputCurrent', upTo: '5 A', resolution: '0.001 A', accuracy: '0.2 % + 3 digits' },
      { of: 'outputVoltage', upTo: '30 V', resolution: '0.001 V', accuracy: '0.1 % + 5 digits' },
    ],
  },
  {
    id: 'power-1',
    name: 'power meter, invented',
    ranges: [{ of: 'inputPower', upTo: '200 W', resolution: '0.01 W', accuracy: '0.4 % + 2 digits' }],
  },
  {
    id: 'meter-1',
    name: 'multimeter, invented',
    ranges: [
      { of: 'mains', upTo: '600 V', resolution: '0.1 V', accuracy: '0.8 % + 5 digits' },
      { of: 'touchCurrent', upTo: '6 mA', resolution: '0.001 mA', accuracy: '1 % + 3 digits' },
      { of: 'capacitance', upTo: '40 nF', resolution: '0.01 nF', accuracy: '2 % + 5 digits' },
      { of: 'insulation', upTo: '20 GΩ', resolution: '1 MΩ', accuracy: '5 % + 3 digits' },
      { of: 'ambient', upTo: '100 °C', resolution: '0.1 K', accuracy: '0.5 K' },
    ],
  },
  {
    id: 'probe-1',
    name: 'high-resistance probe, invented',
    inputResistance: '100 MΩ',
    ranges: [{ of: 'residualVoltage', upTo: '1 kV', resolution: '0.1 V', accuracy: '2 % + 3 digits' }],
  },
  {
    id: 'thermo-1',
    name: 'thermocouple reader, invented',
    ranges: [{ of: 'temperature', upTo: '400 °C', resolution: '0.1 K', accuracy: '1 % or 1.5 K, whichever is greater' }],
  },
  { id: 'caliper-1', name: 'caliper, invented', ranges: [{ of: 'distance', upTo: '150 mm', resolution: '0.01 mm', accuracy: '0.1 mm' }] },
];

/**
 * One reading as the demo bench would take it: the true value, the instrument's own error within half of what it states (the percent part the same for
 * all readings of a range, drawn once), and the last digits. Returned as displayed.
 */
export function displayed(
  seed: string,
  reading: string,
  truth: number,
  of: { instrument: string; role: string; kind: Kind; step: number },
): number {
  const instrument = DEMO_INSTRUMENTS.find(({ id }) => id === of.instrument);
  const range = instrument?.ranges.find((one) => one.of === of.role);
  if (range === undefined) throw new Error(`${of.instrument} does not read ${of.role}`);
  const accuracy = parseAccuracy(range.accuracy, of.kind);
  if (isRefusal(accuracy)) throw new Error(range.accuracy);
  const shared = noiseFor(seed, `gain of ${of.instrument} for ${of.role}`).uniform() * 2 - 1;
  const bound = boundOf({ ...accuracy, digits: 0 }, truth, of.step);
  const HALF_OF_THE_STATEMENT = 0.5; // a healthy instrument is better than its sheet
  const own = noiseFor(seed, reading).normal() * of.step * 0.6;
  return Math.round((truth + shared * bound * HALF_OF_THE_STATEMENT + own) / of.step) * of.step;
}
