import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Steady voltage beyond which a device on a USB port may be harmed: absolute for 5 V, and how far beyond the window for a fixed level. */
export const overvoltage = defineTable({
  id: 'usb/2022/overvoltage',
  title: 'Overvoltage at a USB socket',
  source: cite('usb-c', 'table 4-24, upper end of vSafe5V', 'secondary', { alsoBy: ['controller sources in public repositories'] }),
  lookUp: 'exact key',
  key: { name: 'kind of port', unit: '', si: 'word', factor: 1 },
  columns: { most: { unit: 'V', si: 'V', factor: 1 } },
  rows: [
    ['usb5', 5.5],
    ['pdBeyond', 0.5],
  ],
  cellSources: {
    'pdBeyond/most': cite('usb-pd', 'vSrcValid, 500 mV beyond the band', 'secondary', { alsoBy: ['kernel source of a port controller'] }),
  },
});
