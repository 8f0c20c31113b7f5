// npm run build: the command `mainsworthy` in dist/.
import { build, preparePackages } from './prepare.mjs';

process.exitCode = preparePackages() && build({ force: true }) ? 0 : 1;
