import { attach, type DemoCase, degrees, demoDay, demoInstruments, ROOM_C, steps, sweepRows, text } from '../demo-unit.ts';
import { semicolonComma, unitRowTabs } from '../file-layouts.ts';
import { sweepExhibit } from '../sweep-exhibit.ts';
import { operatingAt, temperaturesAt, type UnitModel } from '../unit-model.ts';

/** Moss Trio: three ports that share one budget, half examined and never opened. Invented. */
export const MOSS: UnitModel = {
  seed: 'moss-trio',
  transformer: { primaryTurns: 95, secondaryTurns: 7, inductanceH: 0.9e-3, coreAreaM2: 33.5e-6, peakA: 0.66 },
  frequencyHz: 65e3,
  dutyMost: 0.5,
  bulkF: 15e-6,
  inrushOhm: 8.2,
  refills: 2,
  outputEsrOhm: 0.02,
  stepOhm: 0.15,
  rectifierV: 0.45,
  outputOhm: 0.06,
  idleW: 0.12,
  copperOhm: 0.08,
  primaryShare: 0.1,
  thermal: { caseKPerW: 15, windingKPerW: 8, timeConstantS: 1400 },
  barrierF: 1.5e-9,
  railShare: 0.71,
};

const SET_V = 5.12;
const TESTED_A = 2.1; // about the most its first socket holds

export function moss(model: UnitModel = MOSS): DemoCase {
  const first = text(unitRowTabs(sweepRows(model, SET_V, 'sweep a1', steps(0, 2.6, 27)), 'load sweep of Moss Trio, first socket'));
  const third = text(semicolonComma(sweepRows(model, SET_V, 'sweep c1', steps(0, 3.2, 17)), 'load sweep of Moss Trio, third socket'));
  const { caseC } = temperaturesAt(model, operatingAt(model, SET_V, TESTED_A), ROOM_C);
  const day = 'day-1';
  const port = (id: string, name: string, kind: 'usbA' | 'usbC', printed: string, others: string[]) => ({
    id,
    name,
    kind,
    levels: [{ id: '5v', voltage: '5 V', printed, from: 'label' as const }],
    sharesWith: others,
  });
  const sweep = (id: string, of: string, file: string, columns: [string, string, string]): ReturnType<typeof sweepExhibit> =>
    sweepExhibit({ id, at: '2026-03-12T10:00:00', port: of, level: '5v', sense: 'socket', file, columns });
  return {
    document: {
      format: 'mainsworthy-case/1',
      id: 'moss-trio',
      product: { id: 'moss-trio', name: 'Moss Trio' },
      sample: 'A',
      examinedBy: 'invented examiner',
      invented: true,
      setting: { market: 'EU' },
      instruments: demoInstruments(),
      days: [demoDay('2026-03-12')],
      events: [{ id: 'bought', at: '2026-02-20T13:30:00', what: 'purchased', note: 'invented quayside market lot' }],
      ports: [
        port('a1', 'first USB-A socket', 'usbA', '2.4 A', ['a2', 'c1']),
        port('a2', 'second USB-A socket', 'usbA', '2.4 A', ['a1', 'c1']),
        port('c1', 'USB-C socket', 'usbC', '3 A', ['a1', 'a2']),
      ],
      conductors: [
        { id: 'out-plus', name: 'output plus', side: 'output' },
        { id: 'out-minus', name: 'output minus', side: 'output' },
      ],
      places: [{ id: 'case-top', name: 'case, top', outside: true, material: 'plastic' }],
      exhibits: [
        {
          id: 'label-1',
          kind: 'label',
          input: { voltage: '100-240 V', frequency: '50/60 Hz', current: '0.8 A' },
          class: 'II',
          maker: 'invented name without an address',
          bought: { where: 'invented quayside market', date: '2026-02-20', price: '11.00' },
        },
        sweep('sweep-a1', 'a1', 'file-a1', ['Load', 'Output', 'Input']),
        sweep('sweep-c1', 'c1', 'file-c1', ['I out', 'U out', 'P in']),
        {
          id: 'spots-1',
          kind: 'spots',
          day,
          at: '2026-03-12T13:00:00',
          under: { cover: 'closed', minutes: '90 min', loads: [{ port: 'a1', draws: `${TESTED_A.toFixed(2)} A` }] },
          rows: [{ id: 'case', place: 'case-top', value: degrees(model, 'case', caseC), by: 'contact' }],
        },
      ],
      files: [attach('file-a1', 'sweep-a1.txt', first, 'text/tab-separated-values'), attach('file-c1', 'sweep-c1.csv', third)],
    },
    files: { 'sweep-a1.txt': first, 'sweep-c1.csv': third },
  };
}
