import { expect, it } from 'vitest';
import { lifeFromNew } from '../../../src/core/formula/endurance/life-from-new.ts';

const HOUR_S = 3600;
const lifeAt = (celsius: number): number =>
  lifeFromNew.compute({ rated: 1000 * HOUR_S, ratedTemperature: 378.15, around: celsius + 273.15, ratedHeating: 5, heating: 5 }) / HOUR_S;

it('eight hours each at 45, 55 and 65 °C wear as much as 57.2 °C all day (COSEL technical note 100)', () => {
  const used = [45, 55, 65].reduce((sum, celsius) => sum + 8 / lifeAt(celsius), 0); // Miner: shares of life add up
  const life = 24 / used;
  expect(life).toBeCloseTo(27_429, -1);
  expect(105 - 10 * Math.log2(life / 1000)).toBeCloseTo(57.2, 1);
  expect(lifeAt(57.2)).toBeCloseTo(life, -3);
});

it('no life beyond fifteen years is promised, and none of a room below 40 °C', () => {
  expect(lifeAt(40)).toBe(lifeAt(20));
  expect(lifeFromNew.compute({ rated: 10_000 * HOUR_S, ratedTemperature: 378.15, around: 313.15, ratedHeating: 5, heating: 0 })).toBe(
    15 * 8766 * HOUR_S,
  );
});
