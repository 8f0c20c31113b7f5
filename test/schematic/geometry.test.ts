import { describe, expect, it } from 'vitest';
import type { Circuit } from '../../src/core/circuit/circuit.ts';
import { recognise } from '../../src/core/circuit/recognise/recognise.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { toCircuit } from '../../src/core/circuit/trace/to-circuit.ts';
import { layOutSchematic } from '../../src/present/schematic/lay-out-schematic.ts';
import type { Schematic } from '../../src/present/schematic/schematic.ts';
import { toSchematicInput } from '../../src/present/schematic/schematic-input.ts';
import { INVENTED_CIRCUITS } from '../circuit/invented-circuits.ts';
import { randomCircuit } from './random-circuit.ts';
import { unjoined, whatIsWrong } from './what-is-wrong.ts';

const CIRCUITS = 200;
const BATCH = 25;
const HANDS = 12;
const SLOW_MS = 120_000; // a batch on a busy machine

function inputOf(circuit: Circuit, crossing: ReadonlySet<string> = new Set()) {
  const labels = new Map(circuit.parts.map(({ id, ref }, index) => [id, [ref, ['4k7', '100 nF', '2.2 nF Y1', ''][index % 4]!]]));
  return toSchematicInput(recognise(circuit, crossing), labels);
}
const drawn = (circuit: Circuit, crossing?: ReadonlySet<string>): Promise<Schematic> => layOutSchematic(inputOf(circuit, crossing));

describe('a drawing of any circuit', () => {
  it.each(Array.from({ length: CIRCUITS / BATCH }, (_, batch) => batch * BATCH))(
    'has no text or symbol on another, no wire through either, and crosses the barrier only in parts that cross it: from circuit %i on',
    async (from) => {
      for (let number = from; number < from + BATCH; number += 1) {
        const schematic = await drawn(randomCircuit(number));
        expect({ number, wrong: [...whatIsWrong(schematic), ...unjoined(schematic)] }).toEqual({ number, wrong: [] });
      }
    },
    SLOW_MS,
  );

  it(
    'of 45 parts holds as well',
    async () => {
      const schematic = await drawn(randomCircuit(1000, 45));
      expect([...whatIsWrong(schematic), ...unjoined(schematic)]).toEqual([]);
    },
    SLOW_MS,
  );
});

describe('a drawing of a real circuit', () => {
  it.each(INVENTED_CIRCUITS)(
    '$name: holds, joins every pin, and is the same every time',
    async ({ lines }) => {
      const { circuit, crossing } = toCircuit(parseTrace(lines).trace);
      const schematic = await drawn(circuit, crossing);
      expect([...whatIsWrong(schematic), ...unjoined(schematic)]).toEqual([]);
      expect(await drawn(circuit, crossing)).toEqual(schematic);
      expect(schematic.parts).toHaveLength(circuit.parts.length);
    },
    SLOW_MS,
  );

  it(
    'a part moved by hand stands where it was put, keeps to its side, and the wires follow',
    async () => {
      const { circuit, crossing } = toCircuit(parseTrace(INVENTED_CIRCUITS[0]!.lines).trace);
      const input = inputOf(circuit, crossing);
      const before = await layOutSchematic(input);
      const r2 = before.parts.find(({ part }) => part.id === 'r2')!;
      const put = { x: r2.at.x, y: before.page.y + before.page.height + 100 };
      const after = await layOutSchematic(
        input,
        new Map([
          ['r2', put],
          ['r7', { x: 0, y: 0 }],
        ]),
      );
      expect(after.parts.find(({ part }) => part.id === 'r2')!.at).toEqual({ x: put.x, y: Math.round(put.y / 10) * 10 });
      expect(after.parts.find(({ part }) => part.id === 'r7')!.at.x).toBeGreaterThan(after.barrier!);
      expect(unjoined(after)).toEqual([]);
    },
    SLOW_MS,
  );
});

describe('a drawing that a hand has been at', () => {
  it.each(Array.from({ length: HANDS }, (_, number) => number))(
    'keeps every rule of a drawing whatever was moved where: circuit %i',
    async (number) => {
      const input = inputOf(randomCircuit(number));
      const before = await layOutSchematic(input);
      // every third part onto the place of another one, of its own side or not
      const moves = new Map(
        before.parts.flatMap(({ part }, index) =>
          index % 3 === 0 ? [[part.id, before.parts[(index * 7 + number) % before.parts.length]!.at] as const] : [],
        ),
      );
      const after = await layOutSchematic(input, moves);
      expect([...whatIsWrong(after), ...unjoined(after)]).toEqual([]);
    },
    SLOW_MS,
  );

  it(
    'leaves a moved part of the output side at its distance from the barrier when the mains side grows',
    async () => {
      const lines = INVENTED_CIRCUITS[0]!.lines;
      const far = { x: 900, y: 500 };
      const placed = async (text: string): Promise<{ from: number; y: number; barrier: number }> => {
        const { circuit, crossing } = toCircuit(parseTrace(text).trace);
        const { parts, barrier } = await layOutSchematic(inputOf(circuit, crossing), new Map([['r7', far]]));
        const { at } = parts.find(({ part }) => part.id === 'r7')!;
        return { from: at.x - barrier!, y: at.y, barrier: barrier! };
      };
      const [small, large] = [
        await placed(lines),
        await placed(`${lines}\nL7 (inductor): HV+, HVX\nC77 (film) 10nF: HVX, HVY\nR77 1k: HVY, HV-\n`),
      ];
      expect(large.barrier).not.toBe(small.barrier);
      expect([large.from, large.y]).toEqual([small.from, small.y]);
    },
    SLOW_MS,
  );
});

describe('the judge of drawings', () => {
  it('sees a symbol that was pushed onto another, and a wire that lost an end', async () => {
    const { circuit, crossing } = toCircuit(parseTrace(INVENTED_CIRCUITS[3]!.lines).trace);
    const good = await drawn(circuit, crossing);
    const [first, ...rest] = good.parts;
    const pushed = { ...good, parts: [{ ...first!, at: rest[0]!.at }, ...rest] };
    expect(whatIsWrong(pushed).length).toBeGreaterThan(0);
    const wide = good.wires.find(({ lines }) => lines.length > 3)!;
    const cut = { ...good, wires: good.wires.map((wire) => (wire === wide ? { ...wire, lines: wire.lines.slice(1) } : wire)) };
    expect(unjoined(cut).length).toBeGreaterThan(0);
  });
});
