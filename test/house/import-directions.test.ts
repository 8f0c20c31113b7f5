import { dirname, join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesBelow, importsOf } from './read-tree.ts';

/** Which room may import which (docs/decisions/0002-rooms.md). A room may always import itself. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  'core/quantity': [],
  'core/source': ['core/quantity'],
  'core/trace': ['core/quantity', 'core/source'],
  // what was read and what came of it, of any objects: it knows nothing of evidence
  'core/recall': [],
  'core/uncertainty': ['core/quantity', 'core/source', 'core/trace'],
  'core/formula': ['core/quantity', 'core/source', 'core/trace'],
  'core/table': ['core/quantity', 'core/source', 'core/trace'],
  'core/marking': ['core/quantity', 'core/source', 'core/trace'],
  'core/circuit': ['core/quantity', 'core/source', 'core/trace', 'core/uncertainty', 'core/formula', 'core/table', 'core/marking'],
  'core/solver': ['core/quantity', 'core/source', 'core/trace', 'core/formula', 'core/circuit'],
  'solver-pool': ['core/solver', 'core/quantity'],
  'drawing-pool': ['app'],
  'core/evidence': ['core/quantity', 'core/source'],
  importer: ['core/quantity'],
  // slow results are worked out when somebody asks, never while judging: only app may call it
  'core/fit': ['core/quantity', 'core/uncertainty', 'core/evidence'],
  'core/result': ['core/quantity', 'core/source'],
  'core/working': [
    'core/recall',
    'core/quantity',
    'core/source',
    'core/trace',
    'core/uncertainty',
    'core/formula',
    'core/table',
    'core/marking',
    'core/circuit',
    'core/evidence',
    'importer',
  ],
  // a traced circuit as the solver runs it; never runs one
  'core/model': [
    'core/quantity',
    'core/source',
    'core/trace',
    'core/formula',
    'core/table',
    'core/circuit',
    'core/solver',
    'core/evidence',
    'core/working',
  ],
  'core/check': [
    'core/recall',
    'core/quantity',
    'core/source',
    'core/trace',
    'core/uncertainty',
    'core/formula',
    'core/table',
    'core/evidence',
    'core/working',
    'core/result',
  ],
  'core/assess': [
    'core/recall',
    'core/quantity',
    'core/source',
    'core/trace',
    'core/uncertainty',
    'core/formula',
    'core/table',
    'core/evidence',
    'core/working',
    'core/check',
    'core/model',
    'core/result',
  ],
  present: ['core/quantity', 'core/source', 'core/circuit', 'core/result', 'core/evidence', 'core/check/bench-set.ts'],
  app: [
    'core/assess',
    'core/circuit',
    'core/fit',
    'core/model',
    'core/solver',
    'solver-pool',
    'core/quantity',
    'core/evidence',
    'core/result',
    'core/working',
    'importer',
    'present',
  ],
  // figures of present on sheets of paper; loaded when one is asked for
  paper: ['present', 'core/result'],
  store: ['app', 'core/quantity', 'core/result'],
  server: ['app', 'present', 'paper', 'importer', 'core/quantity'],
  // the page: shapes of what the server answers, words and figures of the report, how quantities are typed; never the judge or a disk
  web: [
    'present',
    'core/quantity',
    'core/result/assessment.ts',
    'importer/describe.ts',
    ...['apply-changes', 'case-state', 'casebook-store', 'change', 'desk', 'pad-edit'].map((name) => `app/casebook/${name}.ts`),
  ],
  // the command line chooses the concrete store
  cli: [
    'app',
    'present',
    'paper',
    'store',
    'server',
    'drawing-pool',
    'importer',
    'core/quantity',
    'core/result',
    'core/assess',
    'core/marking',
    'core/source',
  ],
};

/** Packages from outside, by room: the core takes none that touches a disk, a clock or a network. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  'core/solver': ['ml-matrix'],
  'solver-pool': ['piscina'],
  'drawing-pool': ['piscina'],
  'core/evidence': ['zod', 'fastest-levenshtein'],
  'core/fit': ['ml-levenberg-marquardt', 'ml-matrix'],
  'core/result': ['zod', '@noble/hashes/sha2.js', '@noble/hashes/utils.js'],
  present: ['d3-scale', 'd3-array', 'fastest-levenshtein', 'zod', 'elkjs/lib/elk.bundled.js'],
  paper: ['pdfkit'],
  app: ['jsonc-parser', 'zod', 'yazl', 'yauzl', 'node:stream', 'node:crypto'],
  cli: ['commander', 'picocolors', 'uqr', 'node:fs/promises', 'node:os', 'node:path', 'node:url', 'node:v8'],
  server: [
    'hono',
    'hono/body-limit',
    'hono/cookie',
    'hono/http-exception',
    'hono/streaming',
    '@hono/node-server',
    '@hono/zod-openapi',
    'sharp',
    'uqr',
    'exifr',
    'node:crypto',
    'node:events',
    'node:fs',
    'node:fs/promises',
    'node:http',
    'node:os',
    'node:path',
    'node:stream/web',
    'node:timers/promises',
  ],
  web: ['react', 'react-dom/client', 'react-aria-components'],
  store: [
    'node:fs',
    'node:fs/promises',
    'node:path',
    'node:crypto',
    'node:stream',
    'node:stream/promises',
    'node:timers/promises',
    'better-sqlite3',
    'kysely',
  ],
};
/** Scripts that live beside what they make, and are no part of the room. */
const SCRIPTS = ['src/present/report/fonts/', 'src/paper/fonts/'];

function roomOf(path: string): string {
  const inside = relative('src', path);
  const parts = inside.split('/');
  return parts[0] === 'core' ? `core/${parts[1]}` : parts[0]!;
}

/** Of these the page takes types alone: what they do belongs to the server, and would bring the disk or the reader of files along. */
const TYPES_ONLY_IN_WEB = [
  'src/core/result/assessment.ts',
  'src/importer/describe.ts',
  'src/app/casebook/casebook-store.ts',
  'src/app/casebook/desk.ts',
  'src/app/casebook/pad-edit.ts',
];

describe('the house', () => {
  test('what the page takes from the desk, the port, the importer and the Assessment is types', () => {
    const wrong = filesBelow('src/web', ['.ts', '.tsx']).flatMap(({ path, text }) =>
      [...text.matchAll(/(?:^|\n)\s*(?:import|export)\b([^;]*?)\bfrom\s+'([^']+)'/g)]
        .filter(([, what, from]) => TYPES_ONLY_IN_WEB.includes(join(dirname(path), from ?? '')) && !/^\s+type\b/.test(what ?? ''))
        .map(([, , from]) => `${path} takes code of ${from}`),
    );
    expect(wrong).toEqual([]);
  });

  const files = filesBelow('src', ['.ts', '.tsx']);

  test('has files to look at', () => expect(files.length).toBeGreaterThan(100));

  test.each([...new Set(files.map(({ path }) => roomOf(path)))].sort())('%s imports only what it may', (room) => {
    const wrong: string[] = [];
    const allowed = MAY_IMPORT[room];
    if (allowed === undefined) throw new Error(`${room} is a room without a row in the table of import directions`);
    for (const file of files) {
      if (roomOf(file.path) !== room || SCRIPTS.some((script) => file.path.startsWith(script) && file.path.endsWith('.mjs'))) continue;
      for (const specifier of importsOf(file)) {
        if (!specifier.startsWith('.')) {
          if (!(PACKAGES[room] ?? []).includes(specifier)) wrong.push(`${file.path} imports the package ${specifier}`);
          continue;
        }
        const target = join(dirname(file.path), specifier);
        const there = roomOf(target);
        if (there !== room && !allowed.some((one) => one === there || target === join('src', one)))
          wrong.push(`${file.path} imports ${there}`);
      }
    }
    expect(wrong).toEqual([]);
  });
});
