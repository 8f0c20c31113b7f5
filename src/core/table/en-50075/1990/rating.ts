import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Rating of the flat two-pin plug. */
export const rating = defineTable({
  id: 'en-50075/1990/rating',
  title: 'Rating of the flat two-pin plug',
  source: cite('en-50075', 'title: 2.5 A 250 V', 'secondary', {
    alsoBy: ['an encyclopaedia article', 'a private museum of plugs and sockets'],
  }),
  lookUp: 'exact key',
  key: { name: 'plug', unit: '', si: 'word', factor: 1 },
  columns: { current: { unit: 'A', si: 'A', factor: 1 } },
  rows: [['flatTwoPin', 2.5]],
});
