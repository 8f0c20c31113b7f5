import { describe, expect, it } from 'vitest';
import { SUBSTANCES } from '../../../src/core/evidence/sample.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { materialTemperature } from '../../../src/core/table/plastics-makers/2026/material-temperature.ts';
import { findingOf, findingsOf, judge } from '../build-case.ts';
import { HOT_ROOM } from '../component-rows.ts';
import { type PlaceInput, spot, usbPort } from '../evidence-pieces.ts';

// Long-term temperatures by substance: memory; PVC wire 105 °C at the most: a published test report (secondary).
const CHECK = 'fire/material-temperature';
type Under = NonNullable<Parameters<typeof spot>[2]>['under'];
const judged = (place: Partial<PlaceInput>, value: string, under: Under = HOT_ROOM): Finding[] =>
  findingsOf(
    judge({
      ports: [usbPort()],
      places: [{ id: 'tape', name: 'tape over the core', ...place }],
      exhibits: [spot('tape', value, { under })],
    }),
    CHECK,
  );

describe('a plastic, a tape, a sleeve or a wire near what is hot', () => {
  it('with one figure (polyester tape, 130 °C): at it undecided, 2 K below passes, 2 K above fails without a headline, for it is memory', () => {
    const place = { substance: 'polyesterTape' } as const;
    expect(judged(place, '130 °C ± 2 K')).toMatchObject([{ outcome: 'inconclusive', reason: 'withinUncertainty' }]);
    expect(judged(place, '128 °C ± 2 K')).toMatchObject([{ outcome: 'pass', limit: { name: 'ofItsKind', grade: 'memory' } }]);
    expect(judged(place, '132 °C ± 2 K')).toMatchObject([{ outcome: 'fail', consequence: 'injurious', headline: false }]);
  });

  it('with a span (polycarbonate, 80 to 130 °C): passes below, fails above, open between', () => {
    const place = { substance: 'polycarbonate' } as const;
    expect(judged(place, '78 °C ± 2 K')).toMatchObject([{ outcome: 'pass', limit: { name: 'lowestRating' } }]);
    expect(judged(place, '100 °C ± 2 K')).toMatchObject([{ outcome: 'inconclusive', reason: 'unknownValue' }]);
    expect(judged(place, '133 °C ± 2 K')).toMatchObject([{ outcome: 'fail', limit: { name: 'highestRating' } }]);
  });

  it('with its temperature printed on it is held against that, whatever it is', () => {
    for (const place of [{ bears: '105 °C' }, { bears: '105 °C', substance: 'glassSleeve' }] as const) {
      expect(judged(place, '103 °C ± 2 K')).toMatchObject([
        { outcome: 'pass', limit: { name: 'ratedTemperature', grade: 'official-text' } },
      ]);
      expect(judged(place, '107 °C ± 2 K')).toMatchObject([{ outcome: 'fail', headline: true }]);
    }
  });

  it('of which nobody could tell what it is lies between the worst and the best there is', () => {
    const place = { substance: { state: 'unknown', because: 'no mark, does not smell' } } as const;
    expect(judged(place, '45 °C ± 1 K')[0]!.outcome).toBe('pass');
    expect(judged(place, '120 °C ± 1 K')[0]!.outcome).toBe('inconclusive');
    expect(judged(place, '205 °C ± 1 K')[0]!.outcome).toBe('fail');
  });

  it('seen with the lid off can fail and never pass, and one that nobody named asks nothing', () => {
    expect(judged({ substance: 'polyesterTape' }, '60 °C ± 1 K', { ...HOT_ROOM, cover: 'open' })[0]!.outcome).toBe('inconclusive');
    expect(judged({}, '150 °C ± 1 K')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(judged({ substance: { state: 'absent', because: 'bare' } }, '150 °C')).toMatchObject([{ outcome: 'notAssessed' }]);
  });

  it('every substance that a case can name has its row', () => {
    expect(materialTemperature.rows.map(([key]) => key).sort()).toEqual([...SUBSTANCES, 'any'].sort());
  });
});

describe('a winding whose resistance was read cold and hot', () => {
  // 2.00 Ω at 25 °C, 2.60 Ω hot: (2.6/2.0)(234.5 + 25) − 234.5 = 102.85 °C by hand
  const winding = (hot: string, resistance: object = {}): Finding =>
    findingOf(
      judge({
        ports: [usbPort()],
        parts: [{ id: 't1', ref: 'T1', kind: 'transformer' }],
        places: [{ id: 'winding', name: 'winding', part: 't1', windingClass: 'B' }],
        exhibits: [
          {
            id: 'spots-1',
            kind: 'spots',
            under: HOT_ROOM,
            rows: [
              {
                id: 'w',
                place: 'winding',
                value: { state: 'notLooked' },
                by: 'resistance',
                resistance: { cold: '2.00 Ω ± 0.005 Ω', coldAt: '25 °C ± 0.5 K', hot, ...resistance },
              },
            ],
          },
        ],
      }),
      'fire/winding-temperature@winding',
    );

  it('has the mean temperature that copper tells, against the limit for means, 10 K above that for a thermocouple', () => {
    const finding = winding('2.60 Ω ± 0.005 Ω');
    expect(finding.measured).toMatchObject({ value: expect.closeTo(102.85 + 273.15, 6) });
    expect(finding).toMatchObject({ outcome: 'pass', limit: { name: 'windingClass' } });
    expect(finding.limit!.at).toMatchObject({ value: 120 + 273.15 });
    expect(winding('2.85 Ω ± 0.005 Ω').outcome).toBe('fail'); // 135.3 °C
  });

  it('is not worked out from two readings', () => {
    expect(winding('2.60 Ω', { coldAt: { state: 'notLooked' } })).toMatchObject({ outcome: 'notAssessed', reason: 'notLooked' });
  });
});
