import { railFrom } from '../circuit/graph/rail.ts';
import { exhibitsOf } from '../working/bench/bench.ts';
import { findRead } from '../working/bench/open-value.ts';
import { trackMelts } from '../working/board/track-facts.ts';
import type { SettingFacts } from '../working/setting/setting-facts.ts';
import type { Draft } from './draft.ts';
import { BODY_REF, drawOf, type Level, LOAD_REF, MAINS_REF, type MainsChoice, TRACK_REF } from './model.ts';

const TRACK_OHMS = 0.02;
/** An electronic track carries this share of its one-second melting current for ever. House choice, on the low side. */
const TRACK_HOLDS = 0.3;

/** Mains, the person on earth, and the load. Answers the nets of the output. */
export interface Surroundings {
  readonly earth: string;
  readonly output: readonly [string, string];
  /** The two ends of the inlet: which one carries the mains, and what its net is called behind a track that melts. */
  readonly renamed: ReadonlyMap<string, string>;
}

export function addSurroundings(
  draft: Draft,
  setting: SettingFacts,
  level: Level,
  mains: MainsChoice,
  portIndex: number,
): Surroundings | null {
  const { graph, converter, input } = draft.recognised;
  const [line, neutral] = graph.inlet;
  const outlet = graph.outlets[portIndex] ?? graph.outlets[0];
  const plus = outlet?.plus ?? [...(converter?.output ?? [])][0];
  const minus = outlet?.minus ?? [...(converter?.outputReturn ?? [])][0];
  if (line === undefined || neutral === undefined) draft.lack('inlet', '');
  if (plus == null || minus == null) draft.lack('outlet', level.port);
  if (line === undefined || neutral === undefined || plus == null || minus == null) return null;
  // with one diode the bulk minus lies on one pole: the worse plug way puts that pole on the line
  const wired = railFrom([neutral], graph.links, ({ family }) => family === 'wire' || family === 'inductor');
  const minusOnNeutral = input?.rectifier?.kind === 'singleDiode' && [...(converter?.minus ?? [])].some((net) => wired.has(net));
  const [live, earth] = minusOnNeutral ? [neutral, line] : [line, neutral];
  draft.assume('plugWay', null);
  draft.add({
    kind: 'mains',
    ref: MAINS_REF,
    pins: [live, earth],
    rmsV: mains.rmsV,
    hertz: mains.hertz,
    phaseDeg: 0,
    ohms: draft.assume('mainsResistance', null),
  });
  draft.add({ kind: 'load', ref: LOAD_REF, pins: [plus, minus], draw: drawOf(level, 1) });
  draft.add({ kind: 'bodyNetwork', ref: BODY_REF, pins: [minus, earth] });
  return { earth, output: [plus, minus], renamed: addTrack(draft, setting, live) };
}

/** A printed track that is the first part melts like a fuse; everything but the mains hangs behind it. */
function addTrack(draft: Draft, setting: SettingFacts, live: string): ReadonlyMap<string, string> {
  for (const board of exhibitsOf(draft.bench, 'board')) {
    if (board.struck !== undefined || findRead(board.fuse) !== 'track') continue;
    const melts = trackMelts(draft.bench, setting, board);
    if (melts === null) continue;
    const behind = `${live}/${TRACK_REF}`;
    draft.add({
      kind: 'fuse',
      ref: TRACK_REF,
      pins: [live, behind],
      ohms: TRACK_OHMS,
      meltingA2s: melts.integral.value,
      holdingA: TRACK_HOLDS * melts.current.value,
    });
    return new Map([[live, behind]]);
  }
  return new Map();
}
