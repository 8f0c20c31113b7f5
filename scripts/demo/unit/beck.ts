import {
  attach,
  BENCH_HZ,
  BENCH_MAINS,
  BENCH_V,
  type DemoCase,
  demoDay,
  demoInstruments,
  milliamperes,
  millimetres,
  nanofarads,
  steps,
  sweepRows,
  text,
} from '../demo-unit.ts';
import { unitRowTabs } from '../file-layouts.ts';
import { coldExhibits, commonParts, eventExhibits, feet, spotsExhibit, touchExhibits } from '../full-day.ts';
import { beckStack } from '../stack/beck.ts';
import { sweepExhibit } from '../sweep-exhibit.ts';
import { BECK_BOARD } from '../traced-boards.ts';
import { tracedUnit } from '../traced-unit.ts';
import { operatingAt, touchA, type UnitModel } from '../unit-model.ts';

/** Beck 5: a 5 V 2 A cube whose barrier is defeated: too short a way on the board and an ordinary ceramic across it. Invented. */
export const BECK: UnitModel & { boardMm: number; airMm: number } = {
  seed: 'beck-5',
  transformer: { primaryTurns: 110, secondaryTurns: 9, inductanceH: 1.5e-3, coreAreaM2: 17.1e-6, peakA: 0.345 },
  frequencyHz: 85e3,
  dutyMost: 0.5,
  bulkF: 4.7e-6,
  inrushOhm: 10,
  refills: 1,
  outputEsrOhm: 0.09,
  stepOhm: 0.35,
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

const DATE = '2026-03-05';
const MAINS = [
  { id: '230', v: BENCH_V, hz: BENCH_HZ, text: '230.4 V' },
  { id: '115', v: 115, hz: 60, text: '115.0 V' },
] as const;

export function beck(model: UnitModel & { boardMm: number; airMm: number } = BECK): DemoCase {
  const sweeps = MAINS.map((mains) => ({
    ...mains,
    bytes: text(unitRowTabs(sweepRows(model, SET_V, `sweep ${mains.id}`, steps(0, 2, 21), mains), `load sweep of Beck 5 at ${mains.text}`)),
  }));
  const hot = operatingAt(model, SET_V, TESTED_A);
  const current = touchA(model, BENCH_V, BENCH_HZ);
  const day = 'day-1';
  const soaked = { cover: 'closed' as const, minutes: '60 min', loads: [{ port: 'usb', draws: `${TESTED_A.toFixed(2)} A` }] };
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
      days: [demoDay(DATE)],
      events: [
        { id: 'bought', at: '2026-02-20T12:30:00', what: 'purchased', note: 'invented quayside market lot' },
        { id: 'opened', at: `${DATE}T12:00:00`, what: 'opened' },
        { id: 'reclosed', at: `${DATE}T12:20:00`, what: 'reclosed', note: 'thermocouple on the transformer' },
        { id: 'opened-again', at: `${DATE}T14:00:00`, what: 'opened' },
      ],
      ports: [{ id: 'usb', name: 'USB socket', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V', printed: '2 A', from: 'label' }] }],
      ...tracedUnit(BECK_BOARD, [
        ...commonParts(model, { bulkV: 400, outputV: 10, diodeA: 2, switchV: 600, rectifierV: 40 }),
        {
          id: 'c3',
          ref: 'C3',
          kind: 'ceramicCapacitor',
          marking: '102 1KV',
          value: '1 nF',
          measured: nanofarads(model, 'c3', model.barrierF),
          safetyClass: { state: 'absent', because: 'blue disc marked 102 1KV, no safety class and no approval mark on either face' },
          pins: feet('hv-minus', 'out-minus'),
        },
      ]),
      places: [
        { id: 'front', name: 'face with the socket', outside: true, material: 'plastic' },
        {
          id: 'winding',
          name: 'transformer winding',
          part: 't1',
          windingClass: { state: 'unknown', because: 'no class marked on the transformer' },
        },
        { id: 'bulk', name: 'bulk capacitor', part: 'c1' },
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
          id: 'body-1',
          kind: 'body',
          day,
          plug: 'two flat pins in the body',
          plugSystem: 'flatTwoPin',
          mass: '31 g ± 1 g',
          centreOfMass: '17 mm ± 1 mm',
          pin: {
            diameter: '3.71 mm ± 0.03 mm',
            length: '18.6 mm ± 0.1 mm',
            sleeved: { state: 'absent', because: 'bare metal down to the face' },
          },
          drops: { made: 3, failed: 1, each: [{ id: 'third', outcome: 'halves came apart, board hung out on its wires' }] },
          dropHeight: '1 m',
          seamOpens: true,
          senses: [{ id: 'smell', kind: 'smell', minute: '12 min', text: 'faint, like warm varnish' }],
        },
        ...coldExhibits(model, DATE, 'line', 'out-minus'),
        ...sweeps.map(({ id, text: volts, hz }) =>
          sweepExhibit({
            id: `sweep-${id}`,
            at: `${DATE}T10:05:00`,
            port: 'usb',
            level: '5v',
            sense: 'socket',
            file: `sweep-file-${id}`,
            columns: ['Load', 'Output', 'Input'],
            mains: { text: volts, hz },
            ends: 'voltage sinks until it stops and tries again',
          }),
        ),
        ...eventExhibits(model, DATE, { id: 'usb', level: '5v', setV: SET_V, fullA: TESTED_A }, { shortMinutes: 10, startsFailed: 1 }),
        {
          id: 'touch-isolated',
          kind: 'touch',
          day,
          at: `${DATE}T11:00:00`,
          under: { ...BENCH_MAINS, supply: 'isolating', orientation: 'A' },
          quantity: 'touchCurrentRms',
          from: 'out-minus',
          method: 'network',
          value: milliamperes(model, 'touch isolated', current * BEHIND_ISOLATION),
        },
        ...touchExhibits(model, DATE, 'out-minus', ['B']),
        spotsExhibit(model, `${DATE}T13:40:00`, hot, soaked, { outside: 'front', winding: 'winding', inside: { electrolytic: 'bulk' } }),
        {
          id: 'gap-board',
          kind: 'distance',
          day,
          at: `${DATE}T14:30:00`,
          from: 'hv-minus',
          to: 'out-plus',
          path: 'surface',
          method: 'caliper',
          material: 'fr1',
          slot: { state: 'absent', because: 'no slot' },
          value: millimetres(model, 'gap board', model.boardMm),
          where: 'board, under the transformer, no slot',
        },
        {
          id: 'gap-air',
          kind: 'distance',
          day,
          at: `${DATE}T14:35:00`,
          from: 'hv-minus',
          to: 'out-plus',
          path: 'air',
          method: 'caliper',
          value: millimetres(model, 'gap air', model.airMm),
        },
        beckStack(model),
        {
          id: 'residual-1',
          kind: 'residual',
          day,
          at: `${DATE}T14:20:00`,
          across: 'c1',
          value: '212.4 V',
          after: '12 s',
          later: { value: '2.2 V', after: '95 s' },
        },
        {
          id: 'board-1',
          kind: 'board',
          day,
          fuse: 'track',
          track: { width: '0.4 mm' },
          rectifier: 'singleDiode',
          inrush: { state: 'absent', because: 'nothing between track and diode' },
          bleeders: { state: 'absent', because: 'no resistor across the pins' },
          suppression: ['c3'],
          wiresHeld: false,
        },
      ],
      files: sweeps.map(({ id, bytes }) => attach(`sweep-file-${id}`, `load-sweep-${id}.txt`, bytes, 'text/tab-separated-values')),
    },
    files: Object.fromEntries(sweeps.map(({ id, bytes }) => [`load-sweep-${id}.txt`, bytes])),
  };
}
