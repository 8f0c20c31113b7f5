/** All workings of a transformer, and the barrier facts of the same case, beside a deep copy of the case. */
import { fell } from '../scripts/demo/unit/fell.ts';
import { parseCase } from '../src/core/evidence/parse-case.ts';
import { barrierFacts } from '../src/core/working/barrier/barrier-facts.ts';
import { openBench } from '../src/core/working/bench/bench.ts';
import { bridgingPaths } from '../src/core/working/board/bridging-facts.ts';
import { pairFacts } from '../src/core/working/insulation/pair-facts.ts';
import { levelFacts } from '../src/core/working/load/sweep-facts.ts';
import { settingFacts } from '../src/core/working/setting/setting-facts.ts';
import { stackFacts } from '../src/core/working/transformer/stack-facts.ts';
import { transformerFacts } from '../src/core/working/transformer/transformer-facts.ts';
import { line, measure } from './measure.ts';

const ROUNDS = 101;
const one = parseCase(fell().document);
if (Array.isArray(one)) throw new Error(JSON.stringify(one, null, 1));
const bench = openBench(one, new Map());
const setting = settingFacts(bench);
const levels = levelFacts(bench, setting);
const stacks = stackFacts(bench);
const [pairs, bridging] = [pairFacts(bench), bridgingPaths(bench)];
const copy = measure(() => structuredClone(one), ROUNDS);
console.log(line('deep copy of the case (reference)', copy));
const reference = { name: 'a deep copy', median: copy.median };
console.log(
  line(
    'transformer workings, target under 5 ms',
    measure(() => transformerFacts(bench, setting, levels, stackFacts(bench)), ROUNDS),
    reference,
  ),
);
console.log(
  line(
    'barrier facts',
    measure(() => barrierFacts(bench, setting, pairs, bridging, stacks), ROUNDS),
    reference,
  ),
);
