import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Half width of the voltage window as a share of the nominal voltage, for negotiated levels and for plain adapters. */
export const relativeWindow = defineTable({
  id: 'usb/2022/relative-window',
  title: 'Relative voltage window',
  source: cite('usb-pd', 'table 4-6, fixed supply', 'secondary', {
    alsoBy: ['kernel source of a port controller: 95 % of a new fixed voltage', 'an engineering note citing revision 3.2'],
  }),
  lookUp: 'exact key',
  key: { name: 'kind of level', unit: '', si: 'word', factor: 1 },
  columns: { half: { unit: '1', si: '1', factor: 1 } },
  rows: [
    ['pdFixed', 0.05],
    ['plainAdapter', 0.05],
  ],
  cellSources: {
    'plainAdapter/half': cite(
      'house',
      'no published window for plain adapters: 5 % of the printed voltage, what the trade expects',
      'common-practice',
    ),
  },
});
