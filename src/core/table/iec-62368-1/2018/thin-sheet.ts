import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

const household = {
  alsoBy: ['a decision of the certifiers’ committee on IEC 60335-1, as copied on a forum: two layers supplementary, three reinforced'],
};

/**
 * What layers of separable tape or sheet stand for, in layers of insulation, when nobody tested them one by one: at least and at most. One is
 * basic at most. Two are reinforced if each passes the whole test alone, three if every two of them pass together.
 */
export const thinSheet = defineTable({
  id: 'iec-62368-1/2018/thin-sheet',
  title: 'Separable layers of thin sheet',
  source: cite('iec-62368-1', 'clause 5.4.4.6', 'memory', household),
  lookUp: 'exact key',
  key: { name: 'layers', unit: '', si: 'word', factor: 1 },
  columns: { least: { unit: '1', si: '1', factor: 1 }, most: { unit: '1', si: '1', factor: 1 } },
  rows: [
    ['none', 0, 0],
    ['one', 1, 1],
    ['two', 1, 2],
    ['three or more', 2, 2],
  ],
});
