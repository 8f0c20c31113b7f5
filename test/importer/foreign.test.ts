import { describe, expect, it } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';
import { Dice, makeLayout, rollChoice } from './layout-grammar.ts';

const text = (value: string) => new TextEncoder().encode(value);
const bytes = (...values: number[]) => Uint8Array.from([...values, ...Array.from({ length: 200 }, (_, i) => (i * 37) % 256)]);

describe('what is no text export is refused by what it is', () => {
  it.each<[string, Uint8Array]>([
    ['empty', new Uint8Array(0)],
    ['empty', text(' \r\n\n  ')],
    ['picture', bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a)],
    ['picture', bytes(0xff, 0xd8, 0xff, 0xe0)],
    ['picture', text('<svg xmlns="http://www.w3.org/2000/svg"></svg>')],
    ['pdf', text('%PDF-1.7\n1 0 obj')],
    ['spreadsheet', bytes(0x50, 0x4b, 0x03, 0x04)],
    ['spreadsheet', bytes(0xd0, 0xcf, 0x11, 0xe0)],
    ['binary', bytes(0x1f, 0x8b)],
    ['binary', Uint8Array.from({ length: 4000 }, (_, i) => (i * 7919) % 251)],
    ['lfs-pointer', text('version https://git-lfs.github.com/spec/v1\noid sha256:0\nsize 12345\n')],
    ['html', text('<!DOCTYPE html>\n<html><body>Not found</body></html>')],
    ['html', text('  <html lang="en">')],
    ['no-table', text('Dear Sir or Madam,\nthe measurements follow.\n')],
  ])('%s', (code, file) => {
    const refused = readInstrumentFile(file);
    expect(isRefusal(refused) && refused.code).toBe(code);
  });

  it('a table whose first heading begins with "BM" is no bitmap', () => {
    expect(isRefusal(readInstrumentFile(text('BM1 (V),BM2 (V),Time (s)\n1.5,2.5,0.5\n1.25,2.25,1.5\n')))).toBe(false);
  });
});

const ALPHABET = '0123456789.,;:\t\n\r"\' -+eE#[]()=/AVms°OLnaµ\u0000\ufeff';
const WORK_PER_BYTE = 4000; // nanoseconds: a generous bound that only a reading that hangs exceeds

describe('damaged files are read or refused, never a crash', () => {
  it('bytes at random', () => {
    const dice = new Dice(99);
    for (let i = 0; i < 400; i++) {
      const file = Uint8Array.from({ length: dice.below(600) }, () => dice.below(256));
      expect(() => readInstrumentFile(file)).not.toThrow();
    }
  });

  it('characters of instruments at random', () => {
    const dice = new Dice(5);
    for (let i = 0; i < 1500; i++) {
      const characters = Array.from({ length: dice.below(400) }, () => ALPHABET[dice.below(ALPHABET.length)]!);
      expect(() => readInstrumentFile(text(characters.join('')))).not.toThrow();
    }
  });

  it('exports with bytes changed, cut and doubled', () => {
    const dice = new Dice(31);
    for (let i = 0; i < 1500; i++) {
      const whole = makeLayout(dice, rollChoice(dice)).bytes;
      const damaged = [...whole];
      for (let n = dice.below(12); n >= 0; n--) {
        const at = dice.below(damaged.length);
        if (dice.chance(0.4)) damaged[at] = dice.below(256);
        else if (dice.chance(0.5)) damaged.splice(at, dice.below(20));
        else damaged.splice(at, 0, ...damaged.slice(at, at + dice.below(30)));
        if (damaged.length === 0) damaged.push(0);
      }
      expect(() => readInstrumentFile(Uint8Array.from(damaged))).not.toThrow();
    }
  });

  it.each([
    ['one endless line', '1,'.repeat(400_000)],
    ['quotes that never close', '"a,'.repeat(300_000)],
    ['a quote in every line', '1,"2\n'.repeat(150_000)],
    ['only line ends between two numbers', `1${'\n'.repeat(800_000)}2`],
    ['one wide row above many short ones', `${'1,'.repeat(60_000)}2\n${'1,2\n'.repeat(100_000)}`],
    ['one number of a million digits', `1,2\n${'9'.repeat(1_000_000)},3\n`],
    ['brackets without end', `${'('.repeat(200_000)},b\n1,2\n3,4\n`],
    ['blanks without end', `a${' '.repeat(500_000)}b\n1 2\n3 4\n`],
    ['a bracket before blanks without end', `a(${' '.repeat(400_000)}b,c (V)\n1,2\n3,4\n`],
    ['a section of blanks without end', `***${' '.repeat(400_000)}b\nx,y\n1,2\n3,4\n`],
    ['a key of blanks without end', `a${' '.repeat(400_000)}b,c,d\nk:${' '.repeat(400_000)}(\nx,y\n1,2\n3,4\n`],
    ['one quote far down', `${'1,2\n'.repeat(250_000)}"3",4\n`],
    ['quoted cells with line ends in one endless row', '"\n",'.repeat(200_000)],
    ['unit brackets without end', `x,y\n(${' '.repeat(400_000)}V,s\n1,2\n3,4\n`],
    ['equal signs without end', `a${'='.repeat(300_000)}\n1,2\n3,4\n`],
  ])('%s does not hang it', (_, content) => {
    const file = text(content);
    const start = process.hrtime.bigint();
    readInstrumentFile(file);
    expect(Number(process.hrtime.bigint() - start) / file.length).toBeLessThan(WORK_PER_BYTE);
  });
});
