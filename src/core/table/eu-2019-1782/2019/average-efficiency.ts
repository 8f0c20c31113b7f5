import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * Least average active efficiency by nameplate power: η = a ln(P/W) + b P/W + c, from the first row whose power covers it. `low` is a nameplate
 * voltage below 6 V with at least 0.55 A, `basic` the other single-output a.c.-d.c. supplies, `multiple` more than one output at a time.
 */
const one = { unit: '1', si: '1', factor: 1 } as const;

export const averageEfficiency = defineTable({
  id: 'eu-2019-1782/2019/average-efficiency',
  title: 'Average active efficiency of external power supplies',
  source: cite('eu-2019-1782', 'annex II, 1(b)', 'official-text', { alsoBy: ['10 CFR 430 level VI: the same figures for single outputs'] }),
  lookUp: 'first row that covers',
  key: { name: 'nameplate output power', unit: 'W', si: 'W', factor: 1 },
  columns: { basicA: one, basicB: one, basicC: one, lowA: one, lowB: one, lowC: one, multipleA: one, multipleB: one, multipleC: one },
  rows: [
    [1, 0, 0.5, 0.16, 0, 0.517, 0.087, 0, 0.497, 0.067],
    [49, 0.071, -0.0014, 0.67, 0.0834, -0.0014, 0.609, 0.075, 0, 0.561],
    [250, 0, 0, 0.88, 0, 0, 0.87, 0, 0, 0.86],
  ],
});
