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
import { matrix, semicolonComma } from '../file-layouts.ts';
import { operatingAt, temperaturesAt, touchA, type UnitModel } from '../unit-model.ts';

/** Fell 12: a 12 V 2 A adapter for LED strips, hot and with short creepage. Invented. */
export const FELL: UnitModel & { boardMm: number; airMm: number } = {
  seed: 'fell-12',
  transformer: { primaryTurns: 72, secondaryTurns: 12, inductanceH: 0.55e-3, coreAreaM2: 33.5e-6, peakA: 1.165 },
  frequencyHz: 65e3,
  rectifierV: 0.62,
  outputOhm: 0.2,
  idleW: 0.31,
  copperOhm: 0.19,
  primaryShare: 0.09,
  thermal: { caseKPerW: 14.2, windingKPerW: 7.9, timeConstantS: 1500 },
  barrierF: 2.2e-9,
  railShare: 0.71,
  boardMm: 3.12,
  airMm: 3.03,
};

const SET_V = 12.2;
const TESTED_A = 1.7;

export function fell(model: UnitModel & { boardMm: number; airMm: number } = FELL): DemoCase {
  const currents = [0, ...steps(0.25, 1.5, 6), ...steps(1.6, 2.1, 11)];
  const sweep = text(semicolonComma(sweepRows(model, SET_V, 'sweep', currents), 'load sweep of Fell 12 at 230 V'));
  const hot = operatingAt(model, SET_V, TESTED_A);
  const { caseC, windingC } = temperaturesAt(model, hot, ROOM_C);
  const picture = text(matrix(hillOf(caseC)));
  const current = touchA(model, BENCH_V, BENCH_HZ);
  const at = { day: 'day-1', at: '2026-03-04T11:20:00' };
  const soaked = { cover: 'closed' as const, minutes: '120 min', loads: [{ port: 'out-1', draws: `${TESTED_A.toFixed(2)} A` }] };
  return {
    document: {
      format: 'mainsworthy-case/1',
      id: 'fell-12',
      product: { id: 'fell-12', name: 'Fell 12' },
      sample: 'A',
      examinedBy: 'invented examiner',
      invented: true,
      setting: { market: 'EU' },
      instruments: demoInstruments(),
      days: [demoDay('2026-03-04')],
      events: [
        { id: 'bought', at: '2026-02-20T12:00:00', what: 'purchased', note: 'invented quayside market lot' },
        { id: 'opened', at: '2026-03-04T15:00:00', what: 'opened' },
      ],
      ports: [
        {
          id: 'out-1',
          name: 'Output',
          kind: 'barrel',
          captive: { length: '1.2 m' },
          levels: [{ id: '12v', voltage: '12 V', printed: '2 A', from: 'label' }],
        },
      ],
      conductors: [
        { id: 'line', name: 'line', side: 'mains' },
        { id: 'neutral', name: 'neutral', side: 'mains' },
        { id: 'hv-minus', name: 'bulk minus', side: 'mains' },
        { id: 'out-plus', name: 'output plus', side: 'output' },
        { id: 'out-minus', name: 'output minus', side: 'output' },
      ],
      parts: [
        { id: 't1', ref: 'T1', kind: 'transformer' },
        { id: 'f1', ref: 'F1', kind: 'fuse', value: 'T1A' },
        {
          id: 'c5',
          ref: 'C5',
          kind: 'ceramicCapacitor',
          value: '2.2 nF',
          measured: nanofarads(model, 'c5', model.barrierF),
          safetyClass: 'Y1',
          identity: { v: 'established', note: 'maker, series and size agree (invented)' },
          pins: [
            { pin: '1', net: 'hv-minus' },
            { pin: '2', net: 'out-minus' },
          ],
        },
      ],
      places: [
        { id: 'case-top', name: 'case, above the transformer', outside: true, material: 'plastic' },
        { id: 'winding', name: 'transformer winding', part: 't1', windingClass: 'B' },
      ],
      exhibits: [
        {
          id: 'label-1',
          kind: 'label',
          input: { voltage: '100-240 V', frequency: '50/60 Hz', current: '0.6 A' },
          class: 'II',
          maker: { state: 'absent', because: 'no name or address on label, box or leaflet' },
          bought: { where: 'invented quayside market', date: '2026-02-20', price: '6.50' },
        },
        {
          id: 'sweep-1',
          kind: 'sweep',
          day: 'day-1',
          at: '2026-03-04T10:05:00',
          under: { cover: 'closed', start: 'cold' },
          port: 'out-1',
          level: '12v',
          order: 'up',
          dwell: '8 s',
          sense: 'cableEnd',
          table: {
            file: 'sweep-file',
            columns: [
              { id: 'i', role: 'outputCurrent', from: 'I out' },
              { id: 'v', role: 'outputVoltage', from: 'U out' },
              { id: 'p', role: 'inputPower', from: 'P in' },
            ],
          },
          ends: 'voltage gives way at constant power, then stops and tries again',
        },
        {
          id: 'touch-a',
          kind: 'touch',
          ...at,
          under: { ...BENCH_MAINS, orientation: 'A' },
          quantity: 'touchCurrentRms',
          from: 'out-minus',
          method: 'network',
          value: milliamperes(model, 'touch A', current),
        },
        {
          id: 'touch-b',
          kind: 'touch',
          ...at,
          under: { ...BENCH_MAINS, orientation: 'B' },
          quantity: 'touchCurrentRms',
          from: 'out-minus',
          method: 'network',
          value: milliamperes(model, 'touch B', current),
        },
        {
          id: 'spots-1',
          kind: 'spots',
          ...at,
          at: '2026-03-04T13:30:00',
          under: soaked,
          rows: [
            { id: 'case', place: 'case-top', value: degrees(model, 'case', caseC), by: 'contact' },
            { id: 'winding', place: 'winding', value: degrees(model, 'winding', windingC), by: 'contact' },
          ],
        },
        {
          id: 'picture-1',
          kind: 'thermalPicture',
          ...at,
          at: '2026-03-04T13:35:00',
          under: soaked,
          file: 'picture-file',
          scale: { unit: '°C' },
          regions: [],
        },
        {
          id: 'gap-board',
          kind: 'distance',
          day: 'day-1',
          at: '2026-03-04T15:40:00',
          from: 'hv-minus',
          to: 'out-plus',
          path: 'surface',
          method: 'caliper',
          material: 'fr2',
          value: millimetres(model, 'gap board', model.boardMm),
          where: 'board, between transformer pin 4 and the output track',
        },
        {
          id: 'gap-air',
          kind: 'distance',
          day: 'day-1',
          at: '2026-03-04T15:45:00',
          from: 'hv-minus',
          to: 'out-plus',
          path: 'air',
          method: 'caliper',
          value: millimetres(model, 'gap air', model.airMm),
        },
        { id: 'board-1', kind: 'board', day: 'day-1', fuse: 'cartridge', fusePart: 'f1', rectifier: 'bridge', suppression: ['c5'] },
      ],
      files: [attach('sweep-file', 'load-sweep.csv', sweep), attach('picture-file', 'picture.csv', picture, 'text/csv', { unit: '°C' })],
    },
    files: { 'load-sweep.csv': sweep, 'picture.csv': picture },
  };
}

const WIDE = 24;
const HIGH = 18;

/** A thermal picture of the case: a hill above the transformer that falls off towards the edges. */
function hillOf(peakC: number): number[][] {
  return Array.from({ length: HIGH }, (_, y) =>
    Array.from({ length: WIDE }, (_unused, x) => {
      const dx = (x - WIDE / 2) / (WIDE / 2);
      const dy = (y - HIGH / 2) / (HIGH / 2);
      return ROOM_C + (peakC - ROOM_C) * Math.exp(-1.4 * (dx * dx + dy * dy));
    }),
  );
}
