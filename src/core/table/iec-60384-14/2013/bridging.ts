import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/**
 * How many equal parts of a safety class, in series, may stand between the mains and something that can be touched (reinforced insulation), and
 * how many across basic insulation.
 * Classes that may never stand there are not in the table.
 */
export const bridging = defineTable({
  id: 'iec-60384-14/2013/bridging',
  title: 'Capacitors across the barrier',
  source: cite('iec-62368-1', 'annex G.11 and table G.12 with IEC 60384-14', 'secondary', {
    alsoBy: [
      'a test laboratory, questions and answers on IEC 62368-1: one Y1 to 300 V mains',
      'a safety engineers’ list: one Y1, or two Y2 in series',
      'a capacitor maker, classes and what they bridge',
    ],
    disagrees: ['IEC 60335-1, 22.42, as quoted on a forum: a single Y1 is not enough, two parts are needed'],
  }),
  lookUp: 'exact key',
  key: { name: 'safety class', unit: '', si: 'word', factor: 1 },
  columns: { inSeries: { unit: '1', si: '1', factor: 1 }, acrossBasic: { unit: '1', si: '1', factor: 1 } },
  rows: [
    ['Y1', 1, 1],
    ['Y2', 2, 1],
  ],
  cellSources: {
    'Y2/acrossBasic': cite('iec-62368-1', 'table G.9 of the 2018 edition: one Y2 where 2.5 kV is required', 'secondary', {
      alsoBy: ['a test laboratory, questions and answers on IEC 62368-1', 'a capacitor maker, classes and what they bridge'],
      disagrees: ['the 2014 edition: two Y2 in series for 300 V mains of category II'],
    }),
  },
});
