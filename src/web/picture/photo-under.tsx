import { useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { alignByPoints, toCssTransform } from '../../present/figure/alignment.ts';
import { PICTURE_WORDS, pointsMissing, takePoint } from '../../present/words/picture-words.ts';
import { fileOf } from '../api/casebook.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import type { Point } from './outline.ts';
import { SamePoints } from './same-points.tsx';

/** A point found on both, as the case keeps it. */
export interface Pair {
  readonly id: string;
  readonly picture: Point;
  readonly photo: Point;
}

const MOST = 4;
const FEWEST = 3;
/** Where new points wait to be moved, as shares of each side: apart from each other and from the edges. */
const WAITING: readonly Point[] = [
  [0.2, 0.2],
  [0.8, 0.2],
  [0.8, 0.8],
  [0.2, 0.8],
];

/** The photo that lies under a picture: its file, or null. */
export function photoFile(
  items: readonly Readonly<Record<string, Json>>[],
  files: readonly Readonly<Record<string, Json>>[],
  photo: Json | undefined,
) {
  const exhibit = items.find((item) => item['id'] === photo && item['kind'] === 'photo');
  const file = exhibit === undefined ? undefined : files.find((item) => item['id'] === exhibit['file']);
  return file === undefined ? null : String(file['sha256']);
}

/** How the photo is laid under the picture, as a CSS transform in pixels of the picture; or why not yet. */
export function photoTransform(pairs: readonly Pair[]): { readonly transform: string; readonly why: string } {
  if (pairs.length < FEWEST) return { transform: '', why: pointsMissing(FEWEST - pairs.length) };
  const laid = alignByPoints(pairs.map(({ picture, photo }) => ({ from: photo, to: picture })));
  return isRefusal(laid) ? { transform: '', why: PICTURE_WORDS.inLine } : { transform: toCssTransform(laid), why: '' };
}

/** The photo beside the picture with the points found on both. */
export function PhotoBeside(props: { place: string; sha256: string; pairs: readonly Pair[]; picture: { width: number; height: number } }) {
  const { place, sha256, pairs, picture } = props;
  const { store } = useOpenPage();
  const { id: caseId } = useSnapshot();
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  const keep = (id: string, photo: Point): void =>
    store.set(`${place}/samePoints/${id}/photo`, [...photo], `point-${id}`, { key: 'entry', args: { at: place } });
  const add = (): void => {
    if (size === null) return;
    const id = newItemId('p');
    const [x, y] = WAITING[pairs.length] ?? [0.5, 0.5];
    const made = { id, picture: [x * picture.width, y * picture.height], photo: [x * size.width, y * size.height] };
    // the list is begun with its first point
    const [at, to] = pairs.length === 0 ? [`${place}/samePoints`, [made]] : [`${place}/samePoints/${id}`, made];
    store.set(at, to, newItemId('add'), { key: 'addItem', args: {} });
  };
  const remove = (): void => {
    const last = pairs.at(-1);
    if (last !== undefined) store.set(`${place}/samePoints/${last.id}`, undefined, newItemId('remove'), { key: 'remove', args: {} });
  };
  return (
    <div className="photo-beside">
      <div className="stage">
        <img
          src={fileOf(caseId, sha256)}
          alt={PICTURE_WORDS.seen}
          onLoad={(event) => setSize({ width: event.currentTarget.naturalWidth, height: event.currentTarget.naturalHeight })}
        />
        {size !== null && (
          <svg viewBox={`0 0 ${size.width} ${size.height}`} aria-label={PICTURE_WORDS.onPhoto} role="application">
            <SamePoints marks={pairs.map(({ id, photo }) => ({ id, at: photo }))} size={size} of={PICTURE_WORDS.photo} onMove={keep} />
          </svg>
        )}
      </div>
      <p className="ways">
        <button type="button" className="btn" disabled={pairs.length >= MOST || size === null} onClick={add}>
          {PICTURE_WORDS.addPoint}
        </button>
        {pairs.length > 0 && (
          <button type="button" className="quiet" onClick={remove}>
            {takePoint(pairs.length)}
          </button>
        )}
        <small>{photoTransform(pairs).why || PICTURE_WORDS.laid}</small>
      </p>
    </div>
  );
}
