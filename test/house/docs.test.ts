import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesBelow } from './read-tree.ts';

const PAGES = [
  ...filesBelow('docs', ['.md']),
  ...['README.md', 'CHANGELOG.md'].map((path) => ({ path, text: readFileSync(path, 'utf8') })),
];

/** The way a heading is linked to: lower case, spaces to hyphens, punctuation gone. */
function anchorsOf(text: string): Set<string> {
  const headings = text.matchAll(/^#{1,6}\s+(.+)$/gm);
  return new Set(
    [...headings].map((match) =>
      match[1]!
        .toLowerCase()
        .replace(/[^\p{L}\p{N} _-]/gu, '')
        .trim()
        .replace(/ /g, '-'),
    ),
  );
}

describe('the documentation', () => {
  test('has no dead link inside the project', () => {
    const dead: string[] = [];
    for (const { path, text } of PAGES) {
      for (const match of text.matchAll(/\]\(([^)\s]+)\)/g)) {
        const target = match[1]!;
        if (/^[a-z]+:/.test(target)) continue;
        const [file = '', anchor] = target.split('#');
        const there = file === '' ? path : normalize(join(dirname(path), file));
        if (!existsSync(there)) dead.push(`${path}: ${target}`);
        else if (anchor !== undefined && there.endsWith('.md') && !anchorsOf(readFileSync(there, 'utf8')).has(anchor))
          dead.push(`${path}: ${target}`);
      }
    }
    expect(dead).toEqual([]);
  });

  test('names only paths that exist', () => {
    const gone: string[] = [];
    for (const { path, text } of PAGES)
      for (const match of text.matchAll(/`((?:src|test|docs|scripts|examples|schema|bench)\/[\w./-]+)`/g))
        if (!existsSync(match[1]!.replace(/\/$/, ''))) gone.push(`${path}: ${match[1]}`);
    expect(gone).toEqual([]);
  });

  test('the first paragraph of the README states the job', () => {
    const readme = readFileSync('README.md', 'utf8');
    const paragraph = readme.split('\n\n')[1] ?? '';
    expect(paragraph).toMatch(/adapter/);
    expect(paragraph.length).toBeGreaterThan(200);
  });
  test('the lock file records no download addresses', () =>
    expect(readFileSync('package-lock.json', 'utf8')).not.toMatch(/"resolved": "http/));
});
