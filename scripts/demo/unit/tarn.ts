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
import { bracketUnits, clockQuoted, elapsedLogger, startIncrement, utf16 } from '../file-layouts.ts';
import { coldExhibits, commonParts, eventExhibits, feet, pinsExhibit, spotsExhibit, touchExhibits } from '../full-day.ts';
import { noiseFor } from '../noise.ts';
import { tarnStack } from '../stack/tarn.ts';
import { sweepExhibit } from '../sweep-exhibit.ts';
import { TARN_BOARD } from '../traced-boards.ts';
import { tracedUnit } from '../traced-unit.ts';
import { operatingAt, reflectedV, temperaturesAt, turnsRatio, type UnitModel } from '../unit-model.ts';

/** Tarn 30: a USB-C charger of 30 W, well built. Invented. */
export const TARN: UnitModel & { boardMm: number; airMm: number } = {
  seed: 'tarn-30',
  transformer: { primaryTurns: 40, secondaryTurns: 7, inductanceH: 0.32e-3, coreAreaM2: 54e-6, peakA: 1.64 },
  frequencyHz: 100e3,
  dutyMost: 0.7,
  bulkF: 68e-6,
  inrushOhm: 5,
  refills: 2,
  outputEsrOhm: 0.006,
  stepOhm: 0.06,
  // a switched rectifier drops next to nothing
  rectifierV: 0.06,
  outputOhm: 0.025,
  idleW: 0.06,
  copperOhm: 0.035,
  primaryShare: 0.055,
  thermal: { caseKPerW: 14, windingKPerW: 9, timeConstantS: 1300 },
  barrierF: 1e-9,
  railShare: 0.71,
  boardMm: 7.94,
  airMm: 6.3,
};

const LEVELS = [
  { id: '5v', nominal: 5, claim: 3 },
  { id: '9v', nominal: 9, claim: 3 },
  { id: '15v', nominal: 15, claim: 2 },
  { id: '20v', nominal: 20, claim: 1.5 },
] as const;
const SET_HIGH = 1.012; // regulated a little above nominal, as cables like it
const OVER_CLAIM = 1.1; // swept to a tenth beyond the claim
const SWEEP_ROWS = 12;

const DATE = '2026-03-09';
const MAINS = [
  { id: '230', v: BENCH_V, hz: BENCH_HZ, text: '230.4 V' },
  { id: '264', v: 264, hz: 50, text: '264.0 V' },
  { id: '90', v: 90, hz: 60, text: '90.0 V' },
] as const;
const ACROSS_MAINS_F = 220e-9;
const BLEEDER_OHM = 1.5e6;

export function tarn(model: UnitModel & { boardMm: number; airMm: number } = TARN): DemoCase {
  const sweeps = MAINS.flatMap((mains) =>
    LEVELS.map(({ id, nominal, claim }, index) => {
      const currents = steps(0, claim * OVER_CLAIM, SWEEP_ROWS);
      const rows = sweepRows(model, nominal * SET_HIGH, `sweep ${id} ${mains.id}`, currents, mains);
      const title = `load sweep of Tarn 30 at ${mains.text}, ${nominal} V`;
      const brackets = index % 2 === 0;
      return {
        ...mains,
        level: id,
        name: `${id}-${mains.id}`,
        file: `sweep-${id}-${mains.id}.${brackets ? 'csv' : 'txt'}`,
        bytes: brackets ? text(bracketUnits(rows, title)) : utf16(clockQuoted(rows, title)),
        input: brackets ? 'Input power' : 'Power in',
      };
    }),
  );
  const last = LEVELS[3];
  const hot = operatingAt(model, last.nominal * SET_HIGH, last.claim);
  const { caseC, windingC } = temperaturesAt(model, hot, ROOM_C);
  const soak = text(elapsedLogger(['case', 'winding', 'room'], soakOf(model, caseC, windingC), 'soak of Tarn 30 at 20 V 1.5 A'));
  const capture = text(startIncrement(CAPTURE_STEP_S, captureOf(model, last.nominal), 'CH1', -CAPTURE_STEP_S * 10));
  const day = 'day-1';
  const loads = [{ port: 'usb-c', level: '20v', draws: `${last.claim.toFixed(2)} A` }];
  const soaked = { cover: 'closed' as const, minutes: '150 min', loads };
  return {
    document: {
      format: 'mainsworthy-case/1',
      id: 'tarn-30',
      product: { id: 'tarn-30', name: 'Tarn 30' },
      sample: 'A',
      examinedBy: 'invented examiner',
      invented: true,
      setting: { market: 'EU' },
      instruments: demoInstruments(),
      days: [demoDay(DATE)],
      events: [
        { id: 'bought', at: '2026-02-20T13:00:00', what: 'purchased', note: 'invented quayside market lot' },
        { id: 'opened', at: `${DATE}T12:30:00`, what: 'opened' },
        { id: 'reclosed', at: `${DATE}T13:20:00`, what: 'reclosed', note: 'thermocouples inside' },
        { id: 'opened-again', at: `${DATE}T16:30:00`, what: 'opened' },
      ],
      ports: [
        {
          id: 'usb-c',
          name: 'USB-C socket',
          kind: 'usbC',
          levels: LEVELS.map(({ id, nominal, claim }) => ({ id, voltage: `${nominal} V`, printed: `${claim} A`, from: 'label' as const })),
        },
      ],
      ...tracedUnit(TARN_BOARD, [
        ...commonParts(model, { bulkV: 400, outputV: 25, diodeA: 5, switchV: 650, rectifierV: 120 }),
        {
          id: 'f1',
          ref: 'F1',
          kind: 'fuse',
          marking: 'T2A H 250V',
          value: 'T2A H',
          rating: { current: '2 A', meltingI2t: '12 A²s' },
          pins: feet('line', 'hv-plus'),
        },
        { id: 'rt1', ref: 'RT1', kind: 'ntc', value: `${model.inrushOhm} Ω`, pins: feet('line', 'hv-plus') },
        {
          id: 'cx1',
          ref: 'CX1',
          kind: 'filmCapacitor',
          value: '220 nF',
          rating: { tolerance: '10 %' },
          safetyClass: 'X2',
          identity: 'established',
          pins: feet('line', 'neutral'),
        },
        { id: 'r1', ref: 'R1', kind: 'resistor', value: '1.5 MΩ', pins: feet('line', 'neutral') },
        {
          id: 'c9',
          ref: 'C9',
          kind: 'ceramicCapacitor',
          marking: '102M Y1 400V',
          value: '1 nF',
          measured: nanofarads(model, 'c9', model.barrierF),
          safetyClass: 'Y1',
          identity: { v: 'established', note: 'maker, series and size agree (invented)' },
          pins: feet('hv-minus', 'out-minus'),
        },
        {
          id: 'u2',
          ref: 'U2',
          kind: 'optocoupler',
          identity: { v: 'established', note: 'maker, series and creepage of its sheet agree (invented)' },
          pins: feet('out-plus', 'hv-minus'),
        },
      ]),
      places: [
        { id: 'case-side', name: 'case, side above the transformer', outside: true, material: 'plastic' },
        { id: 'winding', name: 'transformer winding', part: 't1', windingClass: 'B' },
        { id: 'bulk', name: 'bulk capacitor', part: 'c1' },
        { id: 'y-cap', name: 'capacitor across the barrier', part: 'c9' },
        { id: 'opto', name: 'optocoupler', part: 'u2' },
      ],
      exhibits: [
        {
          id: 'label-1',
          kind: 'label',
          input: { voltage: '100-240 V', frequency: '50/60 Hz', current: '0.9 A' },
          class: 'II',
          maker: 'invented maker with an invented address',
          bought: { where: 'invented quayside market', date: '2026-02-20', price: '24.00' },
        },
        {
          id: 'body-1',
          kind: 'body',
          day,
          plug: 'two flat pins in the body',
          plugSystem: 'flatTwoPin',
          mass: '92 g ± 1 g',
          centreOfMass: '22 mm ± 1 mm',
          pin: { diameter: '4.01 mm ± 0.02 mm', length: '19.0 mm ± 0.1 mm', sleeved: true },
          drops: { made: 3, failed: 0 },
          dropHeight: '1 m',
          seamOpens: false,
          livePartTouchable: false,
        },
        ...coldExhibits(model, DATE, 'line', 'out-minus'),
        {
          id: 'offers-1',
          kind: 'advertised',
          day,
          port: 'usb-c',
          by: 'trigger board',
          offers: LEVELS.map(({ id, nominal, claim }) => ({ id, voltage: `${nominal} V`, current: `${claim} A` })),
        },
        ...sweeps.map(({ name, level, input, text: volts, hz }) =>
          sweepExhibit({
            id: `sweep-${name}`,
            at: `${DATE}T10:00:00`,
            port: 'usb-c',
            level,
            sense: 'socket',
            file: `file-${name}`,
            columns: ['Current', 'Voltage', input],
            mains: { text: volts, hz },
          }),
        ),
        ...eventExhibits(
          model,
          DATE,
          { id: 'usb-c', level: '5v', setV: LEVELS[0].nominal * SET_HIGH, fullA: LEVELS[0].claim },
          { shortMinutes: 60 },
        ),
        ...touchExhibits(model, DATE, 'out-minus'),
        pinsExhibit(model, DATE, 'line', ACROSS_MAINS_F, BLEEDER_OHM),
        spotsExhibit(model, `${DATE}T16:00:00`, hot, soaked, {
          outside: 'case-side',
          winding: 'winding',
          inside: { electrolytic: 'bulk', optocoupler: 'opto', barrierCapacitor: 'y-cap' },
        }),
        {
          id: 'soak-1',
          kind: 'soak',
          day,
          at: `${DATE}T13:30:00`,
          under: soaked,
          table: {
            file: 'soak-file',
            columns: [
              { id: 'case', of: 'case-side', role: 'temperature', from: 'case' },
              { id: 'winding', of: 'winding', role: 'temperature', from: 'winding' },
            ],
          },
        },
        {
          id: 'capture-1',
          kind: 'capture',
          day,
          at: `${DATE}T17:40:00`,
          under: { loads },
          file: 'capture-file',
          channels: [{ column: 'CH1', node: 'drain', attenuation: '100' }],
        },
        {
          id: 'gap-board',
          kind: 'distance',
          day,
          at: `${DATE}T17:10:00`,
          from: 'hv-minus',
          to: 'out-plus',
          path: 'surface',
          method: 'caliper',
          material: 'fr4',
          slot: { width: '1.6 mm ± 0.1 mm' },
          value: millimetres(model, 'gap board', model.boardMm),
          where: 'board, round the slot under the transformer',
        },
        {
          id: 'gap-air',
          kind: 'distance',
          day,
          at: `${DATE}T17:15:00`,
          from: 'hv-minus',
          to: 'out-plus',
          path: 'air',
          method: 'caliper',
          value: millimetres(model, 'gap air', model.airMm),
        },
        {
          id: 'gap-mains',
          kind: 'distance',
          day,
          at: `${DATE}T17:18:00`,
          from: 'line',
          to: 'neutral',
          path: 'surface',
          method: 'caliper',
          material: 'fr4',
          slot: { state: 'absent', because: 'no slot there' },
          value: millimetres(model, 'gap mains', MAINS_GAP_MM),
          where: 'before the fuse',
        },
        tarnStack(model),
        {
          id: 'residual-1',
          kind: 'residual',
          day,
          at: `${DATE}T17:05:00`,
          across: 'c1',
          value: '3.1 V',
          after: '90 s',
          later: { value: '6.4 V', after: '150 s' },
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
          suppression: ['c9', 'cx1'],
          wiresHeld: true,
          faults: [],
        },
      ],
      files: [
        ...sweeps.map(({ name, file, bytes }) => attach(`file-${name}`, file, bytes, 'text/csv')),
        attach('soak-file', 'soak.csv', soak),
        attach('capture-file', 'capture.csv', capture, 'text/csv', { 'time-base': 's' }),
      ],
    },
    files: { ...Object.fromEntries(sweeps.map(({ file, bytes }) => [file, bytes])), 'soak.csv': soak, 'capture.csv': capture },
  };
}

const MAINS_GAP_MM = 4.2;
const SOAK_STEP_S = 60;
const SOAK_ROWS = 150;
const CAPTURE_STEP_S = 25e-9;
const CAPTURE_SAMPLES = 900;

/** Heating towards the end temperatures with the unit's time constant, one row a minute. */
function soakOf(model: UnitModel, caseC: number, windingC: number): { seconds: number; values: number[] }[] {
  const noise = noiseFor(model.seed, 'soak');
  const SCATTER_K = 0.12;
  return Array.from({ length: SOAK_ROWS }, (_, row) => {
    const seconds = row * SOAK_STEP_S;
    const share = 1 - Math.exp(-seconds / model.thermal.timeConstantS);
    const at = (end: number): number => ROOM_C + (end - ROOM_C) * share + SCATTER_K * noise.normal();
    return { seconds, values: [at(caseC), at(windingC), ROOM_C + SCATTER_K * noise.normal()] };
  });
}

/** Two cycles of the switch node: on, reflected plateau, ring about the bulk voltage. */
function captureOf(model: UnitModel, outputV: number): number[] {
  const BULK_V = 318;
  const noise = noiseFor(model.seed, 'capture');
  const plateau = BULK_V + reflectedV(model, outputV);
  const { inductanceH, peakA } = model.transformer;
  const share = 0.8; // of the current limit at this load
  const on = (inductanceH * peakA * share) / BULK_V;
  const off = (inductanceH * peakA * share) / (turnsRatio(model) * (outputV + model.rectifierV));
  const RING_HZ = 700e3;
  const RING_DECAY_S = 2e-6;
  return Array.from({ length: CAPTURE_SAMPLES }, (_, index) => {
    const t = (index * CAPTURE_STEP_S) % (1 / model.frequencyHz);
    const ring = BULK_V + (plateau - BULK_V) * Math.cos(2 * Math.PI * RING_HZ * (t - on - off)) * Math.exp(-(t - on - off) / RING_DECAY_S);
    return (t < on ? 0 : t < on + off ? plateau : ring) + 0.8 * noise.normal();
  });
}
