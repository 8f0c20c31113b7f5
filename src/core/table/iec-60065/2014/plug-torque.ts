import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Torque that a unit with the plug in its body may put on the socket, about a pivot behind the engagement face. */
export const plugTorque = defineTable({
  id: 'iec-60065/2014/plug-torque',
  title: 'Torque of devices that form part of the mains plug',
  source: cite('iec-60065', 'clause 15.4', 'secondary', {
    alsoBy: ['a maker of test equipment: 0.25 N m, pivot 8 mm behind the engagement face'],
  }),
  lookUp: 'exact key',
  key: { name: 'unit', unit: '', si: 'word', factor: 1 },
  columns: {
    most: { unit: 'N·m', si: 'N·m', factor: 1 },
    pivot: { unit: 'mm', si: 'm', factor: 1e-3 },
  },
  rows: [['plugInBody', 0.25, 8]],
});
