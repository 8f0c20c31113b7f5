import { describe, expect, it } from 'vitest';
import { lineThrough } from '../../../src/core/working/load/line-through.ts';

// JCGM 100:2008, H.3, table H.6: readings of a thermometer and the corrections found there, in °C; t0 = 20 °C.
const CALIBRATION: readonly (readonly [reading: number, correction: number])[] = [
  [21.521, -0.171],
  [22.012, -0.169],
  [22.512, -0.166],
  [23.003, -0.159],
  [23.507, -0.164],
  [23.999, -0.165],
  [24.513, -0.156],
  [25.002, -0.157],
  [25.503, -0.159],
  [26.01, -0.161],
  [26.511, -0.16],
];

describe('the straight line through a calibration, JCGM 100:2008 H.3', () => {
  const line = lineThrough(
    CALIBRATION.map(([x, y]) => ({ x, y })),
    20,
  );

  it('has the intercept at 20 °C that is printed: −0.1712 °C', () => expect(line?.atX0).toBeCloseTo(-0.1712, 4));
  it('has the slope that is printed: 0.00218', () => expect(line?.slope).toBeCloseTo(0.00218, 5));
  it('predicts the correction at 30 °C that is printed: −0.1494 °C', () => expect(line!.atX0 + line!.slope * 10).toBeCloseTo(-0.1494, 4));
  it('needs two different places', () => {
    expect(lineThrough([{ x: 1, y: 2 }])).toBeNull();
    expect(
      lineThrough([
        { x: 1, y: 2 },
        { x: 1, y: 3 },
      ]),
    ).toBeNull();
  });
});
