import { barrierWays } from '../core/circuit/path/barrier-ways.ts';
import { recognise } from '../core/circuit/recognise/recognise.ts';
import type { Part } from '../core/evidence/sample.ts';
import type { Assessment } from '../core/result/assessment.ts';
import { openBench } from '../core/working/bench/bench.ts';
import { findRead } from '../core/working/bench/open-value.ts';
import { tracedCircuit } from '../core/working/circuit/traced-circuit.ts';
import { drawSchematic } from '../present/schematic/draw-schematic.ts';
import { layOutSchematic } from '../present/schematic/lay-out-schematic.ts';
import type { PartMark } from '../present/schematic/part-mark.ts';
import { partOfField } from '../present/schematic/part-of-field.ts';
import { toSchematicInput } from '../present/schematic/schematic-input.ts';
import {
  MAINS_SIDE_WORDS,
  MARK_WORDS,
  partSpoken,
  returnText,
  schematicSentence,
  TOUCHED_SIDE_WORDS,
} from '../present/words/circuit-words.ts';
import type { DrawCircuit } from './drawn-circuit.ts';

/**
 * The schematic of a case's traced circuit; null where none was traced. Laying it out is slow beside judging, so it is done when it is drawn
 * and never inside `assess`.
 */
export const drawCaseSchematic: DrawCircuit = async (one, { moves = new Map(), marks = new Map(), live = false }) => {
  const bench = openBench(one, new Map());
  const traced = tracedCircuit(bench);
  if (traced === null) return null;
  const recognised = recognise(traced.circuit, traced.crossing);
  const labels = new Map(one.parts.map((part) => [part.id, labelOf(part)]));
  const turns = new Map(one.parts.map((part) => [part.id, turnsOf(part)]));
  const schematic = await layOutSchematic(toSchematicInput(recognised, labels, turns, marks), moves);
  const ways = new Set(barrierWays(traced.circuit, recognised.graph.sideOf).map(({ parts }) => parts.join('+')));
  const figure = drawSchematic(schematic, {
    spoken: schematicSentence(traced.circuit.parts.length, ways.size),
    mainsWords: MAINS_SIDE_WORDS,
    touchWords: TOUCHED_SIDE_WORDS,
    markWords: MARK_WORDS,
    returnWords: (net) => returnText(schematic.netNames.get(net) ?? net),
    ...(live
      ? { live: { partWords: (part: string) => partSpoken(labels.get(part) ?? [part], recognised.jobs.get(part)?.job, marks.get(part)) } }
      : {}),
  });
  const places = schematic.parts.map(({ part, zone, at }) => ({ part: part.id, zone, at }));
  return { figure, barrier: schematic.barrier, places };
};

const LONGEST_LINE = 14; // letters beside a symbol; longer texts stand in the table

/** Reference, value or marking, then the rating that matters. */
function labelOf(part: Part): string[] {
  const value = findRead<string>(part.value) ?? findRead<string>(part.marking) ?? '';
  const voltage = findRead<string>(part.rating?.voltage) ?? '';
  const rating = [voltage, findRead<string>(part.safetyClass) ?? ''].filter((one) => one !== '').join(' ');
  return [part.ref, cut(value), cut(rating)];
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

const SLIP = 'slip-'; // how keys of warnings about the trace begin

/** The worst of what is said about each part: findings that its fields decide, slips of the trace. */
export function partMarks({ findings, warnings }: Pick<Assessment, 'findings' | 'warnings'>): Map<string, PartMark> {
  const of = (outcome: string): string[] => findings.filter((one) => one.outcome === outcome).flatMap(({ fields }) => fields);
  const slips = warnings.filter(({ key }) => key.startsWith(SLIP)).map(({ at }) => at);
  const marks = new Map<string, PartMark>();
  const mark = (fields: readonly string[], as: PartMark): void => {
    for (const field of fields) {
      const part = partOfField(field);
      if (part !== null && !marks.has(part)) marks.set(part, as);
    }
  };
  mark(of('fail'), 'fail');
  mark(of('inconclusive'), 'inconclusive');
  mark(slips, 'slip');
  return marks;
}
