import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Greatest diameter over the enamel of a round copper wire, ordinary grades. A wire that is thicker carries more than enamel. */
export const enamel = defineTable({
  id: 'iec-60317-0-1/undated/enamel',
  title: 'Overall diameter of enamelled wire',
  source: cite('iec-60317-0-1', 'grades 1 and 2, in the copy of an open magnetics library; the standard was not read', 'secondary'),
  lookUp: 'linear between rows',
  key: { name: 'nominal diameter', unit: 'mm', si: 'm', factor: 1e-3 },
  columns: {
    grade1: { unit: 'mm', si: 'm', factor: 1e-3 },
    grade2: { unit: 'mm', si: 'm', factor: 1e-3 },
  },
  rows: [
    [0.02, 0.024, 0.027],
    [0.025, 0.031, 0.034],
    [0.032, 0.039, 0.043],
    [0.04, 0.049, 0.054],
    [0.05, 0.06, 0.066],
    [0.063, 0.076, 0.083],
    [0.071, 0.084, 0.091],
    [0.08, 0.094, 0.101],
    [0.09, 0.105, 0.113],
    [0.1, 0.117, 0.125],
    [0.112, 0.13, 0.139],
    [0.125, 0.144, 0.154],
    [0.14, 0.16, 0.171],
    [0.2, 0.226, 0.239],
    [0.224, 0.252, 0.266],
    [0.25, 0.281, 0.297],
    [0.28, 0.312, 0.329],
    [0.3, 0.334, 0.352],
    [0.315, 0.349, 0.367],
    [0.355, 0.392, 0.411],
    [0.4, 0.439, 0.459],
    [0.45, 0.491, 0.513],
  ],
});
