import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * Average efficiency that makers of the voluntary agreement promised for single outputs above 6 V, second tier: η = a ln(P/W) + b P/W + c.
 * Never a legal limit.
 */
const one = { unit: '1', si: '1', factor: 1 } as const;

export const averageEfficiency = defineTable({
  id: 'eu-code-of-conduct/5/average-efficiency',
  title: 'Average efficiency, voluntary agreement',
  source: cite('eu-code-of-conduct', 'version 5, tier 2, basic voltage', 'secondary', {
    alsoBy: ['a maker of supplies', 'a trade journal'],
  }),
  lookUp: 'first row that covers',
  key: { name: 'nameplate output power', unit: 'W', si: 'W', factor: 1 },
  columns: { a: one, b: one, c: one },
  rows: [
    [1, 0, 0.5, 0.169],
    [49, 0.071, -0.00115, 0.67],
  ],
});
