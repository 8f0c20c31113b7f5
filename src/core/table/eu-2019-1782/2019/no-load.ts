import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Most input power with nothing connected, by nameplate output power, from the first row that covers it. `multiple` is more than one output at a time. */
export const noLoad = defineTable({
  id: 'eu-2019-1782/2019/no-load',
  title: 'No-load power of external power supplies, a.c. to d.c.',
  source: cite('eu-2019-1782', 'annex II, 1(a)', 'official-text', { alsoBy: ['10 CFR 430 level VI: the same figures'] }),
  lookUp: 'first row that covers',
  key: { name: 'nameplate output power', unit: 'W', si: 'W', factor: 1 },
  columns: { single: { unit: 'W', si: 'W', factor: 1 }, multiple: { unit: 'W', si: 'W', factor: 1 } },
  rows: [
    [49, 0.1, 0.3],
    [250, 0.21, 0.3],
  ],
});
