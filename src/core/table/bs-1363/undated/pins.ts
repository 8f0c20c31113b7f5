import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Pins of the British plug. `length` and `toEdge` are of the line and neutral pins; what a length may be off is our own. */
export const pins = defineTable({
  id: 'bs-1363/undated/pins',
  title: 'Pins of the British plug',
  source: cite('bs-1363', 'dimensions of the plug', 'secondary', { alsoBy: ['a copy of an encyclopaedia article'] }),
  lookUp: 'exact key',
  key: { name: 'dimension', unit: '', si: 'word', factor: 1 },
  columns: { nominal: { unit: 'mm', si: 'm', factor: 1e-3 }, allowance: { unit: 'mm', si: 'm', factor: 1e-3 } },
  rows: [
    ['length', 17.7, 0.9],
    ['toEdge', 9.5, null],
  ],
  cellSources: { 'length/allowance': cite('house', 'a pin that is a twentieth off reaches no contact as it should', 'common-practice') },
});
