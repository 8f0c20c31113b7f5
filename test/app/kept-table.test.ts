import { describe, expect, it } from 'vitest';
import { readKeptTable } from '../../src/app/kept-table.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';

const BYTES = new TextEncoder().encode('I (A),V (V)\n0.0,5.10\n0.5,5.05\n1.0,5.01\n');

describe('an answer that was given when a file came', () => {
  it('does no harm once the reader no longer asks: the case opens as it did', () => {
    const table = readKeptTable(BYTES, { settled: { 'a-question-of-long-ago': 'yes' } });
    expect(isRefusal(table)).toBe(false);
    expect(table).toEqual(readKeptTable(BYTES, {}));
  });

  it('is refused where somebody types it now and nothing asks for it', () => {
    expect(readInstrumentFile(BYTES, { 'a-question-of-long-ago': 'yes' })).toMatchObject({ code: 'settled-code' });
  });
});
