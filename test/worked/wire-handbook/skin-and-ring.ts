import { HALF_OF_LAST_DIGIT, type WorkedExample } from '../worked-example.ts';

const BOOK = {
  publication: 'McLyman, Transformer and Inductor Design Handbook',
  edition: 'third edition, chapter 4',
  origin: 'publication',
} as const;
const CONSTANT = 'the book rounds its constant to 6.62, a sixth of a percent above 1.7241e-8 Ωm';
const AT_20_C = 293.15;

const depth = (frequency: number, printed: number): WorkedExample => ({
  ...BOOK,
  place: `skin depth at ${frequency / 1000} kHz, 20 °C`,
  formula: 'magnetics/skin-depth',
  inputs: { temperature: AT_20_C, frequency },
  printed,
  unit: 'mm',
  tolerance: 0.003 * printed,
  because: CONSTANT,
});

const ring = (gauge: number, diameter: number, depthMm: number, kilohertz: number, printed: number): WorkedExample => ({
  ...BOOK,
  place: `table 4-13: gauge ${gauge} at ${kilohertz} kHz`,
  formula: 'magnetics/ring-factor',
  inputs: { diameter: diameter / 1000, depth: depthMm / 1000 },
  printed,
  unit: '1',
  tolerance: 0.001,
  because: 'the skin depth that goes in is rounded',
});

/** Skin depth, a lone wire at a frequency, and the resistance of a wire. */
export const SKIN_AND_RING: readonly WorkedExample[] = [
  depth(25e3, 0.41868),
  depth(50e3, 0.29606),
  depth(100e3, 0.20934),
  depth(200e3, 0.14802),
  {
    publication: 'Ferroxcube, Design of planar power transformers',
    place: 'skin depth of 2230 µm over the root of kilohertz, 60 °C',
    origin: 'publication',
    formula: 'magnetics/skin-depth',
    inputs: { temperature: 333.15, frequency: 100e3 },
    printed: 0.223,
    unit: 'mm',
    tolerance: 0.002,
    because: 'another resistivity at 60 °C, within one percent',
  },
  {
    ...BOOK,
    place: 'largest wire at 100 kHz: twice the skin depth, 0.0418 cm',
    formula: 'magnetics/skin-depth',
    inputs: { temperature: AT_20_C, frequency: 100e3 },
    printed: 0.418,
    unit: 'mm',
    tolerance: 0.003 * 0.418,
    because: CONSTANT,
    states: (own) => 2 * own,
  },
  {
    ...BOOK,
    place: 'window utilization of gauge 20 on a lamination: 0.855, 0.61, 0.75 and 1',
    formula: 'magnetics/fill-to-expect',
    inputs: { bare: 0.855, laid: 0.61, usable: 0.75, untaped: 1 },
    printed: 0.391,
    unit: '1',
    tolerance: 0.0005,
    because: HALF_OF_LAST_DIGIT,
  },
  {
    publication: 'IEC 60317-0-1',
    place: 'nominal resistance of a metre of 0.100 mm wire at 58.5 MS/m, from memory',
    origin: 'standard',
    formula: 'magnetics/copper-resistance',
    inputs: { turns: 1, meanTurn: 1, strands: 1, diameter: 0.1e-3, temperature: AT_20_C },
    printed: 2.176,
    unit: 'Ω',
    tolerance: 0.01 * 2.176,
    because: 'winding wire is reckoned at 58.5 MS/m there, 0.9 % above the copper standard of 58.0 that is used here',
  },
  ring(12, 2.0309, 0.41868, 25, 1.527),
  ring(22, 0.6422, 0.14802, 200, 1.41),
  {
    ...BOOK,
    place: 'table 4-9: gauge 26, 1345 µΩ for each centimetre at 20 °C',
    formula: 'magnetics/copper-resistance',
    inputs: { turns: 1, meanTurn: 0.01, strands: 1, diameter: 0.4052e-3, temperature: AT_20_C },
    printed: 0.001345,
    unit: 'Ω',
    tolerance: 0.01 * 0.001345,
    because: 'the diameter of the table is rounded',
  },
];
