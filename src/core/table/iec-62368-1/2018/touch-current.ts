import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Touch current at low frequency (50 and 60 Hz, or weighted by the network of IEC 60990): es1 is not felt as pain, es2 can still be let go. */
export const touchCurrent = defineTable({
  id: 'iec-62368-1/2018/touch-current',
  title: 'Electrical energy sources, touch current',
  source: cite('iec-62368-1', 'table 4', 'secondary', {
    alsoBy: ['a national technical regulation that adopts the standard, text extract'],
  }),
  lookUp: 'exact key',
  key: { name: 'level', unit: '', si: 'word', factor: 1 },
  columns: {
    rms: { unit: 'mA', si: 'A', factor: 1e-3 },
    peak: { unit: 'mA', si: 'A', factor: 1e-3 },
  },
  rows: [
    ['es1', 0.5, 0.707],
    ['es2', 5, 7.07],
  ],
  cellSources: {
    'es2/rms': cite('iec-62368-1', 'table 4', 'memory', {
      alsoBy: ['the extract read prints the first limit here, a slip; its own frequency formula 5 + 0.95 f agrees with 5 mA'],
    }),
    'es2/peak': cite('iec-62368-1', 'table 4', 'memory', { alsoBy: ['as for the rms figure'] }),
  },
});
