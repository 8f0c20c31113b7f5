import { boardPicture, boardPictureExhibit } from '../board-picture.ts';
import {
  attach,
  BENCH_HZ,
  BENCH_V,
  type DemoCase,
  demoDay,
  demoInstruments,
  millimetres,
  nanofarads,
  ROOM_C,
  steps,
  sweepRows,
  text,
} from '../demo-unit.ts';
import { matrix, semicolonComma } from '../file-layouts.ts';
import { coldExhibits, commonParts, eventExhibits, feet, pinsExhibit, spotsExhibit, touchExhibits } from '../full-day.ts';
import { soakOf } from '../soak-exhibit.ts';
import { fellStack } from '../stack/fell.ts';
import { sweepExhibit } from '../sweep-exhibit.ts';
import { FELL_BOARD } from '../traced-boards.ts';
import { tracedUnit } from '../traced-unit.ts';
import { operatingAt, temperaturesAt, type UnitModel } from '../unit-model.ts';

/** Fell 12: a 12 V 2 A adapter for LED strips, hot and with short creepage. Invented. */
export const FELL: UnitModel & { boardMm: number; airMm: number } = {
  seed: 'fell-12',
  transformer: { primaryTurns: 72, secondaryTurns: 12, inductanceH: 0.55e-3, coreAreaM2: 33.5e-6, peakA: 1.165 },
  frequencyHz: 65e3,
  dutyMost: 0.45,
  bulkF: 22e-6,
  inrushOhm: 6.8,
  refills: 2,
  outputEsrOhm: 0.014,
  stepOhm: 0.16,
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

const DATE = '2026-03-04';
/** Two looks at the board after a soak: the second tells how fast each part cools, so that both are carried back to the opening. */
const PICTURES = [
  { id: 'picture-1', seconds: 20, at: '15:30:20' },
  { id: 'picture-2', seconds: 80, at: '15:31:20' },
] as const;
const MAINS = [
  { id: '230', v: BENCH_V, hz: BENCH_HZ, text: '230.4 V' },
  { id: '264', v: 264, hz: 50, text: '264.0 V' },
  { id: '115', v: 115, hz: 60, text: '115.0 V' },
  { id: '90', v: 90, hz: 60, text: '90.0 V' },
] as const;
const ACROSS_MAINS_F = 100e-9;
const BLEEDER_OHM = 2e6;

export function fell(model: UnitModel & { boardMm: number; airMm: number } = FELL): DemoCase {
  const currents = [0, ...steps(0.25, 1.5, 6), ...steps(1.6, 2.1, 11)];
  const sweeps = MAINS.map((mains) => ({
    ...mains,
    bytes: text(semicolonComma(sweepRows(model, SET_V, `sweep ${mains.id}`, currents, mains), `load sweep of Fell 12 at ${mains.text}`)),
  }));
  const hot = operatingAt(model, SET_V, TESTED_A);
  const pictures = PICTURES.map(({ id, seconds }) => ({
    id,
    bytes: text(matrix(boardPicture(model, temperaturesAt(model, hot, ROOM_C), seconds))),
  }));
  const soaked = { cover: 'closed' as const, minutes: '120 min', loads: [{ port: 'out-1', draws: `${TESTED_A.toFixed(2)} A` }] };
  const day = 'day-1';
  const soak = soakOf(model, { id: 'soak-1', at: `${DATE}T13:10:00`, under: soaked, point: hot, outside: 'case-top', winding: 'winding' });
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
      days: [demoDay(DATE)],
      events: [
        { id: 'bought', at: '2026-02-20T12:00:00', what: 'purchased', note: 'invented quayside market lot' },
        { id: 'opened', at: `${DATE}T12:30:00`, what: 'opened' },
        { id: 'reclosed', at: `${DATE}T13:10:00`, what: 'reclosed', note: 'thermocouples inside' },
        { id: 'opened-again', at: `${DATE}T15:30:00`, what: 'opened' },
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
      ...tracedUnit(FELL_BOARD, [
        ...commonParts(model, { bulkV: 400, bulkLife: '2000 h', outputV: 16, diodeA: 3, switchV: 650, rectifierV: 100 }),
        { id: 'f1', ref: 'F1', kind: 'fuse', marking: 'T1A 250V', value: 'T1A', rating: { current: '1 A' }, pins: feet('line', 'hv-plus') },
        { id: 'rt1', ref: 'RT1', kind: 'ntc', value: `${model.inrushOhm} Ω`, pins: feet('line', 'hv-plus') },
        {
          id: 'cx1',
          ref: 'CX1',
          kind: 'filmCapacitor',
          value: '100 nF',
          rating: { tolerance: '10 %' },
          safetyClass: 'X2',
          identity: 'established',
          pins: feet('line', 'neutral'),
        },
        { id: 'r1', ref: 'R1', kind: 'resistor', value: '2 MΩ', pins: feet('line', 'neutral') },
        {
          id: 'c5',
          ref: 'C5',
          kind: 'ceramicCapacitor',
          value: '2.2 nF',
          measured: nanofarads(model, 'c5', model.barrierF),
          safetyClass: 'Y1',
          identity: { v: 'established', note: 'maker, series and size agree (invented)' },
          pins: feet('hv-minus', 'out-minus'),
        },
      ]),
      places: [
        { id: 'case-top', name: 'case, above the transformer', outside: true, material: 'plastic' },
        { id: 'winding', name: 'transformer winding', part: 't1', windingClass: 'B', surface: 'tapeVinyl' },
        { id: 'bulk', name: 'bulk capacitor', part: 'c1', surface: 'sleeve' },
        { id: 'y-cap', name: 'capacitor across the barrier', part: 'c5' },
        { id: 'rectifier', name: 'output rectifier', part: 'd5', surface: 'epoxy' },
        { id: 'core-tape', name: 'tape over the core', substance: 'polyesterTape', surface: 'tapeVinyl' },
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
          id: 'body-1',
          kind: 'body',
          day,
          plug: 'two flat pins in the body',
          plugSystem: 'flatTwoPin',
          mass: '86 g ± 1 g',
          centreOfMass: '21 mm ± 1 mm',
          pin: { diameter: '3.98 mm ± 0.03 mm', length: '19.0 mm ± 0.1 mm', sleeved: true },
          drops: { made: 3, failed: 0 },
          dropHeight: '1 m',
          seamOpens: false,
          livePartTouchable: false,
        },
        ...coldExhibits(model, DATE, 'line', 'out-minus'),
        ...sweeps.map(({ id, text: volts, hz }) =>
          sweepExhibit({
            id: `sweep-${id}`,
            at: `${DATE}T10:05:00`,
            port: 'out-1',
            level: '12v',
            sense: 'cableEnd',
            file: `sweep-file-${id}`,
            columns: ['I out', 'U out', 'P in'],
            mains: { text: volts, hz },
            ends: 'voltage gives way at constant power, then stops and tries again',
          }),
        ),
        ...eventExhibits(model, DATE, { id: 'out-1', level: '12v', setV: SET_V, fullA: TESTED_A }, { shortMinutes: 60 }),
        ...touchExhibits(model, DATE, 'out-minus'),
        pinsExhibit(model, DATE, 'line', ACROSS_MAINS_F, BLEEDER_OHM),
        spotsExhibit(model, `${DATE}T15:10:00`, hot, soaked, {
          outside: 'case-top',
          winding: 'winding',
          inside: { electrolytic: 'bulk', barrierCapacitor: 'y-cap' },
        }),
        soak.exhibit,
        ...PICTURES.map(({ id, seconds, at }) =>
          boardPictureExhibit(id, `${DATE}T${at}`, { ...soaked, cover: { openedBefore: `${seconds} s` } }),
        ),
        {
          id: 'gap-board',
          kind: 'distance',
          day,
          at: `${DATE}T15:40:00`,
          from: 'hv-minus',
          to: 'out-plus',
          path: 'surface',
          method: 'caliper',
          material: 'fr2',
          slot: { state: 'absent', because: 'no slot under the transformer' },
          coating: 'solderMask',
          value: millimetres(model, 'gap board', model.boardMm),
          where: 'board, between transformer pin 4 and the output track',
        },
        {
          id: 'gap-air',
          kind: 'distance',
          day,
          at: `${DATE}T15:45:00`,
          from: 'hv-minus',
          to: 'out-plus',
          path: 'air',
          method: 'caliper',
          value: millimetres(model, 'gap air', model.airMm),
        },
        fellStack(model),
        {
          id: 'residual-1',
          kind: 'residual',
          day,
          at: `${DATE}T16:20:00`,
          across: 'c1',
          value: '4.8 V',
          after: '60 s',
          later: { value: '9.7 V', after: '120 s' },
        },
        {
          id: 'board-1',
          kind: 'board',
          day,
          fuse: 'cartridge',
          fusePart: 'f1',
          rectifier: 'bridge',
          inrush: 'rt1',
          bleeders: ['r1'],
          suppression: ['c5', 'cx1'],
          wiresHeld: true,
          faults: [],
        },
      ],
      files: [
        ...sweeps.map(({ id, bytes }) => attach(`sweep-file-${id}`, `load-sweep-${id}.csv`, bytes)),
        ...pictures.map(({ id, bytes }) => attach(`${id}-file`, `${id}.csv`, bytes, 'text/csv', { unit: '°C' })),
        ...soak.files.map(({ attachment }) => attachment),
      ],
      computed: [soak.computed],
    },
    files: {
      ...Object.fromEntries(sweeps.map(({ id, bytes }) => [`load-sweep-${id}.csv`, bytes])),
      ...Object.fromEntries(pictures.map(({ id, bytes }) => [`${id}.csv`, bytes])),
      ...Object.fromEntries(soak.files.map(({ attachment, bytes }) => [attachment.path, bytes])),
    },
  };
}
