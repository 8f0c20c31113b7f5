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
