import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Clearance in an inhomogeneous field (case A) by impulse voltage and pollution degree: shown beside the deciding limit, never deciding. */
export const clearanceImpulse = defineTable({
  id: 'iec-60664-1/2007/clearance-impulse',
  title: 'Clearance to stand transients, case A',
  source: cite('iec-60664-1', 'table F.2', 'secondary', {
    alsoBy: [
      'an open magnetics library, insulation data block',
      'a railway infrastructure manager, published rules (1.5, 2.5, 4 and 6 kV)',
    ],
  }),
  lookUp: 'first row that covers',
  key: { name: 'impulse voltage', unit: 'V peak', si: 'V', factor: 1 },
  columns: {
    PD1: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD2: { unit: 'mm', si: 'm', factor: 1e-3 },
    PD3: { unit: 'mm', si: 'm', factor: 1e-3 },
  },
  rows: [
    [330, 0.01, 0.2, 0.8],
    [400, 0.02, 0.2, 0.8],
    [500, 0.04, 0.2, 0.8],
    [600, 0.06, 0.2, 0.8],
    [800, 0.1, 0.2, 0.8],
    [1000, 0.15, 0.2, 0.8],
    [1200, 0.25, 0.25, 0.8],
    [1500, 0.5, 0.5, 0.8],
    [2000, 1, 1, 1],
    [2500, 1.5, 1.5, 1.5],
    [3000, 2, 2, 2],
    [4000, 3, 3, 3],
    [5000, 4, 4, 4],
    [6000, 5.5, 5.5, 5.5],
    [8000, 8, 8, 8],
    [10000, 11, 11, 11],
    [12000, 14, 14, 14],
    [15000, 18, 18, 18],
    [20000, 25, 25, 25],
  ],
});
