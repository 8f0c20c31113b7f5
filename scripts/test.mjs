// npm test: every check, in one run, cheap parts first. Starts without node_modules. The last line is "N passed, N failed, N skipped".
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preparePackages, prepareSystem, ROOT, run } from './prepare.mjs';

const count = { passed: 0, failed: 0, skipped: 0 };

function step(title, work) {
  console.log(`\n== ${title}`);
  const ok = work();
  count[ok ? 'passed' : 'failed'] += 1;
  if (!ok) console.log(`== failed: ${title}`);
  return ok;
}

const bin = (name) => join(ROOT, 'node_modules', '.bin', name);

if (step('npm packages', preparePackages)) {
  step('system packages', prepareSystem);
  step('types', () => run(bin('tsc'), ['-p', 'tsconfig.json']) && run(bin('tsc'), ['-p', 'tsconfig.web.json']));
  step('lint and format', () => run(bin('biome'), ['check', '.']));
  step('build', () => build({ force: true }));
  step('no finding of the golden cases moved', () => run(bin('tsx'), ['scripts/golden.ts', '--check']));
  const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-test-'));
  const counts = join(folder, 'counts.json');
  const args = ['run', ...process.argv.slice(2).filter((word) => word !== '--quick')];
  const ran = run(bin('vitest'), args, { env: { ...process.env, MAINSWORTHY_COUNTS: counts } });
  try {
    const tests = JSON.parse(readFileSync(counts, 'utf8'));
    for (const key of Object.keys(count)) count[key] += tests[key];
    if (!ran && tests.failed === 0) count.failed += 1; // the runner itself failed
  } catch {
    console.log('the test runner wrote no counts');
    count.failed += 1;
  }
  rmSync(folder, { recursive: true, force: true });
}

console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`);
process.exitCode = count.failed === 0 && count.passed > 0 ? 0 : 1;
