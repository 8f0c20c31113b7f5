import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Pins of the flat two-pin plug, 2.5 A 250 V. The nominal figures were read in copies, the tolerances nowhere: what a pin may be off is our own. */
export const pins = defineTable({
  id: 'en-50075/1990/pins',
  title: 'Pins of the flat two-pin plug',
  source: cite('en-50075', 'dimensions of the plug', 'secondary', {
    alsoBy: ['an encyclopaedia article', 'a private museum of plugs and sockets'],
  }),
  lookUp: 'exact key',
  key: { name: 'dimension', unit: '', si: 'word', factor: 1 },
  columns: {
    nominal: { unit: 'mm', si: 'm', factor: 1e-3 },
    allowance: { unit: 'mm', si: 'm', factor: 1e-3 },
  },
  rows: [
    ['diameter', 4.0, 0.2],
    ['length', 19, 1],
  ],
  cellSources: {
    'diameter/allowance': cite('house', 'a pin that is a twentieth off fits no contact as it should', 'common-practice'),
    'length/allowance': cite('house', 'a pin that is a twentieth off reaches no contact as it should', 'common-practice'),
  },
});
