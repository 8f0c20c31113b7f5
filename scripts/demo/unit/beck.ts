import {
  attach,
  BENCH_HZ,
  BENCH_MAINS,
  BENCH_V,
  type DemoCase,
  degrees,
  demoDay,
  demoInstruments,
  milliamperes,
  millimetres,
  nanofarads,
  ROOM_C,
  steps,
  sweepRows,
  text,
} from '../demo-unit.ts';
import { unitRowTabs } from '../file-layouts.ts';
import { operatingAt, temperaturesAt, touchA, type UnitModel } from '../unit-model.ts';

/** Beck 5: a 5 V 2 A cube whose barrier is defeated: too short a way on the board and an ordinary ceramic across it. Invented. */
export const BECK: UnitModel & { boardMm: number; airMm: number } = {
  seed: 'beck-5',
  transformer: { primaryTurns: 110, secondaryTurns: 9, inductanceH: 1.5e-3, coreAreaM2: 17.1e-6, peakA: 0.345 },
  frequencyHz: 85e3,
  rectifierV: 0.55,
  outputOhm: 0.11,
  idleW: 0.22,
  copperOhm: 0.12,
  primaryShare: 0.14,
  thermal: { caseKPerW: 21, windingKPerW: 9, timeConstantS: 900 },
  barrierF: 1e-9,
  railShare: 0.98,
  boardMm: 1.62,
  airMm: 1.6,
};

const SET_V = 5.2;
const TESTED_A = 1.15; // about the most it holds
/** What leaks through the windings of an isolating transformer's own capacitance: next to nothing, whatever the unit does. */
const BEHIND_ISOLATION = 0.02;

export function beck(model: UnitModel & { boardMm: number; airMm: number } = BECK): DemoCase {
  const sweep = text(unitRowTabs(sweepRows(model, SET_V, 'sweep', steps(0, 2, 21)), 'load sweep of Beck 5 at 230 V'));
  const hot = operatingAt(model, SET_V, TESTED_A);
  const { caseC, windingC } = temperaturesAt(model, hot, ROOM_C);
  const current = touchA(model, BENCH_V, BENCH_HZ);
  const day = 'day-1';
  return {
    document: {
      format: 'mainsworthy-case/1',
      id: 'beck-5',
      product: { id: 'beck-5', name: 'Beck 5' },
      sample: 'A',
      examinedBy: 'invented examiner',
      invented: true,
      setting: { market: 'EU' },
      instruments: demoInstruments(),
      days: [demoDay('2026-03-05')],
      events: [
        { id: 'bought', at: '2026-02-20T12:30:00', what: 'purchased', note: 'invented quayside market lot' },
        { id: 'opened', at: '2026-03-05T14:00:00', what: 'opened' },
      ],
      ports: [{ id: 'usb', name: 'USB socket', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V', printed: '2 A', from: 'label' }] }],
      conductors: [
        { id: 'line', name: 'line', side: 'mains' },
        { id: 'hv-minus', name: 'bulk minus', side: 'mains' },
        { id: 'out-plus', name: 'output plus', side: 'output' },
        { id: 'out-minus', name: 'output minus', side: 'output' },
      ],
      parts: [
        { id: 't1', ref: 'T1', kind: 'transformer' },
        {
          id: 'c3',
          ref: 'C3',
          kind: 'ceramicCapacitor',
          marking: '102 1KV',
          value: '1 nF',
          measured: nanofarads(model, 'c3', model.barrierF),
          safetyClass: { state: 'absent', because: 'blue disc marked 102 1KV, no safety class and no approval mark on either face' },
          pins: [
            { pin: '1', net: 'hv-minus' },
            { pin: '2', net: 'out-minus' },
          ],
        },
      ],
      places: [
        { id: 'front', name: 'face with the socket', outside: true, material: 'plastic' },
        {
          id: 'winding',
          name: 'transformer winding',
          part: 't1',
          windingClass: { state: 'unknown', because: 'no class marked on the transformer' },
        },
      ],
      exhibits: [
        {
          id: 'label-1',
          kind: 'label',
          input: { voltage: '100-240 V', frequency: '50/60 Hz', current: { state: 'absent', because: 'no input current on the label' } },
          class: 'II',
          maker: { state: 'absent', because: 'no name or address on label or blister card' },
          bought: { where: 'invented quayside market', date: '2026-02-20', price: '2.00' },
        },
        {
          id: 'sweep-1',
          kind: 'sweep',
          day,
          at: '2026-03-05T10:05:00',
          under: { cover: 'closed', start: 'cold' },
          port: 'usb',
          level: '5v',
          order: 'up',
          dwell: '8 s',
          sense: 'socket',
          table: {
            file: 'sweep-file',
            columns: [
              { id: 'i', role: 'outputCurrent', from: 'Load' },
              { id: 'v', role: 'outputVoltage', from: 'Output' },
              { id: 'p', role: 'inputPower', from: 'Input' },
            ],
          },
          ends: 'voltage sinks until it stops and tries again',
        },
        {
          id: 'touch-isolated',
          kind: 'touch',
          day,
          at: '2026-03-05T11:00:00',
          under: { ...BENCH_MAINS, supply: 'isolating', orientation: 'A' },
          quantity: 'touchCurrentRms',
          from: 'out-minus',
          method: 'network',
          value: milliamperes(model, 'touch isolated', current * BEHIND_ISOLATION),
        },
        {
          id: 'touch-b',
          kind: 'touch',
          day,
          at: '2026-03-05T11:20:00',
          under: { ...BENCH_MAINS, orientation: 'B' },
          quantity: 'touchCurrentRms',
          from: 'out-minus',
          method: 'network',
          value: milliamperes(model, 'touch B', current),
        },
        {
          id: 'spots-1',
          kind: 'spots',
          day,
          at: '2026-03-05T12:30:00',
          under: { cover: 'closed', minutes: '60 min', loads: [{ port: 'usb', draws: `${TESTED_A.toFixed(2)} A` }] },
          rows: [
            { id: 'front', place: 'front', value: degrees(model, 'front', caseC), by: 'contact' },
            { id: 'winding', place: 'winding', value: degrees(model, 'winding', windingC), by: 'contact' },
          ],
        },
        {
          id: 'gap-board',
          kind: 'distance',
          day,
          at: '2026-03-05T14:30:00',
          from: 'hv-minus',
          to: 'out-plus',
          path: 'surface',
          method: 'caliper',
          material: 'fr1',
          value: millimetres(model, 'gap board', model.boardMm),
          where: 'board, under the transformer, no slot',
        },
        {
          id: 'gap-air',
          kind: 'distance',
          day,
          at: '2026-03-05T14:35:00',
          from: 'hv-minus',
          to: 'out-plus',
          path: 'air',
          method: 'caliper',
          value: millimetres(model, 'gap air', model.airMm),
        },
        { id: 'board-1', kind: 'board', day, fuse: 'track', rectifier: 'singleDiode', suppression: ['c3'] },
      ],
      files: [attach('sweep-file', 'load-sweep.txt', sweep, 'text/tab-separated-values')],
    },
    files: { 'load-sweep.txt': sweep },
  };
}
