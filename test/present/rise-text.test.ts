import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/core/result/assessment.ts';
import { riseText } from '../../src/present/words/rise-text.ts';

const AMBIENT_K = 313.15;
const told = (found: number, permitted: number, side?: 'above' | 'below'): string =>
  riseText({
    rise: { found, permitted, ambient: AMBIENT_K },
    measured: { value: AMBIENT_K + found, unit: 'K', u: side === undefined ? 1 : null, ...(side === undefined ? {} : { side }) },
  } satisfies Pick<Finding, 'rise' | 'measured'>);

describe('the two rises of a temperature', () => {
  it('stand in whole kelvin', () => expect(told(91.3, 70)).toBe('rise 91 of 70\u00a0K'));
  it('get a decimal where whole kelvin would make them equal', () => expect(told(70.3, 70)).toBe('rise 70.3 of 70.0\u00a0K'));
  it('a bound stays a bound', () => expect(told(91, 70, 'above')).toBe('rise above 91 of 70\u00a0K'));
  it('colder than the room has a true minus', () => expect(told(-2.1, 52)).toBe('rise \u22122.1 of 52.0\u00a0K'));
  it('what is no temperature has none', () => expect(riseText({ measured: { word: 'open' } })).toBe(''));
});
