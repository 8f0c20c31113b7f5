// npm run demo: sets up what is missing, then runs the main job on the invented demo cases.
import { join } from 'node:path';
import { build, preparePackages, ROOT, run } from './prepare.mjs';

const rest = process.argv.slice(2).filter((word) => word !== '--once'); // it ends by itself; --once is accepted for scripts that ask for it
process.exitCode = preparePackages() && build() && run(process.execPath, [join(ROOT, 'dist', 'cli', 'main.js'), 'demo', ...rest]) ? 0 : 1;
