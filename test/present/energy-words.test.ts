import { describe, expect, it } from 'vitest';
import { energyText } from '../../src/present/words/energy-words.ts';

describe('the energy to reckon with', () => {
  it('is a bound that no unit of this size reaches, until the board is read', () => {
    expect(energyText({ stored: null })).toBe('Board not read: assume up to 7 J at 373 V.');
  });

  it('is what the parts of this unit can hold at the highest mains, with the doubt of the capacitance on top', () => {
    const stored = { energy: { value: 1.53, unit: 'J', u: 0.15 }, crest: { value: 373.35, unit: 'V', u: 0 }, parts: ['C1'], step: 'x' };
    expect(energyText({ stored })).toMatch(/^C1 can hold up to 1\.83\u00a0J at 373\u00a0V, for hours\.$/);
  });
});
