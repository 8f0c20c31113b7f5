import { describe, expect, test } from 'vitest';
import { CIRCUIT_KINDS } from '../../src/core/circuit/circuit.ts';
import { recognise } from '../../src/core/circuit/recognise/recognise.ts';
import { toDrawingPdf } from '../../src/paper/to-drawing-pdf.ts';
import { drawSchematic } from '../../src/present/schematic/draw-schematic.ts';
import { layOutSchematic } from '../../src/present/schematic/lay-out-schematic.ts';
import { PART_MARKS, type PartMark } from '../../src/present/schematic/part-mark.ts';
import { toSchematicInput } from '../../src/present/schematic/schematic-input.ts';
import { MARK_WORDS } from '../../src/present/words/circuit-words.ts';
import { randomCircuit } from '../schematic/random-circuit.ts';
import { PrintedPage } from './printed-page.ts';

const ABOUT = { name: 'Any', sample: 'A', invented: true } as Parameters<typeof toDrawingPdf>[1]['about'];
/** Of many circuits, those that bring a kind of part which none before them had. */
const met = new Set<string | null>();
const CIRCUITS = [...Array(200).keys()]
  .map((number) => randomCircuit(number, 45))
  .filter(({ parts }) => {
    const more = parts.map(({ kind }) => kind).filter((kind) => !met.has(kind));
    for (const kind of more) met.add(kind);
    return more.length > 0;
  });

describe('a drawing of parts joined at random', () => {
  test('holds every kind of symbol somewhere among them', () => {
    const kinds = new Set(CIRCUITS.flatMap(({ parts }) => parts.map(({ kind }) => kind)));
    expect(CIRCUIT_KINDS.filter((kind) => !kinds.has(kind))).toEqual([]);
  });
  test.each(CIRCUITS.map((circuit, index) => [index, circuit] as const))(
    'comes to paper with every reference and mark: %i',
    async (_index, circuit) => {
      const marks = new Map<string, PartMark>(circuit.parts.map(({ id }, index) => [id, PART_MARKS[index % PART_MARKS.length]!]));
      const labels = new Map(circuit.parts.map(({ id, ref }) => [id, [ref, '', '']]));
      const schematic = await layOutSchematic(toSchematicInput(recognise(circuit, new Set()), labels, new Map(), marks), new Map());
      const figure = drawSchematic(schematic, {
        spoken: 'x',
        mainsWords: 'm',
        touchWords: 't',
        markWords: MARK_WORDS,
        returnWords: (net) => net,
      });
      const page = new PrintedPage(await toDrawingPdf(figure, { about: ABOUT, paper: 'A3', tool: 'x', at: new Date(0) }));
      const text = page.text();
      page.remove();
      const words = new Set(text.split(/\s+/));
      expect(circuit.parts.map(({ ref }) => ref).filter((ref) => !words.has(ref))).toEqual([]);
      for (const mark of PART_MARKS) expect(text).toContain(MARK_WORDS[mark]);
    },
  );
});
