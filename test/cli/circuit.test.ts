import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { mainsworthy } from './run-command.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'mainsworthy-circuit-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('trace', () => {
  test('says what the lines make, and refuses single lines with their number after that', async () => {
    const path = join(folder, 'board.txt');
    await writeFile(path, 'mains: L, N\nJ1: L=L, N=N\nF1: L, L1\nR1 4u7: L1, N\nBD1: ~1=L1, ~2=N, +=P, -=M\nEC1 10uF 400V: P, M\n');
    const { code, out, err } = await mainsworthy(['trace', path]);
    expect(code).toBe(1);
    expect(out).toContain('Only the input was recognised: behind a bridge.');
    expect(out).toMatch(/EC1\s+stores the rectified mains \(between P and M; with BD1\)/);
    expect(err.trim()).toBe('line 4: got "4u7", expected a resistance such as 4k7 or 100 kΩ');
  });
  test('--json prints parts and conductors as a case holds them', async () => {
    const path = join(folder, 'two.txt');
    await writeFile(path, 'mains: L\nR1 1k 5%: L, A\n');
    const { code, out } = await mainsworthy(['trace', path, '--json']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual({
      parts: [
        {
          id: 'r1',
          ref: 'R1',
          kind: 'resistor',
          value: '1k',
          rating: { tolerance: '5%' },
          pins: [
            { pin: '1', net: 'l' },
            { pin: '2', net: 'a' },
          ],
        },
      ],
      conductors: [
        { id: 'l', name: 'L', side: 'mains' },
        { id: 'a', name: 'A', side: 'mains' },
      ],
    });
  });
  test('a file that is not there is one sentence', async () => {
    const { code, err } = await mainsworthy(['trace', join(folder, 'none.txt')]);
    expect(code).toBe(1);
    expect(err).toContain('a text file of circuit lines');
  });
});

describe('schematic', () => {
  test('writes one SVG file that loads nothing, the same bytes twice', async () => {
    const [one, two] = [join(folder, 'one.svg'), join(folder, 'two.svg')];
    for (const out of [one, two]) expect((await mainsworthy(['schematic', 'examples/fell-12', '-o', out])).code).toBe(0);
    const svg = await readFile(one, 'utf8');
    expect(svg).toBe(await readFile(two, 'utf8'));
    for (const text of ['T1', 'P 72', 'tied to the mains', 'can be touched', 'data-part="u2"']) expect(svg).toContain(text);
    expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:|url\(|<image|<script/);
  });
  test('writes a sheet for a browser to print where the name asks for one, and says so; a paper that is none is refused', async () => {
    const out = join(folder, 'sheet.html');
    const { code, out: said } = await mainsworthy(['schematic', 'examples/fell-12', '-o', out, '--paper', 'a3']);
    expect(code).toBe(0);
    expect(said).toContain('print it there');
    const page = await readFile(out, 'utf8');
    expect(page).toContain('@page{size:A3 landscape');
    expect(page).toContain('default-src &#39;none&#39;');
    expect(page).not.toMatch(/<script|<link|<img/);
    const refused = await mainsworthy(['schematic', 'examples/fell-12', '-o', out, '--paper', 'B5']);
    expect(refused.code).toBe(1);
    expect(refused.err).toContain('A4 or A3');
  });
  test('writes one page of a PDF where the name asks for one, on the paper that is asked for', async () => {
    const out = join(folder, 'page.pdf');
    const { code, out: said } = await mainsworthy(['schematic', 'examples/fell-12', '-o', out, '--paper', 'A3']);
    expect(code).toBe(0);
    expect(said.trim()).toBe(`schematic written to ${out}`);
    const file = await readFile(out, 'latin1');
    expect(file.slice(0, 8)).toBe('%PDF-1.7');
    expect(file).toMatch(/\/MediaBox \[0 0 1190\.5\d* 841\.8\d*\]/); // ISO 216: 420 mm by 297 mm, in points
    expect(file.trimEnd().endsWith('%%EOF')).toBe(true);
  });
  test('a case without a traced circuit is refused', async () => {
    const { code, err } = await mainsworthy(['schematic', 'examples/moss-trio', '-o', join(folder, 'none.svg')]);
    expect(code).toBe(1);
    expect(err).toContain('a case whose parts have pins on common nets');
  });
});
