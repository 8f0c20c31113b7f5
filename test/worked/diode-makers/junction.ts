import type { WorkedExample } from '../worked-example.ts';

const ICE_POINT_K = 273.15;

/** T_j = T + P R_th, and the thermal resistances that data sheets print. */
export const JUNCTION: readonly WorkedExample[] = [
  {
    formula: 'thermal/junction',
    publication: 'Schoolbook',
    place: 'a lead of 90 °C, 1.0 W, 15 K/W',
    origin: 'closed-form',
    inputs: { lead: 90 + ICE_POINT_K, forward: 0.5, current: 2, resistance: 15 },
    printed: 105,
    unit: '°C',
    tolerance: 1e-9,
    because: 'a product in double precision',
  },
  {
    formula: 'thermal/runaway-leakage',
    publication: 'ST, application note AN869, greatest junction temperature of Schottky rectifiers',
    place: 'example: 15 V, half of the time, 8.5 + 1.6 K/W',
    origin: 'publication',
    inputs: { reverse: 15, share: 0.5, growth: 0.055, resistance: 10.1 },
    printed: 0.242,
    unit: 'A',
    tolerance: 0.003,
    because: 'the note rounds its growth of 0.0545 to 0.055',
  },
  {
    formula: 'thermal/runaway-temperature',
    publication: 'Schoolbook',
    place: 'leakage that grows e-fold on the way: 1/c = 20 K further',
    origin: 'closed-form',
    inputs: { known: 400, brink: Math.E, leakage: 1, growth: 0.05 },
    printed: 420,
    unit: 'K',
    tolerance: 1e-9,
    because: 'a logarithm in double precision',
  },
  {
    formula: 'thermal/rectifier-loss',
    publication: 'Schoolbook',
    place: '0.5 V at 2 A',
    origin: 'closed-form',
    inputs: { forward: 0.5, current: 2 },
    printed: 1,
    unit: 'W',
    tolerance: 1e-12,
    because: 'a product in double precision',
  },
  {
    formula: 'thermal/switched-rectifier-loss',
    publication: 'Schoolbook',
    place: 'triangles of 4 A mean over half of the time: 16 A at the top of each, r.m.s. 16 √(0.5/3) A, through 3 mΩ',
    origin: 'closed-form',
    inputs: { current: 4, share: 0.5, resistance: 0.003 },
    printed: 0.128,
    unit: 'W',
    tolerance: 1e-12,
    because: 'a square in double precision',
  },
  {
    formula: 'thermal/winding-by-resistance',
    publication: 'Schoolbook',
    place: 'copper that doubles its resistance from 25.5 °C warms by 260 K',
    origin: 'closed-form',
    inputs: { hot: 2, cold: 1, start: 25.5 + ICE_POINT_K },
    printed: 285.5,
    unit: '°C',
    tolerance: 1e-9,
    because: 'a product in double precision',
  },
  ...(
    [
      ['SMA', 28, 'TSC SK32A to SK315A data sheet'],
      ['DO-201AD', 10, 'Diodes Incorporated DS23003, 1N5820 to 1N5822'],
      ['DO-15', 30, 'PANJIT SBM345VMS data sheet'],
    ] as const
  ).map(
    ([key, printed, publication]): WorkedExample => ({
      table: 'diode-makers/2026/rectifier-package/toLead',
      publication,
      place: `thermal resistance of the ${key} package`,
      origin: 'publication',
      inputs: { key },
      printed,
      unit: '1',
      tolerance: 0,
      because: 'a printed cell is exact',
    }),
  ),
];
