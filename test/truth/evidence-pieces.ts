import type { CaseInput } from '../../src/core/evidence/case.ts';

type ExhibitInput = NonNullable<CaseInput['exhibits']>[number];
type Of<K extends ExhibitInput['kind']> = Extract<ExhibitInput, { kind: K }>;
type TouchRms = Extract<ExhibitInput, { kind: 'touch'; quantity: 'touchCurrentRms' }>;
type TouchPeak = Extract<ExhibitInput, { kind: 'touch'; quantity: 'touchCurrentPeak' }>;
export type PartInput = NonNullable<CaseInput['parts']>[number];
export type PlaceInput = NonNullable<CaseInput['places']>[number];
export type PortInput = NonNullable<CaseInput['ports']>[number];
export type InstrumentInput = NonNullable<CaseInput['instruments']>[number];
export type DayInput = NonNullable<CaseInput['days']>[number];
type LabelInput = Of<'label'>;
type DistanceInput = Of<'distance'>;

/** Conductors of an invented unit: two poles, bulk minus, the output, earth, a core that floats, and a screw nobody could place. */
export const CONDUCTORS: NonNullable<CaseInput['conductors']> = [
  { id: 'line', name: 'line', side: 'mains', beforeFuse: true },
  { id: 'neutral', name: 'neutral', side: 'mains', beforeFuse: true },
  { id: 'hv-minus', name: 'bulk minus', side: 'mains' },
  { id: 'out-plus', name: 'output plus', side: 'output' },
  { id: 'out-minus', name: 'output minus', side: 'output' },
  { id: 'shell', name: 'metal shell', side: 'touchable' },
  { id: 'earth', name: 'earth', side: 'earth' },
  { id: 'middle', name: 'middle net', side: 'floating' },
  { id: 'screw', name: 'screw', side: { state: 'unknown', because: 'its thread ends in the potting' } },
];

/** A path along a surface between bulk minus and output minus, by caliper. "± x" in the value is half of a 95 % interval: u = x / 2. */
export function gap(value: DistanceInput['value'], more: Partial<DistanceInput> = {}): DistanceInput {
  return { id: 'gap-1', kind: 'distance', from: 'hv-minus', to: 'out-minus', path: 'surface', method: 'caliper', value, ...more };
}

/** Rms working voltage of the same pair, on a direct supply at 230 V. */
export function workingVoltage(rms: Of<'workingVoltage'>['rms'], more: Partial<Of<'workingVoltage'>> = {}): Of<'workingVoltage'> {
  return {
    id: 'working-1',
    kind: 'workingVoltage',
    between: ['hv-minus', 'out-minus'],
    rms,
    under: { supply: 'direct', mains: '230 V', frequency: '50 Hz' },
    ...more,
  };
}

/** Touch current of the output minus on a direct supply, at the highest mains of the EU market so that scaling changes nothing. */
export const AT_HIGHEST_MAINS = { mains: '253 V ± 0 V', frequency: '50 Hz ± 0 Hz', supply: 'direct' } as const;
export function touch(value: TouchRms['value'], more: Partial<TouchRms> = {}): TouchRms {
  return {
    id: 'touch-a',
    kind: 'touch',
    quantity: 'touchCurrentRms',
    from: 'out-minus',
    method: 'network',
    under: { ...AT_HIGHEST_MAINS, orientation: 'A' },
    value,
    ...more,
  };
}
export function touchPeak(value: TouchPeak['value'], more: Partial<TouchPeak> = {}): TouchPeak {
  return {
    id: 'touch-peak',
    kind: 'touch',
    quantity: 'touchCurrentPeak',
    from: 'out-minus',
    method: 'network',
    under: { ...AT_HIGHEST_MAINS, orientation: 'A' },
    value,
    ...more,
  };
}

/** A capacitor (unless said otherwise) between two nets. */
export function across(id: string, from: string, to: string, more: Partial<PartInput> = {}): PartInput {
  return {
    id,
    ref: id.toUpperCase(),
    kind: 'ceramicCapacitor',
    pins: [
      { pin: '1', net: from },
      { pin: '2', net: to },
    ],
    ...more,
  };
}

export function label(more: Partial<LabelInput> = {}): LabelInput {
  return { id: 'label-1', kind: 'label', ...more };
}

export function board(more: Partial<Of<'board'>> = {}): Of<'board'> {
  return { id: 'board-1', kind: 'board', ...more };
}

export function usbPort(printed: NonNullable<PortInput['levels']>[number]['printed'] = '2 A', more: Partial<PortInput> = {}): PortInput {
  return {
    id: 'usb',
    name: 'socket',
    kind: 'usbA',
    levels: [{ id: '5v', voltage: '5 V', ...(printed === undefined ? {} : { printed }) }],
    ...more,
  };
}

/**
 * Instruments whose doubt can be done by hand: one standard uncertainty, shared by every reading of the day, and a last digit too small to
 * count.
 */
export function plainMeter(uVolt: string, more: { uAmpere?: string; uWatt?: string } = {}): InstrumentInput {
  return {
    id: 'plain',
    name: 'plain meter, invented',
    ranges: [
      { of: 'outputVoltage', resolution: '1 µV', accuracy: uVolt, basis: 'standard' },
      { of: 'outputCurrent', resolution: '1 µA', accuracy: more.uAmpere ?? '0 A', basis: 'standard' },
      { of: 'inputPower', resolution: '1 µW', accuracy: more.uWatt ?? '0 W', basis: 'standard' },
    ],
  };
}
export const PLAIN_DAY: DayInput = {
  id: 'day-1',
  date: '2026-03-05',
  uses: { outputVoltage: 'plain', outputCurrent: 'plain', inputPower: 'plain' },
  under: { mains: '230 V', frequency: '50 Hz', supply: 'direct' },
};

/** Load sweep in amperes, volts and, where given, watts. */
export function sweep(rows: readonly (readonly string[])[], more: Partial<Of<'sweep'>> = {}): Of<'sweep'> {
  const columns = [
    { id: 'i', unit: 'A', role: 'outputCurrent' },
    { id: 'v', unit: 'V', role: 'outputVoltage' },
    { id: 'p', unit: 'W', role: 'inputPower' },
  ] as const;
  return {
    id: 'sweep-1',
    kind: 'sweep',
    day: 'day-1',
    port: 'usb',
    level: '5v',
    order: 'up',
    sense: 'socket',
    table: {
      columns: columns.slice(0, rows[0]?.length ?? 2),
      rows: rows.map((cells, index) => ({ id: `r${index + 1}`, cells: [...cells] })),
    },
    ...more,
  };
}

/** Conditions under which a temperature can be compared: closed, an hour at the printed load, 25 °C exactly. */
export const WARM = {
  mains: '230 V',
  ambient: '25 °C ± 0 K',
  cover: 'closed',
  minutes: '60 min',
  loads: [{ port: 'usb', level: '5v', draws: '2 A' }],
} as const satisfies NonNullable<Of<'spots'>['under']>;

/** One temperature by contact at one place. */
export function spot(
  place: string,
  value: Of<'spots'>['rows'][number]['value'],
  more: Partial<Of<'spots'>> = {},
  id = 'spots-1',
): Of<'spots'> {
  return { id, kind: 'spots', under: { ...WARM, loads: [...WARM.loads] }, rows: [{ id: 'one', place, value, by: 'contact' }], ...more };
}
export const TRANSFORMER: PartInput = { id: 't1', ref: 'T1', kind: 'transformer' };
export function winding(windingClass: PlaceInput['windingClass']): PlaceInput {
  return { id: 'winding', name: 'winding', part: 't1', ...(windingClass === undefined ? {} : { windingClass }) };
}
export function face(material: PlaceInput['material'] = 'plastic'): PlaceInput {
  return { id: 'face', name: 'outer face', outside: true, ...(material === undefined ? {} : { material }) };
}
