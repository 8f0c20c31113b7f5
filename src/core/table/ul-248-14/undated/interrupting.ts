import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Current that an American supplemental fuse breaks at 250 V a.c., by its rating. */
export const interrupting = defineTable({
  id: 'ul-248-14/undated/interrupting',
  title: 'Interrupting rating of American fuses at 250 V',
  source: cite('ul-248-14', 'interrupting rating', 'secondary', { alsoBy: ['a fuse maker’s guide'] }),
  lookUp: 'first row that covers',
  key: { name: 'rated current', unit: 'A', si: 'A', factor: 1 },
  columns: { breaks: { unit: 'A', si: 'A', factor: 1 } },
  rows: [
    [1, 35],
    [3.5, 100],
    [10, 200],
  ],
});
