/** How long a judgement takes: the large case in process beside a deep copy of the same case, and the whole command beside an empty Node.js process. */
import { execFileSync } from 'node:child_process';
import { fell } from '../scripts/demo/unit/fell.ts';
import { toReadTable } from '../src/app/to-read-table.ts';
import { assess } from '../src/core/assess/assess.ts';
import { parseCase } from '../src/core/evidence/parse-case.ts';
import { isRefusal } from '../src/core/quantity/refusal.ts';
import { readInstrumentFile } from '../src/importer/read-instrument-file.ts';
import { largeCase } from './large-case.ts';
import { line, measure } from './measure.ts';

const ROUNDS = 101;
const COMMANDS = 11;

const one = parseCase(largeCase());
if (Array.isArray(one)) throw new Error(JSON.stringify(one, null, 1));
const { files } = fell();
const tables = new Map(
  one.files.flatMap(({ path, sha256 }) => {
    const read = readInstrumentFile(files[path]!);
    return isRefusal(read) ? [] : [[sha256, toReadTable(read)] as const];
  }),
);
const { exhibits, parts } = one;
console.log(
  `case: ${exhibits.length} exhibits, ${parts.length} parts, ${exhibits.filter(({ kind }) => kind === 'distance').length} distances, ${exhibits.filter(({ kind }) => kind === 'sweep').length} sweeps`,
);
console.log(`assessment: ${assess(one, tables).findings.length} findings, ${assess(one, tables).steps.length} steps`);
const copy = measure(() => structuredClone(one), ROUNDS);
console.log(line('deep copy of the case (reference)', copy));
console.log(
  line(
    'assess, target under 20 ms',
    measure(() => assess(one, tables), ROUNDS),
    { name: 'a deep copy', median: copy.median },
  ),
);

const empty = measure(() => execFileSync(process.execPath, ['-e', '0']), COMMANDS);
console.log(line('empty Node.js process (reference)', empty));
console.log(
  line(
    'mainsworthy assess, target under 500 ms',
    measure(() => execFileSync(process.execPath, ['dist/cli/main.js', 'assess', 'examples/fell-12']), COMMANDS),
    { name: 'an empty process', median: empty.median },
  ),
);
