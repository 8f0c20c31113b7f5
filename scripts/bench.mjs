// npm run bench: figures to read, never a gate.
import { join } from 'node:path';
import { build, preparePackages, ROOT, run } from './prepare.mjs';

const scripts =
  process.argv.slice(2).length > 0
    ? process.argv.slice(2)
    : ['bench/assess.ts', 'bench/solver/accuracy.ts', 'bench/solver/speed.ts', 'bench/solver/campaign.ts'];
process.exitCode =
  preparePackages() && build() && scripts.every((script) => run(join(ROOT, 'node_modules', '.bin', 'tsx'), [script])) ? 0 : 1;
