import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Procedure 2: clearance by the transient that must be stood. Basic (B) and reinforced (R) by pollution degree. */
export const clearanceWithstand = defineTable({
  id: 'iec-62368-1/2018/clearance-withstand',
  title: 'Clearance for the required withstand voltage, procedure 2',
  source: cite('iec-62368-1', 'table 14', 'secondary', {
    alsoBy: [
      'an open magnetics library, data block of IEC 62368-1: all 102 cells agree',
      'a published test report: 2500 V, basic 1.5 mm, reinforced 3.0 mm',
      'IEC 60664-1 table F.2 for the basic columns',
    ],
  }),
  lookUp: 'linear between rows',
  key: { name: 'required withstand voltage', unit: 'V peak', si: 'V', factor: 1 },
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
    [800, 0.1, 0.2, 0.8, 0.2, 0.4, 1.5],
    [1000, 0.15, 0.2, 0.8, 0.3, 0.4, 1.5],
    [1200, 0.25, 0.25, 0.8, 0.5, 0.5, 1.5],
    [1500, 0.5, 0.5, 0.8, 1, 1, 1.5],
    [2000, 1, 1, 1, 2, 2, 2],
    [2500, 1.5, 1.5, 1.5, 3, 3, 3],
    [3000, 2, 2, 2, 3.8, 3.8, 3.8],
    [4000, 3, 3, 3, 5.5, 5.5, 5.5],
    [5000, 4, 4, 4, 8, 8, 8],
    [6000, 5.5, 5.5, 5.5, 8, 8, 8],
    [8000, 8, 8, 8, 14, 14, 14],
    [10000, 11, 11, 11, 19, 19, 19],
    [12000, 14, 14, 14, 24, 24, 24],
  ],
});
