import type { Circuit } from '../circuit.ts';
import { buildGraph, type Graph } from '../graph/graph.ts';
import { type Converter, type ConverterKind, findConverter } from './converter.ts';
import { type Job, Jobs } from './job.ts';
import { findMainsInput, type MainsInput, type RectifierKind } from './mains-input.ts';
import { giveMainsJobs } from './mains-jobs.ts';
import { giveOutputJobs } from './output-jobs.ts';
import { type Drive, type FeedbackKind, findRegulation, type Regulation } from './regulation.ts';
import { giveSwitchingJobs } from './switching-jobs.ts';

/** What kind of supply it is; null where the graph does not say. */
export interface Topology {
  readonly converter: ConverterKind | null;
  readonly rectifier: RectifierKind | null;
  readonly drive: Drive | null;
  readonly feedback: FeedbackKind | null;
  /** The output hangs on the mains only through parts that are made to cross the barrier. Null when no converter is recognised. */
  readonly isolated: boolean | null;
}

export interface Recognised {
  readonly topology: Topology;
  /** By part id; a part that is missing here is not recognised. */
  readonly jobs: ReadonlyMap<string, Job>;
  readonly graph: Graph;
  readonly input: MainsInput | null;
  readonly converter: Converter | null;
  readonly regulation: Regulation | null;
}

const NOTHING: Topology = { converter: null, rectifier: null, drive: null, feedback: null, isolated: null };

/** Recognises the supply from which part joins which nets; references, names of nets and the order of the parts play no part. */
export function recognise(circuit: Circuit, crossing: ReadonlySet<string> = new Set()): Recognised {
  // references must not decide between equals, nor the order of the lines; ids are the best that is left
  const ordered = { ...circuit, parts: circuit.parts.toSorted((a, b) => (a.id < b.id ? -1 : 1)) };
  const graph = buildGraph(ordered, crossing);
  const jobs = new Jobs();
  const input = findMainsInput(graph);
  if (input === null) return { topology: NOTHING, jobs: jobs.of, graph, input: null, converter: null, regulation: null };
  const converter = findConverter(graph, input);
  const regulation = findRegulation(graph, converter);
  giveMainsJobs(jobs, graph, input, converter);
  giveSwitchingJobs(jobs, graph, input, converter, regulation);
  giveOutputJobs(jobs, graph, converter, regulation);
  return {
    topology: {
      converter: converter.kind,
      rectifier: input.rectifier?.kind ?? null,
      drive: regulation.drive,
      feedback: regulation.feedback,
      isolated: converter.kind === null ? null : isIsolated(graph, converter),
    },
    jobs: jobs.of,
    graph,
    input,
    converter,
    regulation,
  };
}

/** False as soon as a net of the output lies on the mains side; null where no side follows. */
function isIsolated(graph: Graph, { output, outputReturn }: Converter): boolean | null {
  const sides = [...output, ...outputReturn].map((net) => graph.sideOf.get(net));
  if (sides.includes('mains')) return false;
  return sides.length === 0 || sides.includes(undefined) ? null : true;
}
