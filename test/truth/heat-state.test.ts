import { describe, expect, it } from 'vitest';
import { type CasePatch, findingOf, judge } from './build-case.ts';
import { face, PLAIN_DAY, type PortInput, plainMeter, spot, sweep, TRANSFORMER, usbPort, WARM, winding } from './evidence-pieces.ts';

// Heat is judged at the label load if the unit reaches it, else at the worst load it sustains, and shorted; never at a state that is neither.
type Loads = NonNullable<NonNullable<NonNullable<Parameters<typeof spot>[2]>['under']>['loads']>;

function outcomes(loads: Loads, more: CasePatch = {}, celsius = '55 °C ± 1 K'): string[] {
  const under = { ...WARM, loads };
  const { exhibits = [], ...rest } = more;
  const assessment = judge({
    ports: [usbPort('2 A')],
    instruments: [plainMeter('0.001 V', { uAmpere: '0.001 A' })],
    days: [PLAIN_DAY],
    parts: [TRANSFORMER],
    places: [winding('B'), face()],
    ...rest,
    exhibits: [spot('winding', celsius, { under }), spot('face', celsius, { under }, 'spots-2'), ...exhibits],
  });
  return [
    findingOf(assessment, 'fire/winding-temperature@winding').outcome,
    findingOf(assessment, 'burn/enclosure-temperature@face').outcome,
  ];
}
const draws = (amperes: string): Loads => [{ port: 'usb', level: '5v', draws: amperes }];

describe('the load at which a temperature was read', () => {
  it('the label load passes, a little below it too, well below it does not', () => {
    expect(outcomes(draws('2 A'))).toEqual(['pass', 'pass']);
    expect(outcomes(draws('1.97 A'))).toEqual(['pass', 'pass']);
    expect(outcomes(draws('1.5 A'))).not.toContain('pass');
  });

  it('the worst load that a sweep shows the unit to sustain passes where the label load cannot be had', () => {
    const gives = sweep([
      ['0', '5.1'],
      ['0.5', '5.0'],
      ['1', '4.9'],
      ['1.4', '4.6'],
      ['1.6', '4.0'],
    ]); // leaves 4.75 V between 1 A and 1.4 A
    expect(outcomes(draws('1.2 A'), { exhibits: [gives] })).toEqual(['pass', 'pass']);
    expect(outcomes(draws('0.6 A'), { exhibits: [gives] })).not.toContain('pass');
  });

  it('a sweep that merely stopped at a fifth of an ampere does not make that the worst load', () => {
    const stopped = sweep([
      ['0', '5.1'],
      ['0.2', '5.08'],
    ]);
    expect(outcomes(draws('0.2 A'), { exhibits: [stopped] })).not.toContain('pass');
  });

  it('a short that the unit answers by cooling down says nothing of the label load', () => {
    expect(outcomes([{ port: 'usb', level: '5v', draws: { state: 'short' } }], {}, '40 °C ± 1 K')).not.toContain('pass');
  });

  it('one of two outputs at its label load and the other open is not the label load of the unit', () => {
    const second: PortInput = { id: 'second', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V', printed: '2 A' }] };
    const loads: Loads = [...draws('2 A'), { port: 'second', level: '5v', draws: { state: 'open' } }];
    expect(outcomes(loads, { ports: [usbPort('2 A'), second] })).not.toContain('pass');
    const both: Loads = [...draws('2 A'), { port: 'second', level: '5v', draws: '2 A' }];
    expect(outcomes(both, { ports: [usbPort('2 A'), second] })).toEqual(['pass', 'pass']);
  });

  it('too hot fails at any load', () => {
    for (const loads of [draws('0.2 A'), draws('2 A'), [{ port: 'usb', level: '5v', draws: { state: 'short' } }] satisfies Loads])
      expect(outcomes(loads, {}, '130 °C ± 1 K')).toEqual(['fail', 'fail']);
  });

  it('a load that nobody wrote down in amperes is not the label load', () => {
    expect(outcomes([{ port: 'usb', level: '5v', draws: { state: 'unknown' } }])).not.toContain('pass');
  });
});
