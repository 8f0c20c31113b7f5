import { describe, expect, it } from 'vitest';
import { FORMULAS } from '../../src/core/formula/registry.ts';
import { allowance, computeExample } from './compute-example.ts';
import { MISPRINTED, WORKED } from './examples.ts';
import type { WorkedExample } from './worked-example.ts';

const subject = (example: WorkedExample): string => ('formula' in example ? example.formula : example.table);
const title = (example: WorkedExample): string =>
  `${subject(example)} (${JSON.stringify(example.inputs)}): ${example.publication}, ${example.place}, prints ${example.printed} ${example.unit}`;

describe('printed figures come out as printed', () => {
  it.each(WORKED.map((example) => [title(example), example] as const))('%s', (_, example) => {
    expect(Math.abs(computeExample(example) - example.printed)).toBeLessThanOrEqual(allowance(example));
  });
});

describe('misprinted figures do not come out', () => {
  it.each(MISPRINTED.map((example) => [`${title(example)}, but ${example.wrongBecause}`, example] as const))('%s', (_, example) => {
    expect(Math.abs(computeExample(example) - example.printed)).toBeGreaterThan(allowance(example));
  });
});

describe('the list of printed figures', () => {
  it.each(FORMULAS.map(({ id }) => id))('holds a figure for %s that was not worked out here', (id) => {
    expect(WORKED.filter((example) => 'formula' in example && example.formula === id && example.origin !== 'own').length).toBeGreaterThan(
      0,
    );
  });

  it('says each thing once', () => {
    const titles = WORKED.map(title);
    expect(titles.filter((one, index) => titles.indexOf(one) !== index)).toEqual([]);
  });

  it('gives every figure a place and every tolerance a reason', () => {
    for (const { place, because, publication } of WORKED) {
      expect(place).not.toBe('');
      expect(because).not.toBe('');
      expect(publication).not.toBe('');
    }
  });

  it('allows no tolerance that would hide a wrong factor', () => {
    const WIDEST = 0.02; // share of the figure; a factor of √2, a lost 2π or a slipped decimal is far outside
    for (const example of WORKED) expect(example.tolerance, title(example)).toBeLessThanOrEqual(WIDEST * Math.abs(example.printed));
  });
});
