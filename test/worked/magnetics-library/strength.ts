import { CELL, type WorkedExample } from '../worked-example.ts';

const BLOCK = { origin: 'standard', tolerance: 0, because: CELL } as const;
type Rows = readonly (readonly [key: number, basic: number, reinforced: number])[];

const pairs = (table: string, number: string, rows: Rows, unit = 'V peak'): WorkedExample[] =>
  rows.flatMap(([key, basic, reinforced]) =>
    (['basic', 'reinforced'] as const).map(
      (column): WorkedExample => ({
        ...BLOCK,
        table: `iec-62368-1/2018/${table}/${column}`,
        publication: 'IEC 62368-1',
        edition: '2018',
        place: `table ${number}, ${column}, ${key} V; read in the data block of an open magnetics library`,
        inputs: { key },
        printed: column === 'basic' ? basic : reinforced,
        unit,
      }),
    ),
  );

const household = (key: number, column: string, printed: number): WorkedExample => ({
  ...BLOCK,
  table: `iec-60335-1/2010/strength/${column}`,
  publication: 'IEC 60335-1',
  edition: '2010',
  place: `table 7, ${column}, to ${key} V; read in the data block of an open magnetics library`,
  inputs: { key },
  printed,
  unit: 'V',
});

const instead = ([key, printed]: readonly [number, number]): WorkedExample => ({
  ...BLOCK,
  table: 'iec-62368-1/2018/withstand-test/test',
  publication: 'IEC 62368-1',
  edition: '2018',
  place: `table 15, ${key} V; read in the data block of an open magnetics library`,
  inputs: { key },
  printed,
  unit: 'V peak',
});

const degree = (key: string, printed: number): WorkedExample => ({
  ...BLOCK,
  table: 'iec-62368-1/2018/high-frequency-degree/factor',
  publication: 'IEC 62368-1',
  edition: '2018',
  place: `table 11, footnote, pollution degree ${key}; read in a translated text`,
  inputs: { key },
  printed,
  unit: '1',
});

/** Electric strength, distances above 30 kHz, coated boards, and the impulse test: typed from the copy and not from the tables of this project. */
export const LIBRARY_TABLES: readonly WorkedExample[] = [
  ...pairs('strength-transient', '25', [
    [330, 330, 500],
    [500, 500, 800],
    [800, 800, 1500],
    [1500, 1500, 2500],
    [2500, 2500, 4000],
    [4000, 4000, 6000],
    [6000, 6000, 8000],
    [8000, 8000, 12000],
    [12000, 12000, 18000],
  ]),
  ...pairs('strength-peak', '26', [
    [330, 430, 530],
    [500, 650, 800],
    [800, 1040, 1280],
    [1500, 1950, 2400],
    [2500, 3250, 4000],
    [4000, 5200, 6400],
    [6000, 7800, 9600],
    [8000, 10400, 12800],
    [12000, 15600, 19200],
  ]),
  ...pairs('strength-overvoltage', '27', [
    [250, 2000, 4000],
    [600, 2500, 5000],
  ]),
  ...pairs(
    'clearance-high-frequency',
    '11',
    [
      [600, 0.07, 0.14],
      [800, 0.22, 0.44],
      [1000, 0.6, 1.2],
      [1200, 1.68, 3.36],
      [1400, 2.82, 5.64],
      [1600, 4.8, 9.6],
      [1800, 8.04, 16.08],
      [2000, 13.2, 26.4],
    ],
    'mm',
  ),
  ...pairs(
    'coated-board',
    'G.13',
    [
      [227, 0.25, 0.5],
      [283, 0.4, 0.8],
      [354, 0.56, 1.12],
      [455, 0.75, 1.5],
      [570, 1.0, 2.0],
      [710, 1.3, 2.6],
    ],
    'mm',
  ),
  ...(
    [
      [330, 360],
      [500, 540],
      [800, 930],
      [1500, 1750],
      [2500, 2920],
      [4000, 4920],
      [6000, 7390],
      [8000, 9850],
      [12000, 14770],
    ] as const
  ).map(instead),
  degree('1', 0.8),
  degree('2', 1),
  degree('3', 1.4),
  household(150, 'basic', 1250),
  household(150, 'supplementary', 1250),
  household(150, 'reinforced', 2500),
  household(250, 'basic', 1250),
  household(250, 'supplementary', 1750),
  household(250, 'reinforced', 3000),
  // the greatest of the three, as the library and a published report take it
  {
    ...BLOCK,
    formula: 'insulation/strength-voltage',
    publication: 'OpenMagnetics MKF',
    place: 'src/constructive_models/Insulation.cpp, IEC 62368-1, basic insulation at 230 V: table 25 at 2500 V',
    origin: 'program',
    inputs: { transient: 2500, peak: 430, overvoltage: 2000 },
    printed: 2500,
    unit: 'V peak',
  },
  {
    ...BLOCK,
    formula: 'insulation/strength-voltage',
    publication: 'OpenMagnetics MKF',
    place: 'src/constructive_models/Insulation.cpp, IEC 62368-1, basic insulation at 120 V: table 27',
    origin: 'program',
    inputs: { transient: 1500, peak: 430, overvoltage: 2000 },
    printed: 2000,
    unit: 'V peak',
  },
  {
    ...BLOCK,
    formula: 'insulation/distance-in-degree',
    publication: 'IEC 62368-1',
    edition: '2018',
    place: 'table 11, 1200 V, reinforced, times 1.4 for pollution degree 3',
    origin: 'closed-form',
    inputs: { distance: 3.36e-3, factor: 1.4 },
    printed: 4.704,
    unit: 'mm',
  },
];
