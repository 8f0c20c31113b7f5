import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { decode } from '../../src/cli/command/decode.ts';
import { Refused } from '../../src/cli/output.ts';

let printed = '';
beforeEach(() => {
  printed = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    printed += String(text);
    return true;
  });
});
afterEach(() => vi.restoreAllMocks());

async function refusalsOf(run: Promise<void>): Promise<readonly { readonly got: string; readonly expected: string }[]> {
  const error = await run.then(
    () => undefined,
    (thrown: unknown) => thrown,
  );
  if (!(error instanceof Refused)) throw new Error('nothing was refused');
  return error.refusals;
}

describe('the decode command', () => {
  test('prints a block a code, with value, grade of source and what settles it', async () => {
    await decode(['4K7', '10R'], {});
    const [first = '', second = ''] = printed.split('\n\n');
    expect(first).toContain('4K7\n  resistor, 4.7 kΩ, in E3');
    expect(first).toContain('IEC 60062');
    expect(second).toContain('10R: 2 meanings');
    expect(second).toContain('1.24 Ω, ± 1 %');
    expect(second).toContain('measure the resistance');
  });
  test('prints exactly an array in SI with --json', async () => {
    await decode(['104', '2n2'], { json: true, as: 'capacitor' });
    const parsed = JSON.parse(printed) as { code: string; readings: { value: number; unit: string }[]; settledBy: string[] }[];
    expect(parsed.map(({ code, readings, settledBy }) => [code, readings.map(({ value, unit }) => [value, unit]), settledBy])).toEqual([
      ['104', [[1e-7, 'F']], []],
      ['2n2', [[2.2e-9, 'F']], []],
    ]);
    expect(parsed.every((entry) => Object.keys(entry).join() === 'code,readings,settledBy')).toBe(true);
  });
  test('prints the other codes and then refuses each unknown one by name', async () => {
    const refusals = await refusalsOf(decode(['zz', '4K7', 'qq'], {}));
    expect(printed).toContain('4.7 kΩ');
    expect(refusals.map(({ got }) => got)).toEqual(['zz', 'qq']);
  });
  test('prints an empty array when no code is known', async () => {
    await refusalsOf(decode(['zz'], { json: true }));
    expect(JSON.parse(printed)).toEqual([]);
  });
  test('refuses a part that does not exist, before anything is printed', async () => {
    const [refusal] = await refusalsOf(decode(['4K7'], { as: 'valve' }));
    expect(refusal?.got).toBe('valve');
    expect(refusal?.expected).toContain('resistor, capacitor, inductor, diode');
    expect(printed).toBe('');
  });
  test('says in words what a safety class and a lopsided tolerance mean', async () => {
    await decode(['222M Y1 400V', '103Z', 'bn bk bk rd bn rd'], {});
    expect(printed).toContain('Y1 at 400 V: alone across double or reinforced insulation');
    expect(printed).toContain('−20 % +80 %');
    expect(printed).toContain('± 50 ppm/K');
  });
});
