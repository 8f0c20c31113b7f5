import { barrierWays } from '../core/circuit/path/barrier-ways.ts';
import { recognise } from '../core/circuit/recognise/recognise.ts';
import type { Case } from '../core/evidence/case.ts';
import type { Part } from '../core/evidence/sample.ts';
import type { Assessment } from '../core/result/assessment.ts';
import { openBench } from '../core/working/bench/bench.ts';
import { findRead } from '../core/working/bench/open-value.ts';
import { tracedCircuit } from '../core/working/circuit/traced-circuit.ts';
import type { Markup } from '../present/markup/markup.ts';
import { drawSchematic } from '../present/schematic/draw-schematic.ts';
import type { Point } from '../present/schematic/geometry.ts';
import { layOutSchematic } from '../present/schematic/lay-out-schematic.ts';
import { toSchematicInput } from '../present/schematic/schematic-input.ts';
import {
  FAILING_WORDS,
  FAILS,
  MAINS_SIDE_WORDS,
  returnText,
  schematicSentence,
  TOUCHED_SIDE_WORDS,
} from '../present/words/circuit-words.ts';

/**
 * The schematic of a case's traced circuit; null where none was traced. Laying it out is slow beside judging, so it is done when it is drawn
 * and never inside `assess`. `moves`: corners of symbols moved by hand, by part. `failing`: parts on which a
 * finding that fails hangs; they are marked.
 */
export async function drawCaseSchematic(
  one: Case,
  { moves = new Map(), failing = new Set() }: { moves?: ReadonlyMap<string, Point>; failing?: ReadonlySet<string> } = {},
): Promise<Markup | null> {
  const bench = openBench(one, new Map());
  const traced = tracedCircuit(bench);
  if (traced === null) return null;
  const recognised = recognise(traced.circuit, traced.crossing);
  const labels = new Map(one.parts.map((part) => [part.id, labelOf(part, failing.has(part.id))]));
  const turns = new Map(one.parts.map((part) => [part.id, turnsOf(part)]));
  const schematic = await layOutSchematic(toSchematicInput(recognised, labels, turns), moves);
  const ways = new Set(barrierWays(traced.circuit, recognised.graph.sideOf).map(({ parts }) => parts.join('+')));
  return drawSchematic(schematic, {
    spoken: schematicSentence(traced.circuit.parts.length, ways.size),
    mainsWords: MAINS_SIDE_WORDS,
    touchWords: TOUCHED_SIDE_WORDS,
    failing,
    failingWords: failing.size === 0 ? null : FAILING_WORDS,
    returnWords: (net) => returnText(schematic.netNames.get(net) ?? net),
  });
}

const LONGEST_LINE = 14; // letters beside a symbol; longer texts stand in the table

/** Reference, value or marking, then the rating that matters. */
function labelOf(part: Part, fails: boolean): string[] {
  const value = findRead<string>(part.value) ?? findRead<string>(part.marking) ?? '';
  const voltage = findRead<string>(part.rating?.voltage) ?? '';
  const rating = [voltage, findRead<string>(part.safetyClass) ?? ''].filter((one) => one !== '').join(' ');
  return [fails ? `${part.ref} ${FAILS}` : part.ref, cut(value), cut(rating)];
}

function cut(text: string): string {
  return text.length <= LONGEST_LINE ? text : `${text.slice(0, LONGEST_LINE - 1)}…`;
}

function turnsOf({ windings }: Part): ReadonlyMap<string, string> {
  return new Map(
    (windings ?? []).flatMap(({ name, turns }) => {
      const read = findRead<string>(turns);
      return read === null ? [] : [[name, read] as const];
    }),
  );
}

/** Parts whose fields decide a finding that fails. */
export function failingParts({ findings }: Pick<Assessment, 'findings'>): Set<string> {
  const fields = findings.filter(({ outcome }) => outcome === 'fail').flatMap((finding) => finding.fields);
  return new Set(fields.flatMap((field) => /^\/parts\/([^/]+)\//.exec(field)?.[1] ?? []));
}
