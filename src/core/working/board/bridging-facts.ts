import type { Part, Side } from '../../evidence/sample.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { findRead, openValue } from '../bench/open-value.ts';

/** One way from the mains to something else through parts: a part with a foot on each side, or two in series over a floating net. */
export interface BridgingPath {
  /** "c5" or "c5+c6". */
  readonly id: string;
  readonly about: string;
  readonly parts: readonly Part[];
  readonly ends: readonly [string, string];
  /** What the other end is: basic insulation is enough towards earth. */
  readonly towards: 'reinforced' | 'basic';
}

/** Parts with insulation rules of their own; they are judged by other checks. */
const JUDGED_ELSEWHERE = new Set(['transformer', 'optocoupler', 'connector', 'heatSink', 'load']);

interface Foot {
  readonly net: string;
  readonly side: Side | null;
}

export function bridgingPaths(bench: Bench): BridgingPath[] {
  const paths: BridgingPath[] = [];
  const feet = new Map<string, Foot[]>();
  const candidates = bench.one.parts.filter((part) => !JUDGED_ELSEWHERE.has(findRead(part.kind) ?? ''));
  for (const part of candidates) feet.set(part.id, feetOf(bench, part));
  for (const part of candidates) {
    const own = feet.get(part.id) ?? [];
    const from = own.find(({ side }) => side === 'mains');
    const to = own.find(({ side }) => side === 'output' || side === 'touchable' || side === 'earth');
    if (from !== undefined && to !== undefined) paths.push(path(bench, [part], from, to));
    if (from === undefined || to !== undefined) continue;
    // in series: the part's other foot is on a floating net from which another part goes on
    for (const middle of own.filter(({ side }) => side === 'floating')) {
      for (const next of candidates) {
        if (next.id === part.id) continue;
        const others = feet.get(next.id) ?? [];
        const far = others.find(({ side }) => side === 'output' || side === 'touchable' || side === 'earth');
        if (far !== undefined && others.some(({ net }) => net === middle.net)) paths.push(path(bench, [part, next], from, far));
      }
    }
  }
  return paths.sort((a, b) => (a.id < b.id ? -1 : 1));
}

function path(bench: Bench, parts: Part[], from: Foot, to: Foot): BridgingPath {
  return {
    id: parts.map((part) => part.id).join('+'),
    about: `${parts.map((part) => part.ref).join(' and ')}, ${nameOf(bench, from.net)} to ${nameOf(bench, to.net)}`,
    parts,
    ends: [from.net, to.net],
    towards: to.side === 'earth' ? 'basic' : 'reinforced',
  };
}

function feetOf(bench: Bench, part: Part): Foot[] {
  return (part.pins ?? []).flatMap(({ net }) => {
    const id = findRead(net);
    return id === null ? [] : [{ net: id, side: findRead(bench.conductors.get(id)?.side) }];
  });
}

/** Somebody looked for suppression parts and found none: then nothing bridges the barrier by design. */
export function suppressionAbsent(bench: Bench): boolean {
  return exhibitsOf(bench, 'board').some((board) => openValue(board.suppression).state === 'absent');
}
