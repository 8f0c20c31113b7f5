import type { Assessment } from '../../core/result/assessment.ts';
import type { BarrierMap } from '../../core/result/barrier-map.ts';
import { findLitPath } from '../figure/barrier-map.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { NOTES } from '../words/notes.ts';
import { strengthText, WAY_WORDS } from '../words/transformer-words.ts';

/** One piece of insulation, and where what it stands for was read. */
export interface BarrierPiece {
  readonly way: string;
  readonly words: string;
  readonly strength: string;
  readonly place: string | null;
}

/** The barrier map as sentences: the weakest path, what it takes to defeat it, and the waist that every path goes through. */
export interface BarrierView {
  readonly lines: readonly { readonly title: string; readonly words: string; readonly pieces: readonly BarrierPiece[] }[];
  /** What nobody looked at, so that the map has no verdict of its own yet. */
  readonly missing: readonly string[];
}

const MOST_IN_WAIST = 12; // more are no list that anyone reads

export function toBarrierView({ barrier }: Assessment): BarrierView | null {
  if (barrier === undefined) return null;
  const pieces = (ids: readonly string[]): BarrierPiece[] => ids.map((id) => toPiece(barrier, id));
  const names = (ids: readonly string[]): string => ids.map((id) => barrier.nodes.find((node) => node.id === id)?.name ?? id).join(' → ');
  const weakest = findLitPath(barrier);
  const { fewest, waist } = barrier;
  return {
    lines: [
      ...(weakest === undefined
        ? []
        : [
            {
              title: 'Weakest path',
              words: `${names(weakest.nodes)}: ${strengthText(leastOf(barrier, weakest.ways), atBestOf(barrier, weakest.ways))}`,
              pieces: pieces(weakest.ways),
            },
          ]),
      ...(fewest === null
        ? []
        : [
            {
              title: 'Fewest failures',
              words: failuresText(barrier, fewest, names(fewest.nodes)),
              pieces: pieces(fewest.ways),
            },
          ]),
      ...(waist === null || waist.ways.length > MOST_IN_WAIST
        ? []
        : [{ title: 'Every path goes through', words: `one of ${waist.ways.length}`, pieces: pieces(waist.ways) }]),
    ],
    missing: barrier.missing.map((what) => sentenceFor(NOTES, 'barrierGap', { what })),
  };
}

function failuresText(map: BarrierMap, { failures, ways }: NonNullable<BarrierMap['fewest']>, names: string): string {
  if (failures > 0) return `${failures === 1 ? 'one piece' : `${failures} pieces`} on ${names}`;
  return atBestOf(map, ways) > 0 ? `not known: what stands on ${names} is open` : `none is needed: ${names} conducts as it is`;
}

/** What is surely there on a path: its pieces in a row add up. */
function leastOf({ ways }: BarrierMap, path: readonly string[]): number {
  return path.reduce((sum, id) => sum + (ways.find((way) => way.id === id)?.low ?? 0), 0);
}

/** What a path comes to if everything open on it turns out well: its pieces in a row add up. */
function atBestOf({ ways }: BarrierMap, path: readonly string[]): number {
  return path.reduce((sum, id) => sum + (ways.find((way) => way.id === id)?.high ?? 0), 0);
}

function toPiece({ ways }: BarrierMap, id: string): BarrierPiece {
  const way = ways.find((one) => one.id === id);
  if (way === undefined) return { way: id, words: id, strength: '', place: null };
  const kind = sentenceFor(WAY_WORDS, way.kind);
  return {
    way: id,
    words: way.kind === 'part' || way.kind === 'optocoupler' || way.kind === 'joint' ? way.about : `${way.about}, ${kind}`,
    strength: strengthText(way.low, way.high),
    place: way.fields[0] ?? null,
  };
}
