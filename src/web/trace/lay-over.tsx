import { useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { alignByPoints, type Point } from '../../present/figure/alignment.ts';
import { PHOTO } from '../../present/words/photo-words.ts';
import { NumberedPoint, PhotoStage } from '../stage/photo-stage.tsx';
import type { At, Size } from '../stage/stage-view.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage } from '../state/use-case.ts';
import type { BoardPhoto } from './board-photos.ts';

const MOST = 4; // points: a photo at a slant needs them all
const FEWEST = 3;

/** Both sides beside each other: the same four things are pointed at in each, and one photo is laid on the other, mirrored or not. */
export function LayOver({
  below,
  above,
  sizes,
  onDone,
}: {
  below: BoardPhoto;
  above: BoardPhoto;
  sizes: { readonly below: Size; readonly above: Size };
  onDone: () => void;
}) {
  const { store } = useOpenPage();
  const [there, setThere] = useState<readonly At[]>([]);
  const [here, setHere] = useState<readonly At[]>([]);
  const pairs = Math.min(there.length, here.length);
  const points = Array.from({ length: pairs }, (_, index) => ({ here: toPoint(here[index]!), there: toPoint(there[index]!) }));
  const made = pairs < FEWEST ? null : alignByPoints(points.map((pair) => ({ from: pair.here, to: pair.there })));
  const add =
    (set: typeof setThere): ((at: At) => void) =>
    (at) =>
      set((all) => (all.length < MOST ? [...all, at] : all));
  const keep = (): void => {
    store.set(`/case/exhibits/${above.id}/onto`, { photo: below.id, points } as unknown as Json, newItemId('lay'), {
      key: 'layOver',
      args: {},
    });
    onDone();
  };
  const next = pairs + 1;
  return (
    <section className="layover" aria-label={PHOTO.layOneOnTheOther}>
      <p className="small">
        {PHOTO.pointAtTheSame(MOST)} <b role="status">{pairs < MOST ? PHOTO.pair(next, MOST) : PHOTO.allPairs}</b>
      </p>
      <div className="two-sides">
        {[
          { photo: below, size: sizes.below, own: there, set: setThere },
          { photo: above, size: sizes.above, own: here, set: setHere },
        ].map(({ photo, size, own, set }) => (
          <PhotoStage
            key={photo.id}
            label={photo.name}
            source={photo.source}
            size={size}
            onPoint={own.length < MOST ? add(set) : undefined}
            tools={
              own.length > 0 && (
                <button type="button" className="quiet" onClick={() => set(own.slice(0, -1))}>
                  {PHOTO.takePointBack(own.length)}
                </button>
              )
            }
          >
            {(scale) => own.map((at, index) => <NumberedPoint key={`${at.x} ${at.y}`} at={at} number={index + 1} scale={scale} />)}
          </PhotoStage>
        ))}
      </div>
      {isRefusal(made) && (
        <p className="trouble" role="alert">
          {PHOTO.doNotLay(made.expected)}
        </p>
      )}
      <p className="ways">
        <button type="button" className="btn" disabled={made === null || isRefusal(made)} onClick={keep}>
          {PHOTO.layAboveOn(above.name, below.name)}
        </button>
        <button type="button" className="quiet" onClick={onDone}>
          {PHOTO.leaveIt}
        </button>
      </p>
    </section>
  );
}

function toPoint({ x, y }: At): Point {
  const TENTH = 10; // of a pixel: nobody points more finely
  return [Math.round(x * TENTH) / TENTH, Math.round(y * TENTH) / TENTH];
}
