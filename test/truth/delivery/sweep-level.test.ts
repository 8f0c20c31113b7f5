import { describe, expect, it } from 'vitest';
import { findingOf, judge } from '../build-case.ts';
import { PLAIN_DAY, type PortInput, plainMeter, sweep } from '../evidence-pieces.ts';

// Windows: USB C at 5 V 4.75 to 5.5 V, a fixed level of 9 V 8.55 to 9.45 V (secondary: controller sources). 9 V on a 5 V socket would harm a device.
const port: PortInput = {
  id: 'usb',
  kind: 'usbC',
  levels: [
    { id: '5v', voltage: '5 V', printed: '3 A' },
    { id: '9v', voltage: '9 V', printed: '2 A' },
  ],
};
const NINE = [
  ['0', '9.1'],
  ['1', '9.05'],
  ['2.2', '9'],
];
const { level: _none, ...unnamed } = sweep(NINE);
const with_ = (run: ReturnType<typeof sweep>, one = port) =>
  judge({ ports: [one], instruments: [plainMeter('0.01 V', { uAmpere: '0.001 A' })], days: [PLAIN_DAY], exhibits: [run] });

describe('a sweep of a port that negotiates', () => {
  it('that names no level belongs to none: 9 V are not held against 5 V, and the sweep is shown as kept', () => {
    const assessment = with_(unnamed as ReturnType<typeof sweep>);
    for (const id of ['delivery/current@usb~5v', 'delivery/current@usb~9v', 'delivery/voltage-window@usb~5v', 'harm/overvoltage'])
      expect(findingOf(assessment, id).outcome, id).toBe('notAssessed');
    expect(assessment.unjudged).toContainEqual({ exhibit: 'sweep-1', kind: 'sweep' });
    expect(assessment.verdict.failure).toBe('No verdict yet');
  });

  it('that names its level is judged there, and on a port with one level it need not', () => {
    expect(findingOf(with_(sweep(NINE, { level: '9v' })), 'delivery/current@usb~9v').outcome).toBe('pass');
    const single: PortInput = { id: 'usb', kind: 'usbC', levels: [{ id: '9v', voltage: '9 V', printed: '2 A' }] };
    const assessment = with_(unnamed as ReturnType<typeof sweep>, single);
    expect(findingOf(assessment, 'delivery/current@usb~9v').outcome).toBe('pass');
    expect(assessment.unjudged).toEqual([]);
  });
});

describe('a sweep with a neighbour loaded', () => {
  const second: PortInput = { id: 'two', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V', printed: '2 A' }] };
  const first: PortInput = { ...second, id: 'usb' };
  const WEAK = [
    ['0', '5.1'],
    ['1', '4.8'],
    ['1.2', '4.2'],
  ];
  const STRONG = [
    ['0', '5.1'],
    ['1', '5.05'],
    ['2.5', '5'],
  ];
  const loads = [{ port: 'two', draws: '2 A' }];
  const both = (...runs: ReturnType<typeof sweep>[]) =>
    judge({ ports: [first, second], instruments: [plainMeter('0.01 V', { uAmpere: '0.001 A' })], days: [PLAIN_DAY], exhibits: runs });
  const beside = sweep(WEAK, { id: 'beside', under: { mains: '230 V', loads } });

  it('is not held against what is printed for the one output: a budget that is shared may be spent', () => {
    expect(findingOf(both(beside), 'delivery/current@usb~5v')).toMatchObject({ outcome: 'notAssessed' });
    expect(findingOf(both(beside, sweep(STRONG)), 'delivery/current@usb~5v')).toMatchObject({ outcome: 'pass' });
  });

  it('is held against what is printed for both', () =>
    expect(findingOf(both(beside, sweep(STRONG)), 'delivery/ports@usb').outcome).toBe('fail'));
});
