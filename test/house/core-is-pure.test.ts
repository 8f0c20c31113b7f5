import { describe, expect, test } from 'vitest';
import { codeOnly, filesBelow } from './read-tree.ts';

const FORBIDDEN: readonly { readonly what: string; readonly pattern: RegExp }[] = [
  {
    what: 'a power with ** that is not a whole number (engines differ; multiply, or use exp and log)',
    pattern: /\s\*\*(?!\s*-?\d+\b(?!\.))/,
  },
  { what: 'Math.pow', pattern: /Math\.pow/ },
  { what: 'Math.random', pattern: /Math\.random/ },
  { what: 'the clock', pattern: /\bnew Date\(\)|\bDate\.now\b|\bperformance\.now\b/ },
  { what: 'a disk or a process', pattern: /\bprocess\.|node:fs|node:child_process/ },
  { what: 'a network', pattern: /\bfetch\(|XMLHttpRequest|WebSocket/ },
  { what: 'a document', pattern: /\bdocument\.(?:get|query|create|body)|\bwindow\.(?:document|location|addEventListener)/ },
];

describe('the core', () => {
  const files = [...filesBelow('src/core', ['.ts']), ...filesBelow('src/importer', ['.ts'])];
  test.each(FORBIDDEN)('does without $what', ({ pattern }) => {
    const wrong = files.filter(({ text }) => pattern.test(codeOnly(text))).map(({ path }) => path);
    expect(wrong).toEqual([]);
  });
  test('is looked through: the patterns find what they look for', () => {
    expect(
      FORBIDDEN.every(({ pattern }) =>
        pattern.test('2 ** 0.5; Math.pow(); Math.random(); new Date(); process.exit(); fetch(); document.body'),
      ),
    ).toBe(true);
  });
});
