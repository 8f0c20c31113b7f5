import type { Kind } from '../../src/core/quantity/unit.ts';

export interface Spelling {
  readonly text: string;
  readonly kind: Kind;
  readonly value: number;
  readonly unit: string;
  readonly u?: number;
  readonly side?: 'below' | 'above';
  /** Understood without an expectation, too. */
  readonly alone?: boolean;
}

const one = (text: string, kind: Kind, value: number, unit: string, more: Partial<Spelling> = {}): Spelling => ({
  text,
  kind,
  value,
  unit,
  ...more,
});
const alone = { alone: true } as const;

/** Spellings that a bench meets, with what they are in SI. */
export const UNDERSTOOD: readonly Spelling[] = [
  one('2.2nF', 'capacitance', 2.2e-9, 'F', alone),
  one('2n2', 'capacitance', 2.2e-9, 'F', alone),
  one('100n', 'capacitance', 1e-7, 'F'),
  one('4u7', 'capacitance', 4.7e-6, 'F', alone),
  one('4\u00b57', 'capacitance', 4.7e-6, 'F', alone),
  one('4\u03bc7', 'capacitance', 4.7e-6, 'F', alone),
  one('4m7', 'inductance', 4.7e-3, 'H'),
  one('4k7', 'resistance', 4700, 'Ω', alone),
  one('1M5', 'resistance', 1.5e6, 'Ω', alone),
  one('0R22', 'resistance', 0.22, 'Ω', alone),
  one('R22', 'resistance', 0.22, 'Ω', alone),
  one('100R', 'resistance', 100, 'Ω', alone),
  one('10K', 'resistance', 10_000, 'Ω'),
  one('100 kΩ', 'resistance', 100_000, 'Ω', alone),
  one('100 k\u2126', 'resistance', 100_000, 'Ω', alone),
  one('100kohm', 'resistance', 100_000, 'Ω', alone),
  one('100 KOhm', 'resistance', 100_000, 'Ω', alone),
  one('230V', 'voltage', 230, 'V', alone),
  one('3V3', 'voltage', 3.3, 'V', alone),
  one('1,5 kV', 'voltage', 1500, 'V', alone),
  one('0,500 kV', 'voltage', 500, 'V', alone),
  one('1 250 V', 'voltage', 1250, 'V', alone),
  one('.5 V', 'voltage', 0.5, 'V', alone),
  one('1e-3 V', 'voltage', 0.001, 'V', alone),
  one('4,9 mm', 'length', 0.0049, 'm', alone),
  one('50 000 838 nm', 'length', 0.050000838, 'm', alone),
  one('3 mil', 'length', 0.0000762, 'm', alone),
  one('0.16 mA', 'current', 0.00016, 'A', alone),
  one('5 uA', 'current', 5e-6, 'A', alone),
  one('105 °C', 'temperature', 378.15, 'K', alone),
  one('105 C', 'temperature', 378.15, 'K'),
  one('\u22125 °C', 'temperature', 268.15, 'K', alone),
  one('2 K', 'temperatureDifference', 2, 'ΔK'),
  one('65kHz', 'frequency', 65_000, 'Hz', alone),
  one('1h30', 'time', 5400, 's', alone),
  one('1 h 30 min', 'time', 5400, 's', alone),
  one('90 min', 'time', 5400, 's', alone),
  one('38 g', 'mass', 0.038, 'kg', alone),
  one('9.2 A²s', 'meltingIntegral', 9.2, 'A²s', alone),
  one('0.2 N m', 'torque', 0.2, 'N·m', alone),
  one('87 %', 'ratio', 0.87, '1', alone),
  one('4.9 mm ± 0.1 mm', 'length', 0.0049, 'm', { u: 0.00005, alone: true }),
  one('4.9 ± 0.1 mm', 'length', 0.0049, 'm', { u: 0.00005, alone: true }),
  one('(4.9 ± 0.1) mm', 'length', 0.0049, 'm', { u: 0.00005, alone: true }),
  one('4.9 mm +/- 2 %', 'length', 0.0049, 'm', { u: 0.000049, alone: true }),
  one('4.9(1) mm', 'length', 0.0049, 'm', { u: 0.0001, alone: true }),
  one('25 °C ± 2 K', 'temperature', 298.15, 'K', { u: 1, alone: true }),
  one('25(2) °C', 'temperature', 298.15, 'K', { u: 2, alone: true }),
  one('< 0.1 mm', 'length', 0.0001, 'm', { side: 'below', alone: true }),
  one('≤0.1 mm', 'length', 0.0001, 'm', { side: 'below', alone: true }),
  one('below 0.1 mm', 'length', 0.0001, 'm', { side: 'below', alone: true }),
  one('> 2 GOhm', 'resistance', 2e9, 'Ω', { side: 'above', alone: true }),
  one('above 2 GΩ', 'resistance', 2e9, 'Ω', { side: 'above', alone: true }),
];

export interface Refused {
  readonly text: string;
  readonly kind?: Kind;
  readonly code: string;
}

/** Texts that a guess would read, and what is wrong with each. */
export const REFUSED: readonly Refused[] = [
  { text: '5 mm', kind: 'voltage', code: 'wrong-dimension' },
  { text: '3V3', kind: 'resistance', code: 'unknown-unit' },
  { text: '2n2', kind: 'resistance', code: 'unknown-unit' },
  { text: '5 furlong', kind: 'length', code: 'unknown-unit' },
  { text: '5 furlong', code: 'unknown-unit' },
  { text: '5 kmm', kind: 'length', code: 'unknown-unit' },
  { text: '5 Kg', kind: 'mass', code: 'unknown-unit' },
  { text: '1,250 V', kind: 'voltage', code: 'ambiguous-comma' },
  { text: '1,500 kV', kind: 'voltage', code: 'ambiguous-comma' },
  { text: '100 V ± 1,250 mV', kind: 'voltage', code: 'ambiguous-comma' },
  { text: '105 C', code: 'ambiguous-unit' },
  { text: '5 K', code: 'ambiguous-unit' },
  { text: '10K', code: 'ambiguous-unit' },
  { text: '5', kind: 'voltage', code: 'no-unit' },
  { text: '4.9 mm ± 0.1', kind: 'length', code: 'no-unit' },
  { text: '', kind: 'voltage', code: 'empty' },
  { text: 'abc', kind: 'voltage', code: 'not-a-quantity' },
  { text: '4.9 ± 0.1 ± 0.1 mm', kind: 'length', code: 'not-a-quantity' },
  { text: '1e999 V', kind: 'voltage', code: 'not-a-number' },
  { text: '< 4.9 mm ± 0.1 mm', kind: 'length', code: 'side-and-uncertainty' },
  { text: '4.9 mm ± -0.1 mm', kind: 'length', code: 'negative' },
];
