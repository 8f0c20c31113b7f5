import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Output voltage at the socket, by what kind of port offers it. `pdFixed` and `claim` are shares of the nominal voltage. */
export const voltageWindow = defineTable({
  id: 'usb/2022/voltage-window',
  title: 'Voltage window of USB sources',
  source: cite('usb-2', 'source voltage at the socket', 'secondary', {
    alsoBy: ['EN 301 489-34: 5 V within 5 % over load', 'two public notes on USB charging'],
  }),
  lookUp: 'exact key',
  key: { name: 'kind of port', unit: '', si: 'word', factor: 1 },
  columns: {
    least: { unit: 'V', si: 'V', factor: 1 },
    most: { unit: 'V', si: 'V', factor: 1 },
  },
  rows: [
    ['usbA5', 4.75, 5.25],
    ['usbC5', 4.75, 5.5],
  ],
  cellSources: {
    'usbC5/least': cite('usb-c', 'table 4-24, vSafe5V', 'secondary', { alsoBy: ['controller sources in public repositories'] }),
    'usbC5/most': cite('usb-c', 'table 4-24, vSafe5V', 'secondary', { alsoBy: ['controller sources in public repositories'] }),
  },
});
