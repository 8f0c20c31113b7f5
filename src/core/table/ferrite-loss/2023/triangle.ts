import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Coefficients of the loss under a triangle of flux, SI, at 25 °C without a constant flux. */
export const triangle = defineTable({
  id: 'ferrite-loss/2023/triangle',
  title: 'Core loss under a triangle of flux',
  source: cite('core-loss-data', 'coefficients for improved generalised Steinmetz', 'secondary'),
  lookUp: 'exact key',
  key: { name: 'ferrite', unit: '', si: 'word', factor: 1 },
  columns: {
    coefficient: { unit: '1', si: '1', factor: 1 },
    alpha: { unit: '1', si: '1', factor: 1 },
    beta: { unit: '1', si: '1', factor: 1 },
  },
  rows: [
    ['3C90', 0.23732, 1.3932, 2.5481],
    ['N27', 0.42941, 1.3697, 2.4634],
  ],
});
