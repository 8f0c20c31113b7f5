import type { Part, Side } from '../../evidence/sample.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { findRead, openValue } from '../bench/open-value.ts';

/** One way from the mains to something else through parts: a part with a foot on each side, or several in a row over floating nets. */
export interface BridgingPath {
  /** "c5" or "c5+c6", in the order from the mains outwards. */
  readonly id: string;
  readonly about: string;
  readonly parts: readonly Part[];
  /** Its ends: a net of the mains, and the net that it reaches; null where the far foot was not followed. */
  readonly ends: readonly [string, string | null];
  /** What the other end is: basic insulation is enough towards earth. */
  readonly towards: 'reinforced' | 'basic';
  /** Nobody could tell where the far foot goes: the way may or may not lead to a hand. */
  readonly farEnd: 'known' | 'unknown' | 'notLooked';
}

/** Parts with insulation rules of their own; they are judged by other checks. */
const JUDGED_ELSEWHERE = new Set(['transformer', 'optocoupler', 'connector', 'heatSink', 'load']);
const LONGEST = 4; // parts in a row; a longer chain of capacitors is not built into small adapters

interface Foot {
  readonly net: string | null;
  readonly side: Side | 'unknown' | 'notLooked';
}

interface Wired {
  readonly part: Part;
  readonly feet: readonly Foot[];
}

/** Every way across, without those that are only a longer way over a part that already reaches the other side. */
export function bridgingPaths(bench: Bench): BridgingPath[] {
  const wired = bench.one.parts
    .filter((part) => !JUDGED_ELSEWHERE.has(findRead(part.kind) ?? ''))
    .map((part): Wired => ({ part, feet: feetOf(bench, part) }));
  const paths = new Map<string, BridgingPath>();
  for (const start of wired) {
    const from = start.feet.find(({ side }) => side === 'mains');
    if (from !== undefined) walk(bench, wired, [start], from, paths, from.net ?? '');
  }
  return [...paths.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function walk(
  bench: Bench,
  wired: readonly Wired[],
  chain: readonly Wired[],
  from: Foot,
  paths: Map<string, BridgingPath>,
  first: string,
): void {
  const last = chain.at(-1)!;
  const far = last.feet.filter((foot) => foot !== from && foot.net !== from.net);
  // towards the side that asks for more, where a part reaches several
  const reached = far.find(({ side }) => side === 'output' || side === 'touchable') ?? far.find(({ side }) => side === 'earth');
  const open = far.find(({ side }) => side === 'unknown' || side === 'notLooked');
  if (reached !== undefined || open !== undefined) {
    const parts = chain.map(({ part }) => part);
    const end = reached ?? open!;
    const id = parts.map((part) => part.id).join('+');
    paths.set(id, {
      id,
      about: `${parts.map((part) => part.ref).join(' and ')}, ${end.net === null ? 'far foot not followed' : `to ${nameOf(bench, end.net)}`}`,
      parts,
      ends: [first, end.net],
      towards: reached?.side === 'earth' ? 'basic' : 'reinforced',
      farEnd: reached !== undefined ? 'known' : (open!.side as 'unknown' | 'notLooked'),
    });
  }
  if (reached !== undefined || chain.length === LONGEST) return;
  for (const middle of far.filter(({ side }) => side === 'floating')) {
    for (const next of wired) {
      if (chain.includes(next)) continue;
      const entry = next.feet.find(({ net }) => net !== null && net === middle.net);
      // a part that leads back to the mains is no way out
      if (entry !== undefined && !next.feet.some(({ side }) => side === 'mains')) walk(bench, wired, [...chain, next], entry, paths, first);
    }
  }
}

function feetOf(bench: Bench, part: Part): Foot[] {
  return (part.pins ?? []).map(({ net }): Foot => {
    const opened = openValue(net);
    if (opened.state !== 'read') return { net: null, side: opened.state === 'notLooked' ? 'notLooked' : 'unknown' };
    const side = openValue(bench.conductors.get(opened.v)?.side);
    return { net: opened.v, side: side.state === 'read' ? side.v : side.state === 'notLooked' ? 'notLooked' : 'unknown' };
  });
}

/** Somebody looked for suppression parts and found none: then nothing bridges the barrier by design. */
export function suppressionAbsent(bench: Bench): boolean {
  return exhibitsOf(bench, 'board').some((board) => board.struck === undefined && openValue(board.suppression).state === 'absent');
}
