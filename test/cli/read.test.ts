import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { mainsworthy } from './run-command.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'mainsworthy-read-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function file(name: string, content: string | Uint8Array): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, content);
  return path;
}

describe('read', () => {
  test('says how a load sweep with decimal commas is understood', async () => {
    const { code, out } = await mainsworthy(['read', 'examples/fell-12/load-sweep-230.csv']);
    expect(code).toBe(0);
    expect(out).toContain('decimal comma');
    expect(out).toMatch(/U out\s+V\s+18/);
    expect(out).toContain('nothing left open');
  });

  test('--json prints the documented fields and no others', async () => {
    const { code, out, err } = await mainsworthy(['read', 'examples/tarn-30/sweep-5v-230.csv', '--json']);
    expect(code).toBe(0);
    expect(err).toBe('');
    const json = JSON.parse(out) as Record<string, unknown> & { columns: Record<string, unknown>[]; doubts: unknown[] };
    expect(Object.keys(json)).toEqual([
      'encoding',
      'separator',
      'decimalMark',
      'headerRows',
      'unitRow',
      'preamble',
      'rows',
      'timeStepS',
      'columns',
      'doubts',
    ]);
    expect(json.columns.map(({ name }) => name)).toEqual(['Time', 'Current', 'Voltage', 'Input power']);
    for (const column of json.columns)
      expect(Object.keys(column)).toEqual(['name', 'unit', 'count', 'missing', 'first', 'last', 'min', 'max', 'mean']);
    expect(json['rows']).toBe(12);
    expect(json['timeStepS']).toBe(8);
    expect(json.columns[2]).toMatchObject({ unit: 'V', count: 12, missing: 0 });
  });

  test('asks for what a scope file does not say, and takes the answer', async () => {
    const asked = await mainsworthy(['read', 'examples/tarn-30/capture.csv', '--json']);
    const before = JSON.parse(asked.out) as { timeStepS?: number; doubts: { code: string; answers: string[] }[] };
    expect(before.timeStepS).toBeUndefined();
    expect(before.doubts).toMatchObject([{ code: 'time-base' }]);
    expect(before.doubts[0]?.answers).toContain('s');
    const settled = await mainsworthy(['read', 'examples/tarn-30/capture.csv', '--settle', 'time-base=s', '--json']);
    const after = JSON.parse(settled.out) as { timeStepS?: number; doubts: unknown[] };
    expect(after.timeStepS).toBe(25e-9);
    expect(after.doubts).toEqual([]);
  });

  test('refuses an answer that is not one of the possible ones', async () => {
    const { code, err } = await mainsworthy(['read', 'examples/tarn-30/capture.csv', '--settle', 'time-base=fortnight']);
    expect(code).toBe(1);
    expect(err).toMatch(/fortnight/);
  });

  test.each([
    ['nothing at all', ''],
    ['a picture', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13])],
    ['a PDF', '%PDF-1.7\n1 0 obj\n'],
    ['a spreadsheet container', new Uint8Array([0x50, 0x4b, 3, 4, 20, 0, 6, 0, 8, 0])],
    ['a Git LFS pointer', 'version https://git-lfs.github.com/spec/v1\noid sha256:4d7a\nsize 12\n'],
    ['a web page', '<!DOCTYPE html><html><body>Sign in</body></html>'],
    ['bytes that are no text', Uint8Array.from({ length: 400 }, (_, index) => (index * 37) % 256)],
  ])('refuses %s in one sentence', async (what, content) => {
    const path = await file(`${what.replaceAll(' ', '-')}.csv`, content);
    const { code, out, err } = await mainsworthy(['read', path]);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(err).toContain(path);
  });

  test('a column in doubt is not used by the judge until the case settles it', async () => {
    const bytes = new TextEncoder().encode('Current (A),Voltage\n0.0,5.10\n0.5,5.05\n1.0,5.00\n1.5,4.95\n2.6,4.90\n');
    const { createHash } = await import('node:crypto');
    const sha256 = createHash('sha256').update(bytes).digest('hex');
    const document = (settled?: Record<string, string>) => ({
      format: 'mainsworthy-case/1',
      id: 'doubt',
      product: { id: 'doubt', name: 'Doubt' },
      sample: 'A',
      invented: true,
      setting: { market: 'EU' },
      days: [{ id: 'd', date: '2026-03-04', uses: {}, under: { mains: '230 V', frequency: '50 Hz' } }],
      ports: [{ id: 'usb', kind: 'usbA', levels: [{ id: '5v', voltage: '5 V', printed: '2 A' }] }],
      exhibits: [
        {
          id: 's',
          kind: 'sweep',
          day: 'd',
          port: 'usb',
          order: 'up',
          sense: 'socket',
          table: {
            file: 'f',
            columns: [
              { id: 'i', role: 'outputCurrent', from: 'Current' },
              { id: 'v', role: 'outputVoltage', from: 'Voltage' },
            ],
          },
        },
      ],
      files: [
        { id: 'f', path: 'sweep.csv', sha256, bytes: bytes.length, media: 'text/csv', ...(settled === undefined ? {} : { settled }) },
      ],
    });
    await file('sweep.csv', bytes);
    const verdictOf = async (settled?: Record<string, string>) => {
      await file('case.json', JSON.stringify(document(settled)));
      const { code, out, err } = await mainsworthy(['assess', folder, '--json']);
      expect(err).toBe('');
      expect(code).toBe(0);
      const assessment = JSON.parse(out) as { findings: { id: string; outcome: string }[]; warnings: { key: string }[] };
      return {
        outcome: assessment.findings.find(({ id }) => id === 'delivery/current@usb~5v')?.outcome,
        warnings: assessment.warnings.map(({ key }) => key),
      };
    };
    const open = await verdictOf();
    expect(open.outcome).toBe('notAssessed');
    expect(open.warnings).toContain('columnInDoubt');
    expect((await verdictOf({ 'unit:1': 'V' })).outcome).toBe('pass');
  });
});
