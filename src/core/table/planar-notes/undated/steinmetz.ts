import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * Loss of power ferrites under a sine, as their maker fits it: P = C_m · f ^ α · B ^ β with the amplitude B, at 100 °C, where the factor of
 * temperature is one. Printed for 20 to 200 kHz (3C94), 20 to 100 kHz (3C30) and 100 to 300 kHz (3F3), in mW for each cubic centimetre.
 */
export const steinmetz = defineTable({
  id: 'planar-notes/undated/steinmetz',
  title: 'Core loss of power ferrites under a sine, 100 °C',
  source: cite('planar-notes', 'table of fit parameters for the power loss density', 'secondary'),
  lookUp: 'exact key',
  key: { name: 'ferrite', unit: '', si: 'word', factor: 1 },
  columns: {
    coefficient: { unit: '1', si: '1', factor: 1e3 },
    alpha: { unit: '1', si: '1', factor: 1 },
    beta: { unit: '1', si: '1', factor: 1 },
  },
  rows: [
    ['3C94', 0.00237, 1.46, 2.75],
    ['3C30', 0.00713, 1.42, 3.02],
    ['3F3', 0.00025, 1.63, 2.45],
  ],
});
