import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Procedure 1: clearance by the greatest of the peak working voltage, recurring peaks and temporary overvoltages, up to 30 kHz. Basic (B) and reinforced (R) by pollution degree. */
export const clearancePeak = defineTable({
  id: 'iec-62368-1/2018/clearance-peak',
  title: 'Clearance for the peak of the working voltage and temporary overvoltages, procedure 1',
  source: cite('iec-62368-1', 'table 10', 'secondary', {
    alsoBy: [
      'an open magnetics library, data block of IEC 62368-1: all 102 cells agree',
      'IEC 60664-1 table F.8 for the basic column, pollution degree 1',
    ],
  }),
  lookUp: 'linear between rows',
  key: { name: 'peak voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: {
    B_PD1: { unit: 'mm', si: 'm', factor: 1e-3 },
    B_PD2: { unit: 'mm', si: 'm', factor: 1e-3 },
    B_PD3: { unit: 'mm', si: 'm', factor: 1e-3 },
    R_PD1: { unit: 'mm', si: 'm', factor: 1e-3 },
    R_PD2: { unit: 'mm', si: 'm', factor: 1e-3 },
    R_PD3: { unit: 'mm', si: 'm', factor: 1e-3 },
  },
  rows: [
    [330, 0.01, 0.2, 0.8, 0.02, 0.4, 1.5],
    [400, 0.02, 0.2, 0.8, 0.04, 0.4, 1.5],
    [500, 0.04, 0.2, 0.8, 0.08, 0.4, 1.5],
    [600, 0.06, 0.2, 0.8, 0.12, 0.4, 1.5],
    [800, 0.13, 0.2, 0.8, 0.26, 0.4, 1.5],
    [1000, 0.26, 0.26, 0.8, 0.52, 0.52, 1.5],
    [1200, 0.42, 0.42, 0.8, 0.84, 0.84, 1.5],
    [1500, 0.76, 0.76, 0.8, 1.52, 1.52, 1.6],
    [2000, 1.27, 1.27, 1.27, 2.54, 2.54, 2.54],
    [2500, 1.8, 1.8, 1.8, 3.6, 3.6, 3.6],
    [3000, 2.4, 2.4, 2.4, 4.8, 4.8, 4.8],
    [4000, 3.8, 3.8, 3.8, 7.6, 7.6, 7.6],
    [5000, 5.7, 5.7, 5.7, 11, 11, 11],
    [6000, 7.9, 7.9, 7.9, 15.8, 15.8, 15.8],
    [8000, 11, 11, 11, 20, 20, 20],
    [10000, 15.2, 15.2, 15.2, 27, 27, 27],
    [12000, 19, 19, 19, 33, 33, 33],
  ],
});
