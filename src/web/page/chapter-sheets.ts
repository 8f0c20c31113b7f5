import type { WorkspaceChapter } from '../../present/workspace/chapter-view.ts';
import type { Sheet } from '../part/sheet.tsx';

const NOT_LOOKED = { state: 'notLooked' };

/** What is entered in each chapter, in the order of the bench. */
export const SHEETS: Readonly<Record<WorkspaceChapter | 'sample' | 'photos', readonly Sheet[]>> = {
  sample: [
    { lay: 'list', list: 'ports', columns: ['name', 'kind'], blank: (id) => ({ id, kind: NOT_LOOKED, levels: [] }) },
    {
      lay: 'list',
      list: 'days',
      columns: ['date', 'under/mains', 'under/supply', 'under/ambient'],
      blank: (id) => ({ id, date: today(), uses: {}, under: {} }),
    },
    { lay: 'list', list: 'instruments', columns: ['name', 'calibrated'], blank: (id) => ({ id, name: '', ranges: [] }) },
    { lay: 'list', list: 'events', columns: ['at', 'what', 'note'], blank: (id) => ({ id, at: `${today()}T12:00`, what: 'purchased' }) },
    { lay: 'list', list: 'conductors', columns: ['name', 'side', 'beforeFuse'], blank: (id) => ({ id, name: '', side: NOT_LOOKED }) },
    { lay: 'list', list: 'places', columns: ['name', 'part', 'outside', 'material'], blank: (id) => ({ id, name: '' }) },
  ],
  label: [
    { lay: 'each', kind: 'label' },
    { lay: 'each', kind: 'body' },
  ],
  touch: [
    { lay: 'rows', kind: 'cold', columns: ['quantity', 'between', 'value', 'testVoltage'] },
    {
      lay: 'rows',
      kind: 'touch',
      columns: ['quantity', 'from', 'method', 'value', 'after', 'under/supply', 'under/orientation', 'under/mains'],
    },
  ],
  load: [
    { lay: 'each', kind: 'sweep' },
    { lay: 'each', kind: 'advertised' },
    { lay: 'rows', kind: 'ripple', columns: ['port', 'level', 'value', 'bandwidth', 'fixture'] },
    { lay: 'rows', kind: 'earthSwing', columns: ['port', 'value', 'pulse', 'under/supply'] },
    { lay: 'each', kind: 'event' },
  ],
  heat: [
    { lay: 'spots', columns: ['place', 'value', 'by'] },
    { lay: 'each', kind: 'soak' },
    { lay: 'each', kind: 'thermalPicture' },
  ],
  board: [
    { lay: 'rows', kind: 'residual', columns: ['across', 'value', 'after', 'later/value', 'later/after'] },
    { lay: 'each', kind: 'board' },
    { lay: 'rows', kind: 'distance', columns: ['from', 'to', 'path', 'value', 'method', 'where'] },
    {
      lay: 'list',
      list: 'parts',
      columns: ['ref', 'kind', 'marking', 'value', 'measured', 'safetyClass', 'identity'],
      blank: (id) => ({ id, ref: '', kind: NOT_LOOKED }),
    },
  ],
  transformer: [
    { lay: 'each', kind: 'stack' },
    { lay: 'rows', kind: 'workingVoltage', columns: ['between', 'rms', 'peak', 'under/mains', 'under/supply'] },
    { lay: 'each', kind: 'capture' },
  ],
  circuit: [],
  faults: [],
  photos: [{ lay: 'each', kind: 'photo' }],
};

function today(): string {
  const DATE = 10; // characters of a date in ISO 8601
  return new Date().toISOString().slice(0, DATE);
}
