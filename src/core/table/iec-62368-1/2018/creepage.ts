import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Creepage for basic insulation by rms working voltage, pollution degree and material group (III stands for IIIa and IIIb). */
export const creepage = defineTable({
  id: 'iec-62368-1/2018/creepage',
  title: 'Creepage distance, basic insulation',
  source: cite('iec-62368-1', 'table 17', 'secondary', {
    alsoBy: [
      'a terminal maker, catalogue excerpt of EN 60664-1 table F.4: all cells agree',
      'an open magnetics library, data block of IEC 62368-1: 147 of 147 cells agree',
    ],
  }),
  lookUp: 'linear between rows',
  key: { name: 'working voltage', unit: 'V rms', si: 'V', factor: 1 },
  columns: {
    PD1: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD2_I: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD2_II: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD2_III: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD3_I: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD3_II: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD3_III: { unit: 'mm', si: 'm', factor: 1e-3 },
  },
  rows: [
    [10, 0.08, 0.4, 0.4, 0.4, 1, 1, 1],
    [12.5, 0.09, 0.42, 0.42, 0.42, 1.05, 1.05, 1.05],
    [16, 0.1, 0.45, 0.45, 0.45, 1.1, 1.1, 1.1],
    [20, 0.11, 0.48, 0.48, 0.48, 1.2, 1.2, 1.2],
    [25, 0.125, 0.5, 0.5, 0.5, 1.25, 1.25, 1.25],
    [32, 0.14, 0.53, 0.53, 0.53, 1.3, 1.3, 1.3],
    [40, 0.16, 0.56, 0.8, 1.1, 1.4, 1.6, 1.8],
    [50, 0.18, 0.6, 0.85, 1.2, 1.5, 1.7, 1.9],
    [63, 0.2, 0.63, 0.9, 1.25, 1.6, 1.8, 2],
    [80, 0.22, 0.67, 0.95, 1.3, 1.7, 1.9, 2.1],
    [100, 0.25, 0.71, 1, 1.4, 1.8, 2, 2.2],
    [125, 0.28, 0.75, 1.05, 1.5, 1.9, 2.1, 2.4],
    [160, 0.32, 0.8, 1.1, 1.6, 2, 2.2, 2.5],
    [200, 0.42, 1, 1.4, 2, 2.5, 2.8, 3.2],
    [250, 0.56, 1.25, 1.8, 2.5, 3.2, 3.6, 4],
    [320, 0.75, 1.6, 2.2, 3.2, 4, 4.5, 5],
    [400, 1, 2, 2.8, 4, 5, 5.6, 6.3],
    [500, 1.3, 2.5, 3.6, 5, 6.3, 7.1, 8],
    [630, 1.8, 3.2, 4.5, 6.3, 8, 9, 10],
    [800, 2.4, 4, 5.6, 8, 10, 11, 12.5],
    [1000, 3.2, 5, 7.1, 10, 12.5, 14, 16],
  ],
});
