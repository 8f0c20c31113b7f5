// node scripts/matrix.mjs: the test suite on the other supported versions of Node.js, each fetched as a package into a folder of its own. Not part of npm test.
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { preparePackages, ROOT, run } from './prepare.mjs';

const VERSIONS = ['22', '24'];
let ok = preparePackages();
for (const version of VERSIONS) {
  const folder = mkdtempSync(join(tmpdir(), `mainsworthy-node-${version}-`));
  const name = `node-${process.platform}-${process.arch}`;
  if (!run('npm', ['install', '--no-save', '--prefix', folder, `${name}@${version}`])) {
    console.error(`Node.js ${version} could not be installed`);
    ok = false;
    continue;
  }
  const node = join(folder, 'node_modules', name, 'bin', 'node');
  if (!existsSync(node)) throw new Error(`${node} is missing`);
  console.log(`\n== Node.js ${version}`);
  // the command that the tests start must be that version too
  ok = run(node, [join(ROOT, 'node_modules', 'vitest', 'vitest.mjs'), 'run']) && ok;
  rmSync(folder, { recursive: true, force: true });
}
process.exitCode = ok ? 0 : 1;
