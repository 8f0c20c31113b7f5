// npm run demo: sets up what is missing, runs the main job on the invented demo cases, then serves them as a casebook (not with --once or CI=true).
import { join } from 'node:path';
import { build, preparePackages, ROOT, run } from './prepare.mjs';

const command = [join(ROOT, 'dist', 'cli', 'main.js'), 'demo', ...process.argv.slice(2)];
process.on('SIGINT', () => undefined); // the workspace hears it too and ends in its own time
process.exitCode = preparePackages() && build() && run(process.execPath, command) ? 0 : 1;
