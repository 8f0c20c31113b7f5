import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../src/core/evidence/case.ts';
import type { Assessment, Finding } from '../../src/core/result/assessment.ts';
import { judge, noteKeys } from './build-case.ts';
import { PLAIN_DAY, type PlaceInput, plainMeter, sweep, usbPort, WARM } from './evidence-pieces.ts';

/*
 * A sweep of 5.00 V that holds 2 A: input 3.4 W at 0.5 A, 6.5 W at 1 A, 9.8 W at 1.5 A, 13.4 W at 2 A, so that 0.9, 1.5, 2.3 and 3.4 W stay inside.
 * The room is at the highest ambient: nothing else is scaled.
 */
const ROWS = [
  ['0 A', '5.00 V', '0.1 W'],
  ['0.5 A', '5.00 V', '3.4 W'],
  ['1 A', '5.00 V', '6.5 W'],
  ['1.5 A', '5.00 V', '9.8 W'],
  ['2 A', '5.00 V', '13.4 W'],
  ['2.2 A', '4.00 V', '13.0 W'],
] as const;

type Spots = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'spots' }>;
const read = (id: string, amperes: string, value: string, more: Partial<Spots['under']> = {}): Spots => ({
  id,
  kind: 'spots',
  under: { ...WARM, ambient: '40 °C ± 0 K', loads: [{ port: 'usb', level: '5v', draws: amperes }], ...more },
  rows: [{ id: 'one', place: 'coil', value, by: 'contact' }],
});
const COIL: PlaceInput = { id: 'coil', name: 'winding', part: 't1', windingClass: 'B' };
const judged = (spots: readonly Spots[], more: Partial<CaseInput> = {}): Assessment =>
  judge({
    instruments: [plainMeter('0.001 V', { uAmpere: '0.0001 A', uWatt: '0.001 W' })],
    days: [PLAIN_DAY],
    ports: [usbPort('2 A')],
    parts: [{ id: 't1', ref: 'T1', kind: 'transformer' }],
    places: [COIL],
    exhibits: [sweep(ROWS), ...spots],
    ...more,
  });
const winding = (assessment: Assessment): Finding => assessment.findings.find(({ id }) => id === 'fire/winding-temperature@coil')!;
const celsiusOf = ({ measured }: Finding): number => (measured !== null && 'value' in measured ? measured.value - 273.15 : Number.NaN);

describe('a part that was read at half of the claim', () => {
  it('is carried to the claim that the unit holds: 20 K at 1.5 W become 20 × (3.4/1.5)^0.9 K at 3.4 W', () => {
    const finding = winding(judged([read('half', '1 A', '60 °C ± 1 K')]));
    expect(celsiusOf(finding)).toBeCloseTo(40 + 20 * (3.4 / 1.5) ** 0.9, 6);
    expect(finding).toMatchObject({ state: 'labelLoad', outcome: 'pass' });
    expect(noteKeys(finding)).toContain('carriedByRule');
  });

  it('carries a wider doubt with it, that of the exponent: 0.15/√3 of ln(3.4/1.5) of the rise', () => {
    const finding = winding(judged([read('half', '1 A', '60 °C ± 0 K')]));
    const rise = 20 * (3.4 / 1.5) ** 0.9;
    const u = finding.measured !== null && 'u' in finding.measured ? finding.measured.u! : 0;
    expect(u).toBeGreaterThan(rise * Math.log(3.4 / 1.5) * (0.15 / Math.sqrt(3)) * 0.999);
  });

  it('fails where even the carried one does', () => {
    expect(winding(judged([read('half', '1 A', '85 °C ± 1 K')]))).toMatchObject({ outcome: 'fail', state: 'labelLoad' });
  });
});

describe('a part that was read at two lesser loads', () => {
  it('tells by itself how its rise follows the loss: 15 K at 0.9 W and 25 K at 1.5 W are in proportion', () => {
    const finding = winding(judged([read('quarter', '0.5 A', '55 °C ± 0.5 K'), read('half', '1 A', '65 °C ± 0.5 K')]));
    expect(celsiusOf(finding)).toBeCloseTo(40 + 25 * (3.4 / 1.5), 6);
    expect(noteKeys(finding)).toContain('carriedByTwoLoads');
  });
});

describe('nothing is carried', () => {
  it.each<[string, readonly Spots[], Partial<CaseInput>]>([
    ['farther than two and a half times the loss', [read('light', '0.5 A', '50 °C ± 1 K')], {}],
    ['from a reading before the heat had settled', [read('early', '1 A', '60 °C ± 1 K', { minutes: '10 min' })], {}],
    [
      'where nobody read the input',
      [read('half', '1 A', '60 °C ± 1 K')],
      { exhibits: [sweep(ROWS.map(([i, v]) => [i, v])), read('half', '1 A', '60 °C ± 1 K')] },
    ],
    [
      'to what a unit with two outputs might do',
      [read('half', '1 A', '60 °C ± 1 K')],
      { ports: [usbPort('2 A'), { ...usbPort('1 A'), id: 'other' }] },
    ],
  ])('%s', (_, spots, more) => {
    const finding = winding(judged(spots, more));
    expect(noteKeys(finding)).not.toContain('carriedByRule');
    expect(finding.outcome).not.toBe('pass');
  });

  it('where the part was read at that load: a reading outranks what is worked out', () => {
    const finding = winding(judged([read('half', '1 A', '60 °C ± 1 K'), read('full', '2 A', '75 °C ± 1 K')]));
    expect(celsiusOf(finding)).toBeCloseTo(75, 6);
  });

  it('to a claim that it does not hold: it goes to the most that it holds, and says so', () => {
    const finding = winding(judged([read('near', '1.5 A', '70 °C ± 1 K')], { ports: [usbPort('3 A')] }));
    expect(finding.state).toBe('worstSustained');
  });

  it('of what a hand touches, which counts as it was read', () => {
    const assessment = judged(
      [{ ...read('half', '1 A', '60 °C ± 1 K'), rows: [{ id: 'one', place: 'face', value: '50 °C ± 1 K', by: 'contact' }] }],
      {
        places: [COIL, { id: 'face', name: 'outer face', outside: true, material: 'plastic' }],
      },
    );
    const face = assessment.findings.find(({ check }) => check === 'burn/enclosure-temperature')!;
    expect(noteKeys(face)).not.toContain('carriedByRule');
  });

  it('with the lid off it stays a bound from below', () => {
    expect(winding(judged([read('half', '1 A', '60 °C ± 1 K', { cover: 'open' })])).outcome).toBe('inconclusive');
  });
});
