import { CELL, type Misprint, type WorkedExample } from '../worked-example.ts';

const V = { unit: 'V', tolerance: 0, because: CELL } as const;
const USB_2 = {
  ...V,
  publication: 'USB 2.0',
  place: 'source voltage, as two public notes on USB charging and EN 301 489-34 print it',
  origin: 'standard',
} as const;
const TYPE_C = {
  ...V,
  publication: 'USB Type-C',
  place: 'table 4-24, vSafe5V, as a note that cites it prints it',
  origin: 'standard',
} as const;
const PD = {
  publication: 'USB Power Delivery',
  edition: '3.2 version 1.2',
  place: 'table 4.6, as a note that cites it prints it',
  origin: 'standard',
} as const;

const edge = (nominal: number, sign: 1 | -1, printed: number): WorkedExample => ({
  ...PD,
  ...V,
  formula: 'load/window-edge',
  inputs: { nominal, half: 0.05, sign },
  printed,
});

/** Windows of 5 V ports and of negotiated levels. */
export const VOLTAGE_WINDOWS: readonly WorkedExample[] = [
  { ...USB_2, table: 'usb/2022/voltage-window/least', inputs: { key: 'usbA5' }, printed: 4.75 },
  { ...USB_2, table: 'usb/2022/voltage-window/most', inputs: { key: 'usbA5' }, printed: 5.25 },
  { ...TYPE_C, table: 'usb/2022/voltage-window/least', inputs: { key: 'usbC5' }, printed: 4.75 },
  { ...TYPE_C, table: 'usb/2022/voltage-window/most', inputs: { key: 'usbC5' }, printed: 5.5 },
  { ...TYPE_C, table: 'usb/2022/overvoltage/most', inputs: { key: 'usb5' }, printed: 5.5 },
  { ...PD, table: 'usb/2022/relative-window/half', inputs: { key: 'pdFixed' }, printed: 5, unit: '%', tolerance: 0, because: CELL },
  edge(5, -1, 4.75),
  edge(5, 1, 5.25),
  edge(9, -1, 8.55),
  edge(9, 1, 9.45),
  { ...edge(20, -1, 19), place: 'the same share of 20 V, lower edge', origin: 'closed-form' },
  { ...edge(20, 1, 21), place: 'the same share of 20 V, upper edge', origin: 'closed-form' },
  {
    ...V,
    table: 'usb/2022/overvoltage/most',
    publication: 'Linux kernel, driver of USB Type-C port controllers',
    place: 'drivers/usb/typec/tcpm/tcpci.c: 500 mV beyond the band of a fixed voltage',
    origin: 'publication',
    inputs: { key: 'pdBeyond' },
    printed: 0.5,
  },
  {
    ...V,
    formula: 'load/beyond-window',
    publication: 'USB Power Delivery',
    place: 'vSrcValid above 9 V: 9.45 V and 0.5 V',
    origin: 'closed-form',
    inputs: { edge: 9.45, step: 0.5 },
    printed: 9.95,
  },
  {
    ...V,
    formula: 'load/below-window',
    publication: 'USB Power Delivery',
    place: 'vSrcValid below 9 V: 8.55 V less 0.5 V',
    origin: 'closed-form',
    inputs: { edge: 8.55, step: 0.5 },
    printed: 8.05,
  },
  {
    ...V,
    table: 'iec-62684/2018/earth-swing/most',
    publication: 'CamSemi, page on standards',
    place: 'IEC 62684: common-mode noise at most 2 V peak to peak',
    origin: 'publication',
    inputs: { key: 'phoneSupply' },
    printed: 2,
  },
  {
    table: 'iec-62684/2018/earth-swing/pulse',
    publication: 'CamSemi, page on standards',
    place: 'IEC 62684: for pulses longer than 250 ns',
    origin: 'publication',
    inputs: { key: 'phoneSupply' },
    printed: 0.00025,
    unit: 'ms',
    tolerance: 0,
    because: CELL,
  },
  {
    table: 'iec-60950-1/2005/touch-current/rms',
    publication: 'IEC 62684, extract',
    place: 'touch current of a common supply',
    origin: 'standard',
    inputs: { key: 'phoneSupply' },
    printed: 90,
    unit: 'µA',
    tolerance: 0,
    because: CELL,
  },
];

export const PHONE_SUPPLY_MISPRINT: readonly Misprint[] = [
  {
    table: 'iec-60950-1/2005/touch-current/rms',
    publication: 'IEC 62684, extract',
    place: 'touch current of a common supply, as the extract was scanned',
    origin: 'publication',
    inputs: { key: 'phoneSupply' },
    printed: 90,
    unit: 'pA',
    tolerance: 0,
    because: CELL,
    wrongBecause: 'a scanner read µ as p: no capacitor small enough exists',
  },
];
