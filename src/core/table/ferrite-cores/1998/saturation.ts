import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

const usual = cite('core-catalogue', 'power ferrites, the least of those printed', 'common-practice');

/** Flux density at which ferrites saturate at 100 °C. A ferrite that nobody named is taken as the least of the usual ones. */
export const saturation = defineTable({
  id: 'ferrite-cores/1998/saturation',
  title: 'Saturation of power ferrites at 100 °C',
  source: cite('core-catalogue', 'material tables, 100 °C', 'secondary'),
  lookUp: 'exact key',
  key: { name: 'ferrite', unit: '', si: 'word', factor: 1 },
  columns: { hot: { unit: 'mT', si: 'T', factor: 1e-3 } },
  rows: [
    ['PC40', 390],
    ['PC44', 390],
    ['PC50', 380],
    ['unnamed', 380],
  ],
  cellSources: { 'unnamed/hot': usual },
});
