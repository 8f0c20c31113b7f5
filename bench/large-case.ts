import { demoDay, demoInstruments, steps, sweepRows } from '../scripts/demo/demo-unit.ts';
import { FELL, fell } from '../scripts/demo/unit/fell.ts';
import type { CaseInput } from '../src/core/evidence/case.ts';

const SWEEPS = 8;
const ROWS = 40;
const PARTS = 45;
const DISTANCES = 14;

/** A long day at the bench: 8 sweeps of 40 rows typed by hand, 45 parts, 14 distances, a dozen temperatures. Invented, like the unit it grows from. */
export function largeCase(): CaseInput {
  const { document } = fell();
  const [currents, mains] = [steps(0, 2.1, ROWS), ['90 V', '115 V', '207 V', '230 V', '240 V', '253 V', '264 V', '230.2 V']];
  const sweeps: NonNullable<CaseInput['exhibits']> = Array.from({ length: SWEEPS }, (_, index) => ({
    id: `sweep-${index + 10}`,
    kind: 'sweep',
    day: 'day-1',
    under: { cover: 'closed', start: index % 2 === 0 ? 'cold' : 'hot', mains: mains[index]! },
    port: 'out-1',
    level: '12v',
    order: index % 2 === 0 ? 'up' : 'down',
    sense: 'cableEnd',
    table: {
      columns: [
        { id: 'i', unit: 'A', role: 'outputCurrent' },
        { id: 'v', unit: 'V', role: 'outputVoltage' },
        { id: 'p', unit: 'W', role: 'inputPower' },
      ],
      rows: sweepRows(FELL, 12.2, `bench sweep ${index}`, currents).map((row, at) => ({
        id: `r${at + 1}`,
        cells: [row.current.toFixed(3), row.voltage.toFixed(3), row.power.toFixed(2)],
      })),
    },
  }));
  const nets: NonNullable<CaseInput['conductors']> = Array.from({ length: DISTANCES }, (_, index) => ({
    id: `net-${index}`,
    name: `net ${index}`,
    side: index % 2 === 0 ? 'mains' : 'output',
  }));
  return {
    ...document,
    id: 'bench-large',
    instruments: demoInstruments(),
    days: [demoDay('2026-03-04')],
    conductors: [...(document.conductors ?? []), ...nets],
    parts: [
      ...(document.parts ?? []),
      ...Array.from({ length: PARTS - (document.parts?.length ?? 0) }, (_, index) => ({
        id: `bench-r${index}`,
        ref: `R${index}`,
        kind: 'resistor' as const,
        value: '4k7',
        pins: [
          { pin: '1', net: `net-${index % DISTANCES}` },
          { pin: '2', net: `net-${(index + 2) % DISTANCES}` },
        ],
      })),
    ],
    exhibits: [
      ...(document.exhibits ?? []).filter(({ kind }) => kind !== 'sweep'),
      ...sweeps,
      ...Array.from({ length: DISTANCES - 2 }, (_, index) => ({
        id: `gap-${index}`,
        kind: 'distance' as const,
        day: 'day-1',
        from: `net-${index - (index % 2)}`,
        to: `net-${index - (index % 2) + 1}`,
        path: index % 2 === 0 ? ('surface' as const) : ('air' as const),
        method: 'caliper' as const,
        value: `${(4 + index / 10).toFixed(2)} mm`,
      })),
    ],
  };
}
