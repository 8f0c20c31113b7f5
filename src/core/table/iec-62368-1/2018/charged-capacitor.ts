import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * Voltage of a charged capacitor that may be touched (es1), and that may be touched after one fault (es2). From 300 nF up the first row holds,
 * down to 0.133 nF and below the last; straight lines between. The capacitance is the rated value plus its tolerance.
 */
export const chargedCapacitor = defineTable({
  id: 'iec-62368-1/2018/charged-capacitor',
  title: 'Electrical energy sources, charged capacitors',
  source: cite('iec-62368-1', 'table 5', 'secondary', {
    alsoBy: ['a national technical regulation that adopts the standard, text extract'],
  }),
  lookUp: 'linear between rows',
  key: { name: 'capacitance', unit: 'nF', si: 'F', factor: 1e-9 },
  columns: {
    es1: { unit: 'V', si: 'V', factor: 1 },
    es2: { unit: 'V', si: 'V', factor: 1 },
  },
  rows: [
    [0.133, 25_000, 50_000],
    [0.2, 20_000, 40_000],
    [0.4, 10_000, 20_000],
    [0.8, 5000, 10_000],
    [1.6, 2500, 5000],
    [4, 1000, 2000],
    [8, 500, 1000],
    [12, 350, 700],
    [18, 250, 500],
    [28, 200, 400],
    [41, 150, 300],
    [61, 125, 250],
    [91, 100, 200],
    [170, 75, 150],
    [300, 60, 120],
  ],
});
