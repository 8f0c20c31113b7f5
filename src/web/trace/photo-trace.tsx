import { useId, useState } from 'react';
import type { SaidPad } from '../../app/casebook/pad-edit.ts';
import { moveAcross, turnRound } from '../../present/figure/alignment.ts';
import { PHOTO } from '../../present/words/photo-words.ts';
import { Link } from '../part/link.tsx';
import { PhotoStage } from '../stage/photo-stage.tsx';
import type { At } from '../stage/stage-view.ts';
import { usePhotoSize } from '../stage/use-photo-size.ts';
import { newItemId } from '../state/place-parts.ts';
import { toCasePath } from '../state/route.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { chooseSides, listBoardPhotos, NO_SIDE } from './board-photos.ts';
import { ChosenPad } from './chosen-pad.tsx';
import { LayOver } from './lay-over.tsx';
import { NetList } from './net-list.tsx';
import { PadOverlay } from './pad-overlay.tsx';
import { freeNetName, readTraced, type TracedPad } from './traced-pads.ts';

const BELOW = 'trace-below';
const ABOVE = 'trace-above';
const HALF = 0.5;
const FADES = 20; // steps of the slider

/**
 * Tracing on photos: both sides of the board over each other, pads clicked, nets growing in colour and number. What is said of a pad is a pin of
 * a part on a net, as if its line had been typed.
 */
export function PhotoTrace() {
  const { store } = useOpenPage();
  const { id, screen } = useSnapshot();
  const names = useId();
  const [shows, setShows] = useState(0);
  const [laying, setLaying] = useState(false);
  const [net, setNet] = useState(() => freeNetName(store));
  const [pin, setPin] = useState('');
  const [chosen, setChosen] = useState<{ readonly id: string; readonly asks: boolean } | null>(null);
  const [trouble, setTrouble] = useState('');
  const photos = listBoardPhotos(store, id);
  const { below, above } = chooseSides(photos, { below: screen[BELOW], above: screen[ABOVE] });
  const belowSize = usePhotoSize(below?.source ?? null);
  const aboveSize = usePhotoSize(above?.source ?? null);
  const traced = readTraced(store);
  const onto = above?.onto != null && above.onto.photo === below?.id ? above.onto.alignment : null;
  const netName = (of: string | null): string => traced.nets.find((one) => one.id === of)?.name ?? '';
  const pad = traced.pads.find((one) => one.id === chosen?.id);

  /** Answers what stands in the way, in one sentence. */
  const say = async (said: SaidPad): Promise<string> => {
    try {
      await store.pad(said, newItemId('pad'));
      return '';
    } catch (error) {
      return error instanceof Error ? error.message : String(error);
    }
  };
  const point = async (at: At): Promise<void> => {
    const isAbove = onto !== null && shows > HALF;
    const photo = isAbove ? above : below;
    if (photo === null) return;
    const [x, y] = isAbove && onto !== null ? moveAcross(turnRound(onto), [at.x, at.y]) : [at.x, at.y];
    const made: SaidPad = { id: newItemId('pad'), photo: photo.id, at: [tenth(x), tenth(y)], pin, net: net.trim() };
    const first = await say(made);
    // what was said of the pin cannot be: the pad itself was pointed at all the same
    if (first !== '' && (made.pin === '' || (await say({ ...made, pin: '' })) !== '')) {
      setTrouble(first);
      return;
    }
    setTrouble(first);
    setChosen({ id: made.id, asks: made.pin === '' || first !== '' });
    setPin('');
  };
  const place = ({ photo, at }: TracedPad): At | null => {
    if (photo === below?.id) return at;
    if (photo !== above?.id || onto === null) return null;
    const [x, y] = moveAcross(onto, [at.x, at.y]);
    return { x, y };
  };
  const backToPhoto = (): void => document.querySelector<HTMLElement>('.phototrace .stage-window')?.focus();

  if (photos.length === 0)
    return (
      <section className="phototrace" aria-label={PHOTO.traceOnPhotos}>
        <h3>{PHOTO.traceOnPhotos}</h3>
        <p className="small">
          {PHOTO.takeBothSidesIn} <Link to={toCasePath(id, 'files')}>{PHOTO.photosAndFiles}</Link>
          {PHOTO.thenPadsAreClicked}
        </p>
      </section>
    );
  return (
    <section className="phototrace" aria-label={PHOTO.traceOnPhotos}>
      <h3>{PHOTO.traceOnPhotos}</h3>
      <div className="drawn-tools">
        <label>
          {PHOTO.photo}{' '}
          <select aria-label={PHOTO.photo} value={below?.id ?? ''} onChange={(event) => store.setScreen(BELOW, event.target.value)}>
            {photos.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </select>
        </label>
        <label>
          {PHOTO.otherSide}{' '}
          <select
            aria-label={PHOTO.otherSide}
            value={above?.id ?? NO_SIDE}
            onChange={(event) => store.setScreen(ABOVE, event.target.value)}
          >
            <option value={NO_SIDE}>{PHOTO.none}</option>
            {photos
              .filter((one) => one !== below)
              .map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
          </select>
        </label>
        {above !== null && (
          <button type="button" className="btn" aria-pressed={laying} onClick={() => setLaying(!laying)}>
            {onto === null ? PHOTO.layOver : PHOTO.layOverAgain}
          </button>
        )}
        {onto !== null && !laying && (
          <label className="fade">
            {below?.name}{' '}
            <input
              type="range"
              aria-label={PHOTO.howMuchShows}
              min={0}
              max={FADES}
              value={Math.round(shows * FADES)}
              onChange={(event) => setShows(Number(event.target.value) / FADES)}
            />{' '}
            {above?.name}
          </label>
        )}
      </div>
      {laying && below !== null && above !== null && belowSize !== null && aboveSize !== null ? (
        <LayOver below={below} above={above} sizes={{ below: belowSize, above: aboveSize }} onDone={() => setLaying(false)} />
      ) : (
        <>
          <div className="drawn-tools">
            <label>
              {PHOTO.traceNet}{' '}
              <input
                aria-label={PHOTO.traceNet}
                value={net}
                list={names}
                spellCheck={false}
                autoComplete="off"
                onChange={(event) => setNet(event.target.value)}
              />
            </label>
            <button type="button" className="quiet" onClick={() => setNet(freeNetName(store))}>
              {PHOTO.aNewOne}
            </button>
            <label>
              {PHOTO.nextPadIs}{' '}
              <input
                aria-label={PHOTO.nextPadIs}
                value={pin}
                placeholder={PHOTO.pinOrNothing}
                spellCheck={false}
                autoComplete="off"
                onChange={(event) => setPin(event.target.value)}
              />
            </label>
            <datalist id={names}>
              {((store.valueAt('/case/conductors') ?? []) as readonly { readonly id: string; readonly name: string }[]).map((one) => (
                <option key={one.id} value={one.name} />
              ))}
            </datalist>
          </div>
          {below !== null && belowSize !== null ? (
            <PhotoStage
              label={PHOTO.photoOfTheBoard}
              source={below.source}
              size={belowSize}
              over={above !== null && onto !== null && aboveSize !== null ? { source: above.source, size: aboveSize, onto, shows } : null}
              onPoint={(at) => void point(at)}
            >
              {(scale) => (
                <PadOverlay
                  traced={traced}
                  place={place}
                  scale={scale}
                  chosen={chosen?.id ?? null}
                  onChoose={(one) => setChosen({ id: one, asks: false })}
                />
              )}
            </PhotoStage>
          ) : (
            <p className="small">{PHOTO.onItsWay}</p>
          )}
          <p className="small">
            {PHOTO.clickAPad} {onto !== null && PHOTO.clicksGoTo((shows > HALF ? above?.name : below?.name) ?? '')}
          </p>
          <p className="trouble" role="alert">
            {trouble}
          </p>
          {pad !== undefined && (
            <ChosenPad
              key={`${pad.id} ${pad.pin} ${pad.net}`}
              pad={pad}
              net={netName(pad.net)}
              nets={names}
              asks={chosen?.asks === true}
              onSay={async (said) => {
                const left = await say(said);
                setTrouble('');
                if (left === '') {
                  setChosen({ id: said.id, asks: false });
                  backToPhoto();
                }
                return left;
              }}
              onGone={() => {
                void store.pad({ gone: pad.id }, newItemId('pad')).catch((error: Error) => setTrouble(error.message));
                setChosen(null);
                backToPhoto();
              }}
            />
          )}
          <NetList traced={traced} current={net} onNet={setNet} onPad={(one) => setChosen({ id: one, asks: false })} />
        </>
      )}
    </section>
  );
}

function tenth(pixels: number): number {
  const TENTH = 10; // of a pixel: nobody points more finely
  return Math.round(pixels * TENTH) / TENTH;
}
