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
import { bracketUnits, clockQuoted, elapsedLogger, startIncrement, utf16 } from '../file-layouts.ts';
import { noiseFor } from '../noise.ts';
import { operatingAt, reflectedV, temperaturesAt, touchA, turnsRatio, type UnitModel } from '../unit-model.ts';

/** Tarn 30: a USB-C charger of 30 W, well built. Invented. */
export const TARN: UnitModel & { boardMm: number; airMm: number } = {
  seed: 'tarn-30',
  transformer: { primaryTurns: 40, secondaryTurns: 7, inductanceH: 0.32e-3, coreAreaM2: 54e-6, peakA: 1.64 },
  frequencyHz: 100e3,
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

export function tarn(model: UnitModel & { boardMm: number; airMm: number } = TARN): DemoCase {
  const sweeps = LEVELS.map(({ id, nominal, claim }, index) => {
    const rows = sweepRows(model, nominal * SET_HIGH, `sweep ${id}`, steps(0, claim * OVER_CLAIM, SWEEP_ROWS));
    const title = `load sweep of Tarn 30 at 230 V, ${nominal} V`;
    return index % 2 === 0
      ? { id, bytes: text(bracketUnits(rows, title)), file: `sweep-${id}.csv`, layout: 'brackets' as const }
      : { id, bytes: utf16(clockQuoted(rows, title)), file: `sweep-${id}.txt`, layout: 'clock' as const };
  });
  const last = LEVELS[3];
  const hot = operatingAt(model, last.nominal * SET_HIGH, last.claim);
  const { caseC, windingC } = temperaturesAt(model, hot, ROOM_C);
  const soak = text(elapsedLogger(['case', 'winding', 'room'], soakOf(model, caseC, windingC), 'soak of Tarn 30 at 20 V 1.5 A'));
  const capture = text(startIncrement(CAPTURE_STEP_S, captureOf(model, last.nominal), 'CH1', -CAPTURE_STEP_S * 10));
  const current = touchA(model, BENCH_V, BENCH_HZ);
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
      days: [demoDay('2026-03-09')],
      events: [
        { id: 'bought', at: '2026-02-20T13:00:00', what: 'purchased', note: 'invented quayside market lot' },
        { id: 'opened', at: '2026-03-09T17:00:00', what: 'opened' },
      ],
      ports: [
        {
          id: 'usb-c',
          name: 'USB-C socket',
          kind: 'usbC',
          levels: LEVELS.map(({ id, nominal, claim }) => ({ id, voltage: `${nominal} V`, printed: `${claim} A`, from: 'label' as const })),
        },
      ],
      conductors: [
        { id: 'line', name: 'line', side: 'mains', beforeFuse: true },
        { id: 'neutral', name: 'neutral', side: 'mains', beforeFuse: true },
        { id: 'hv-minus', name: 'bulk minus', side: 'mains' },
        { id: 'drain', name: 'switch node', side: 'mains' },
        { id: 'out-plus', name: 'output plus', side: 'output' },
        { id: 'out-minus', name: 'output minus', side: 'output' },
      ],
      parts: [
        { id: 't1', ref: 'T1', kind: 'transformer' },
        { id: 'f1', ref: 'F1', kind: 'fuse', value: 'T2A H 250V' },
        {
          id: 'c9',
          ref: 'C9',
          kind: 'ceramicCapacitor',
          marking: '102M Y1 400V',
          value: '1 nF',
          measured: nanofarads(model, 'c9', model.barrierF),
          safetyClass: 'Y1',
          identity: { v: 'established', note: 'maker, series and size agree (invented)' },
          pins: [
            { pin: '1', net: 'hv-minus' },
            { pin: '2', net: 'out-minus' },
          ],
        },
      ],
      places: [
        { id: 'case-side', name: 'case, side above the transformer', outside: true, material: 'plastic' },
        { id: 'winding', name: 'transformer winding', part: 't1', windingClass: 'B' },
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
          id: 'offers-1',
          kind: 'advertised',
          day,
          port: 'usb-c',
          by: 'trigger board',
          offers: LEVELS.map(({ id, nominal, claim }) => ({ id, voltage: `${nominal} V`, current: `${claim} A` })),
        },
        ...sweeps.map(({ id, layout }) => ({
          id: `sweep-${id}`,
          kind: 'sweep' as const,
          day,
          at: '2026-03-09T10:00:00',
          under: { cover: 'closed' as const, start: 'cold' as const },
          port: 'usb-c',
          level: id,
          order: 'up' as const,
          dwell: '8 s',
          sense: 'socket' as const,
          table: {
            file: `file-${id}`,
            columns:
              layout === 'brackets'
                ? [
                    { id: 'i', role: 'outputCurrent' as const, from: 'Current' },
                    { id: 'v', role: 'outputVoltage' as const, from: 'Voltage' },
                    { id: 'p', role: 'inputPower' as const, from: 'Input power' },
                  ]
                : [
                    { id: 'i', role: 'outputCurrent' as const, from: 'Current' },
                    { id: 'v', role: 'outputVoltage' as const, from: 'Voltage' },
                    { id: 'p', role: 'inputPower' as const, from: 'Power in' },
                  ],
          },
        })),
        ...(['A', 'B'] as const).map((orientation) => ({
          id: `touch-${orientation.toLowerCase()}`,
          kind: 'touch' as const,
          day,
          at: '2026-03-09T11:30:00',
          under: { ...BENCH_MAINS, orientation },
          quantity: 'touchCurrentRms' as const,
          from: 'out-minus',
          method: 'network' as const,
          value: milliamperes(model, `touch ${orientation}`, current),
        })),
        {
          id: 'spots-1',
          kind: 'spots',
          day,
          at: '2026-03-09T16:00:00',
          under: soaked,
          rows: [
            { id: 'case', place: 'case-side', value: degrees(model, 'case', caseC), by: 'contact' },
            { id: 'winding', place: 'winding', value: degrees(model, 'winding', windingC), by: 'contact' },
          ],
        },
        {
          id: 'soak-1',
          kind: 'soak',
          day,
          at: '2026-03-09T13:30:00',
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
          at: '2026-03-09T17:40:00',
          under: { loads },
          file: 'capture-file',
          channels: [{ column: 'CH1', node: 'drain', attenuation: '100' }],
        },
        {
          id: 'gap-board',
          kind: 'distance',
          day,
          at: '2026-03-09T17:10:00',
          from: 'hv-minus',
          to: 'out-plus',
          path: 'surface',
          method: 'caliper',
          material: 'fr4',
          value: millimetres(model, 'gap board', model.boardMm),
          where: 'board, round the slot under the transformer',
        },
        {
          id: 'gap-air',
          kind: 'distance',
          day,
          at: '2026-03-09T17:15:00',
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
          at: '2026-03-09T17:18:00',
          from: 'line',
          to: 'neutral',
          path: 'surface',
          method: 'caliper',
          material: 'fr4',
          value: millimetres(model, 'gap mains', MAINS_GAP_MM),
          where: 'before the fuse',
        },
        { id: 'board-1', kind: 'board', day, fuse: 'cartridge', fusePart: 'f1', rectifier: 'bridge', suppression: ['c9'] },
      ],
      files: [
        ...sweeps.map(({ id, file, bytes }) => attach(`file-${id}`, file, bytes, 'text/csv')),
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
