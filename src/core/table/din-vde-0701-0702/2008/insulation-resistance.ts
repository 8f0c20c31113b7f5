import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Insulation resistance of a whole class II appliance at 500 V d.c. after one minute: what a workshop asks after a repair, and what older product standards ask of reinforced insulation. */
export const insulationResistance = defineTable({
  id: 'din-vde-0701-0702/2008/insulation-resistance',
  title: 'Insulation resistance at 500 V d.c.',
  source: cite('din-vde-0701-0702', 'insulation resistance, class II', 'secondary', {
    alsoBy: [
      'the manual of an appliance tester, for DIN VDE 0701-1:2000: 2.0 MΩ for class II',
      'the manual of another maker: class II electronic devices, 2 MΩ',
    ],
  }),
  lookUp: 'exact key',
  key: { name: 'insulation', unit: '', si: 'word', factor: 1 },
  columns: {
    least: { unit: 'MΩ', si: 'Ω', factor: 1e6 },
    testVoltage: { unit: 'V', si: 'V', factor: 1 },
  },
  rows: [
    ['basic', 2, 500],
    ['reinforced', 7, 500],
  ],
  cellSources: {
    'reinforced/least': cite('iec-60335-1', 'older editions, insulation resistance: 2 MΩ basic, 7 MΩ reinforced', 'memory', {
      alsoBy: ['the Russian adoption of IEC 60669-2-1 asks 7 MΩ between the mains and a control circuit that is joined to SELV'],
    }),
  },
});
