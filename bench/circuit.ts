/** A circuit of about 45 parts: lines, graph, slips, ways, jobs and checks (all but the drawing), and the drawing alone; beside reading the same lines with JSON. */

import { TARN_BOARD } from '../scripts/demo/traced-boards.ts';
import { assess } from '../src/core/assess/assess.ts';
import { recognise } from '../src/core/circuit/recognise/recognise.ts';
import { parseTrace } from '../src/core/circuit/trace/parse-trace.ts';
import { toCircuit } from '../src/core/circuit/trace/to-circuit.ts';
import { parseCase } from '../src/core/evidence/parse-case.ts';
import { openBench } from '../src/core/working/bench/bench.ts';
import { circuitFacts } from '../src/core/working/circuit/circuit-facts.ts';
import { toEvidence } from '../src/core/working/circuit/to-evidence.ts';
import { layOutSchematic } from '../src/present/schematic/lay-out-schematic.ts';
import { toSchematicInput } from '../src/present/schematic/schematic-input.ts';
import { line, measure } from './measure.ts';

const ROUNDS = 51;
const DRAWINGS = 7;
const MORE = `C12 (ceramic) 100nF: out-plus, out-minus
C13 (ceramic) 100nF: vbus, out-minus
R17 100k: vbus, out-minus
R18 10R: sense, filter
C14 (ceramic) 1nF: filter, hv-minus
RV1 470V: fused, neutral
`;
const text = TARN_BOARD + MORE;
const { trace } = parseTrace(text);
const one = parseCase({
  format: 'mainsworthy-case/1',
  id: 'bench',
  product: { id: 'bench', name: 'bench' },
  sample: 'A',
  setting: { market: 'EU' },
  ports: [
    {
      id: 'usb-c',
      kind: 'usbC',
      levels: [
        { id: '5v', voltage: '5 V' },
        { id: '20v', voltage: '20 V' },
      ],
    },
  ],
  ...toEvidence(trace),
});
if (Array.isArray(one)) throw new Error(JSON.stringify(one, null, 1));
console.log(`circuit: ${one.parts.length} parts, ${one.conductors.length} nets`);
const json = JSON.stringify(trace);
const reference = measure(() => JSON.parse(json), ROUNDS);
console.log(line('the same trace as JSON (reference)', reference));
const bench = openBench(one, new Map());
const against = { name: 'JSON', median: reference.median };
console.log(
  line(
    'lines to parts and nets',
    measure(() => toEvidence(parseTrace(text).trace), ROUNDS),
    against,
  ),
);
console.log(
  line(
    'graph, jobs, slips, ways, set points',
    measure(() => circuitFacts(bench), ROUNDS),
    against,
  ),
);
console.log(
  line(
    'assess the case, target under 20 ms',
    measure(() => assess(one, new Map()), ROUNDS),
    against,
  ),
);

const { circuit, crossing } = toCircuit(trace);
const input = toSchematicInput(recognise(circuit, crossing), new Map(one.parts.map(({ id, ref }) => [id, [ref, '4k7', '400 V']])));
const times: number[] = [];
for (let round = 0; round < DRAWINGS; round += 1) {
  const start = performance.now();
  await layOutSchematic(input);
  times.push(performance.now() - start);
}
console.log(
  `lay out the drawing, target under 1000 ms    first ${times[0]!.toFixed(0)} ms   median ${times.toSorted((a, b) => a - b)[Math.floor(DRAWINGS / 2)]!.toFixed(0)} ms`,
);
