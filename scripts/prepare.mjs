// What a fresh machine needs, installed when it is missing; built-ins only, so that it runs before anything is there.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

/** Runs a program in the project with its output shown; true when it ended well. */
export function run(program, args, more = {}) {
  const result = spawnSync(program, args, { cwd: ROOT, stdio: 'inherit', ...more });
  return result.status === 0;
}

/** npm packages as the lock file says. */
export function preparePackages() {
  const lock = join(ROOT, 'package-lock.json');
  const installed = join(ROOT, 'node_modules', '.package-lock.json');
  if (existsSync(installed) && statSync(installed).mtimeMs >= statSync(lock).mtimeMs) return true;
  console.log('installing npm packages ...');
  return run('npm', ['ci', '--no-audit', '--no-fund']);
}

const SYSTEM = [
  { program: 'chromium', also: ['/usr/bin/chromium'], packages: ['chromium'], why: 'the report is opened in a real browser' },
  { program: 'pdfinfo', also: [], packages: ['poppler-utils'], why: 'the printed report is counted and looked at' },
  { program: 'ngspice', also: [], packages: ['ngspice'], why: 'the circuit solver is held against it' },
];

function has({ program, also }) {
  if (also.some((path) => existsSync(path))) return true;
  return spawnSync(program, ['--version'], { stdio: 'ignore' }).error === undefined;
}

/** Programs the tests need, from the distribution; says so and answers false where it may not install them. */
export function prepareSystem() {
  const missing = SYSTEM.filter((one) => !has(one));
  if (missing.length === 0) return true;
  const packages = missing.flatMap((one) => one.packages);
  const root = typeof process.getuid === 'function' && process.getuid() === 0;
  const apt = spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).error === undefined;
  if (root && apt) {
    console.log(`installing ${packages.join(', ')} ...`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const silent = { env, stdio: ['ignore', 'ignore', 'inherit'] };
    if (
      run('apt-get', ['update', '-q'], silent) &&
      run('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...packages], silent) &&
      missing.every(has)
    )
      return true;
  }
  for (const one of missing)
    console.error(`${one.program} is missing (${one.why}); install the package ${one.packages.join(', ')} and run again`);
  return false;
}

/** Newest change below a folder, in milliseconds. */
function newest(folder) {
  let latest = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    latest = Math.max(latest, entry.isDirectory() ? newest(path) : statSync(path).mtimeMs);
  }
  return latest;
}

/** Parts of the program that an earlier build left: their names change with what is in them. */
function removeParts(folder) {
  for (const name of readdirSync(folder)) if (name.startsWith('part-')) rmSync(join(folder, name));
}

/** Builds dist/ when a source is newer than it. */
export function build({ force = false } = {}) {
  const main = join(ROOT, 'dist', 'cli', 'main.js');
  if (!force && existsSync(main) && statSync(main).mtimeMs >= newest(join(ROOT, 'src'))) return true;
  const bin = (name) => join(ROOT, 'node_modules', '.bin', name);
  if (!run(bin('tsc'), ['-p', 'tsconfig.build.json'])) return false;
  removeParts(dirname(main));
  if (!run(bin('vite'), ['build', '--config', 'vite.program.config.ts', '--logLevel', 'warn'])) return false;
  if (!run(bin('vite'), ['build', '--logLevel', 'warn'])) return false;
  execFileSync('chmod', ['+x', main]);
  // an unchanged file keeps its time when the compiler rewrites it; the next check must still see a fresh build
  execFileSync('touch', [main]);
  return true;
}
