/** Writes the demo cases into examples/. `--check` writes nothing and exits 1 when a file differs from what the models say. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { DemoCase } from './demo/demo-unit.ts';
import { beck } from './demo/unit/beck.ts';
import { fell } from './demo/unit/fell.ts';
import { moss } from './demo/unit/moss.ts';
import { tarn } from './demo/unit/tarn.ts';

export const DEMO_CASES: Readonly<Record<string, () => DemoCase>> = {
  'beck-5': () => beck(),
  'fell-12': () => fell(),
  'moss-trio': () => moss(),
  'tarn-30': () => tarn(),
};

/** Every file of examples/ with the bytes it should have. */
export function exampleFiles(): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  for (const [name, make] of Object.entries(DEMO_CASES)) {
    const { document, files: attached } = make();
    files.set(join('examples', name, 'case.json'), new TextEncoder().encode(`${JSON.stringify(document, null, 2)}\n`));
    for (const [path, bytes] of Object.entries(attached)) files.set(join('examples', name, path), bytes);
  }
  return files;
}

if (process.argv[1]?.endsWith('examples.ts')) {
  const check = process.argv.includes('--check');
  for (const [path, bytes] of exampleFiles()) {
    const same = existsSync(path) && Buffer.compare(readFileSync(path), bytes) === 0;
    if (same) continue;
    if (check) {
      console.error(`${path} differs from its model; run npm run examples`);
      process.exitCode = 1;
    } else {
      mkdirSync(join(path, '..'), { recursive: true });
      writeFileSync(path, bytes);
      console.log(path);
    }
  }
}
