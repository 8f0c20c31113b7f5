import type { CaseInput } from '../../src/core/evidence/case.ts';
import { displayed } from './bench-instruments.ts';
import { BENCH_HZ, BENCH_MAINS, BENCH_V, degrees, milliamperes, nanofarads, ROOM_C, readingText } from './demo-unit.ts';
import { noiseFor } from './noise.ts';
import { type Operating, operatingAt, residualV, rippleV, temperaturesAt, touchA, type UnitModel } from './unit-model.ts';

type Exhibits = NonNullable<CaseInput['exhibits']>;
export type ExhibitInput = Exhibits[number];

const DAY = 'day-1';
const PROBE_OHM = 100e6;
const HIGHEST_V = 264;
const WINDINGS_F = 35e-12; // capacitance between the windings themselves, beside the capacitor across the barrier

const volts = (
  model: UnitModel,
  name: string,
  truth: number,
  unit: { factor: number; symbol: string; digits: number } = { factor: 1, symbol: 'V', digits: 3 },
): string => {
  const scatter = 1 + 0.004 * noiseFor(model.seed, name).normal();
  return `${((truth * scatter) / unit.factor).toFixed(unit.digits)} ${unit.symbol} ± 2 %`;
};

/** Before power: what lies between the pins and the output. */
export function coldExhibits(model: UnitModel, date: string, from: string, to: string): Exhibits {
  return [
    {
      id: 'cold-c',
      kind: 'cold',
      day: DAY,
      at: `${date}T09:10:00`,
      quantity: 'capacitance',
      between: [from, to],
      value: nanofarads(model, 'cold c', model.barrierF + WINDINGS_F),
    },
    {
      id: 'cold-r',
      kind: 'cold',
      day: DAY,
      at: `${date}T09:15:00`,
      quantity: 'insulation',
      between: [from, to],
      value: '> 2 GΩ',
      testVoltage: '500 V',
    },
  ];
}

/** Under power on the public mains, both plug ways. */
export function touchExhibits(model: UnitModel, date: string, from: string, ways: readonly ('A' | 'B')[] = ['A', 'B']): Exhibits {
  const current = touchA(model, BENCH_V, BENCH_HZ);
  return ways.map((orientation, index) => ({
    id: `touch-${orientation.toLowerCase()}`,
    kind: 'touch',
    day: DAY,
    at: `${date}T11:2${index}:00`,
    under: { ...BENCH_MAINS, orientation },
    quantity: 'touchCurrentRms',
    from,
    method: 'network',
    value: milliamperes(model, `touch ${orientation}`, current),
  }));
}

/** The pins two seconds after unplugging, ten tries, the worst of them, with a probe that takes next to nothing. */
export function pinsExhibit(model: UnitModel, date: string, from: string, acrossF: number, bleederOhm: number): ExhibitInput {
  const left = residualV(Math.SQRT2 * BENCH_V, acrossF, bleederOhm, PROBE_OHM, 2);
  return {
    id: 'pins-1',
    kind: 'touch',
    day: DAY,
    at: `${date}T11:40:00`,
    under: { ...BENCH_MAINS },
    quantity: 'pinsAfterUnplugging',
    from,
    method: 'probe',
    value: readingText(
      model,
      'pins',
      left,
      { instrument: 'probe-1', role: 'residualVoltage', kind: 'voltage', step: 0.1 },
      { factor: 1, unit: 'V', digits: 1 },
    ),
    after: '2 s',
    tries: 10,
    start: `${(Math.SQRT2 * BENCH_V).toFixed(0)} V ± 4 V`,
  };
}

/** Starts, load steps, plugging in, a short, and standing idle. */
export function eventExhibits(
  model: UnitModel,
  date: string,
  port: { id: string; level: string; setV: number; fullA: number },
  more: { shortMinutes: number; startsFailed?: number },
): Exhibits {
  const at = (clock: string) => ({ day: DAY, at: `${date}T${clock}` }) as const;
  const of = { port: port.id, level: port.level } as const;
  const swing = model.stepOhm * port.fullA;
  const idle = operatingAt(model, port.setV, 0);
  const power = displayed(model.seed, 'idle power', idle.inputW, { instrument: 'power-1', role: 'inputPower', kind: 'power', step: 0.01 });
  const WANDER = 0.002; // share of the output by which it wanders with nothing connected
  const idleVolts = (name: string, wander: number): string =>
    `${(port.setV * (1 + wander) * (1 + 0.0005 * noiseFor(model.seed, name).normal())).toFixed(3)} V ± 0.01 V`;
  const event = (
    what: 'start' | 'step' | 'plugIn' | 'unplug',
    clock: string,
    made: number,
    readings: { id: string; name: 'peak' | 'trough' | 'settled'; value: string }[],
    failed = 0,
  ): ExhibitInput => ({
    id: `event-${what.toLowerCase()}`,
    kind: 'event',
    ...at(clock),
    ...of,
    what,
    tries: { made, failed },
    readings,
  });
  return [
    event(
      'start',
      '10:30:00',
      10,
      [{ id: 'peak', name: 'peak', value: volts(model, 'start peak', port.setV + swing / 3) }],
      more.startsFailed ?? 0,
    ),
    event('plugIn', '10:40:00', 10, [{ id: 'peak', name: 'peak', value: volts(model, 'plug-in peak', port.setV + swing / 4) }]),
    event('unplug', '10:45:00', 10, [{ id: 'peak', name: 'peak', value: volts(model, 'unplug peak', port.setV + swing / 4) }]),
    event('step', '10:50:00', 10, [
      { id: 'peak', name: 'peak', value: volts(model, 'step peak', port.setV + swing) },
      { id: 'trough', name: 'trough', value: volts(model, 'step trough', port.setV - model.outputOhm * port.fullA - swing) },
    ]),
    {
      id: 'event-idle',
      kind: 'event',
      ...at('10:20:00'),
      ...of,
      what: 'idle',
      tries: { made: 1, failed: 0 },
      readings: [
        { id: 'power', name: 'inputPower', value: `${power.toFixed(2)} W` },
        { id: 'settled', name: 'settled', value: idleVolts('idle', 0) },
        { id: 'peak', name: 'peak', value: idleVolts('idle peak', WANDER) },
        { id: 'trough', name: 'trough', value: idleVolts('idle trough', -WANDER) },
      ],
    },
    {
      id: 'event-short',
      kind: 'event',
      ...at('12:10:00'),
      ...of,
      what: 'short',
      tries: { made: 1, failed: 0 },
      aftermath: 'recovers',
      under: { minutes: `${more.shortMinutes} min`, cover: 'closed', loads: [{ port: port.id, draws: { state: 'short' } }] },
      readings: [{ id: 'time', name: 'seconds', value: `${more.shortMinutes} min` }],
    },
    {
      id: 'ripple-1',
      kind: 'ripple',
      ...at('10:55:00'),
      ...of,
      value: volts(model, 'ripple', rippleV(model), { factor: 1e-3, symbol: 'mV', digits: 0 }),
      bandwidth: '20 MHz',
      fixture: '0.1 µF ceramic and 10 µF electrolytic at the socket',
    },
  ];
}

/** Places inside, by how much hotter than the case they get for each watt of all loss. */
export const INSIDE_K_PER_W = { board: 3.2, electrolytic: 2.4, optocoupler: 2.9, barrierCapacitor: 2.1, switch: 6.5 } as const;
export type Inside = keyof typeof INSIDE_K_PER_W;

/** The end of a soak: case, winding and what else carried a thermocouple. */
export function spotsExhibit(
  model: UnitModel,
  at: string,
  point: Operating,
  under: NonNullable<ExhibitInput['under']>,
  places: { outside: string; winding?: string; inside?: Partial<Record<Inside, string>> },
): ExhibitInput {
  const { caseC, windingC } = temperaturesAt(model, point, ROOM_C);
  const row = (place: string, truth: number) => ({
    id: place,
    place,
    value: degrees(model, `soak ${place}`, truth),
    by: 'contact' as const,
  });
  return {
    id: 'spots-1',
    kind: 'spots',
    day: DAY,
    at,
    under,
    rows: [
      row(places.outside, caseC),
      ...(places.winding === undefined ? [] : [row(places.winding, windingC)]),
      ...Object.entries(places.inside ?? {}).map(([what, place]) => row(place, caseC + INSIDE_K_PER_W[what as Inside] * point.lossW)),
    ],
  };
}

/** What stands on the output side of every demo unit, with ratings, and the capacitors on the mains side. */
export function commonParts(
  model: UnitModel,
  ratings: { bulkV: number; bulkLife?: string; outputV: number; diodeA: number; switchV: number; rectifierV: number },
): NonNullable<CaseInput['parts']> {
  const output = [
    { pin: '1', net: 'out-plus' },
    { pin: '2', net: 'out-minus' },
  ];
  const microfarads = (value: number): string => `${Number((value * 1e6).toPrecision(3))} µF`;
  return [
    { id: 't1', ref: 'T1', kind: 'transformer' },
    {
      id: 'c1',
      ref: 'C1',
      kind: 'electrolyticCapacitor',
      value: microfarads(model.bulkF),
      measured: `${(model.bulkF * 1e6 * (0.93 + 0.02 * noiseFor(model.seed, 'c1').normal())).toFixed(1)} µF ± 2 %`,
      rating: {
        voltage: `${ratings.bulkV} V`,
        temperature: '105 °C',
        ...(ratings.bulkLife === undefined ? {} : { life: ratings.bulkLife }),
      },
      pins: [
        { pin: '1', net: 'hv-plus' },
        { pin: '2', net: 'hv-minus' },
      ],
    },
    {
      id: 'c7',
      ref: 'C7',
      kind: 'electrolyticCapacitor',
      rating: { voltage: `${ratings.outputV} V`, temperature: '105 °C' },
      pins: output,
    },
    {
      id: 'd5',
      ref: 'D5',
      kind: 'diode',
      rating: { current: `${ratings.diodeA} A`, voltage: `${ratings.rectifierV} V` },
      pins: [
        { pin: 'A', net: 'sec' },
        { pin: 'K', net: 'out-plus' },
      ],
    },
    {
      id: 'q1',
      ref: 'Q1',
      kind: 'mosfet',
      rating: { voltage: `${ratings.switchV} V` },
      pins: [
        { pin: 'D', net: 'drain' },
        { pin: 'S', net: 'hv-minus' },
      ],
    },
  ];
}

/** Two pins on two nets. */
export function feet(one: string, two: string): { pin: string; net: string }[] {
  return [
    { pin: '1', net: one },
    { pin: '2', net: two },
  ];
}

/** Conductors that every opened demo unit has. */
export const COMMON_CONDUCTORS: NonNullable<CaseInput['conductors']> = [
  { id: 'line', name: 'line', side: 'mains', beforeFuse: true },
  { id: 'neutral', name: 'neutral', side: 'mains', beforeFuse: true },
  { id: 'hv-plus', name: 'bulk plus', side: 'mains', beforeFuse: false },
  { id: 'hv-minus', name: 'bulk minus', side: 'mains', beforeFuse: false },
  { id: 'drain', name: 'switch node', side: 'mains', beforeFuse: false },
  { id: 'sec', name: 'secondary end', side: 'output' },
  { id: 'out-plus', name: 'output plus', side: 'output' },
  { id: 'out-minus', name: 'output minus', side: 'output' },
];

export const CREST_AT_HIGHEST_V = Math.SQRT2 * HIGHEST_V;
