import { type FormEvent, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { PHOTO } from '../../present/words/photo-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import { NumberedPoint, PhotoStage } from '../stage/photo-stage.tsx';
import type { At } from '../stage/stage-view.ts';
import { usePhotoSize } from '../stage/use-photo-size.ts';
import { idFromName, newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { listBoardPhotos } from '../trace/board-photos.ts';

type Pixel = readonly [number, number];
interface Region {
  readonly id: string;
  readonly place: string;
  readonly points: readonly Pixel[];
}
interface Scale {
  readonly points: readonly [Pixel, Pixel];
  readonly length: string;
}
type Drawing = { readonly what: 'scale' | 'region'; readonly points: readonly At[] } | null;

const FEWEST_CORNERS = 3;
const SHOWN = 'marked-photo';

/** Regions and a scale, drawn on the photos of the case: two points and their distance, or the outline of a place. */
export function PhotoMarks() {
  const { store } = useOpenPage();
  const { id, screen } = useSnapshot();
  const [drawing, setDrawing] = useState<Drawing>(null);
  const photos = listBoardPhotos(store, id);
  const photo = photos.find((one) => one.id === screen[SHOWN]) ?? photos[0];
  const size = usePhotoSize(photo?.source ?? null);
  if (photo === undefined) return null;
  const place = `/case/exhibits/${photo.id}`;
  const scale = store.valueAt(`${place}/scale`) as unknown as Scale | undefined;
  const regions = (store.valueAt(`${place}/regions`) ?? []) as unknown as readonly Region[];
  const names = new Map(listOf(store, 'places').map((one) => [String(one['id']), String(one['name'])]));
  const point = (at: At): void => {
    if (drawing === null || (drawing.what === 'scale' && drawing.points.length >= 2)) return;
    setDrawing({ ...drawing, points: [...drawing.points, at] });
  };
  const keepScale = (length: string): void => {
    if (drawing === null) return;
    store.set(`${place}/scale`, { points: drawing.points.map(toPixel), length } as unknown as Json, newItemId('scale'), {
      key: 'scale',
      args: {},
    });
    setDrawing(null);
  };
  const keepRegion = (name: string): void => {
    if (drawing === null) return;
    const known = listOf(store, 'places').find((one) => one['name'] === name || one['id'] === name);
    const spot = known === undefined ? idFromName(name, [...names.keys()]) : String(known['id']);
    const made = { id: newItemId('region'), place: spot, points: drawing.points.map(toPixel) };
    const held = store.valueAt(`${place}/regions`);
    store.change(
      [
        ...(known === undefined ? [{ at: `/case/places/${spot}`, to: { id: spot, name } }] : []),
        held === undefined
          ? { at: `${place}/regions`, to: [made] as unknown as Json }
          : { at: `${place}/regions/${made.id}`, to: made as unknown as Json },
      ],
      newItemId('region'),
      { key: 'region', args: {} },
    );
    setDrawing(null);
  };
  return (
    <section className="photomarks" aria-label={PHOTO.scaleAndRegionsOnPhotos}>
      <h3>{PHOTO.scaleAndRegions}</h3>
      <div className="drawn-tools">
        <label>
          {PHOTO.photo}{' '}
          <select
            aria-label={PHOTO.photo}
            value={photo.id}
            onChange={(event) => {
              store.setScreen(SHOWN, event.target.value);
              setDrawing(null);
            }}
          >
            {photos.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </select>
        </label>
        <button
          type="button"
          className="btn"
          aria-pressed={drawing?.what === 'scale'}
          onClick={() => setDrawing({ what: 'scale', points: [] })}
        >
          {scale === undefined ? PHOTO.setTheScale : PHOTO.setTheScaleAgain}
        </button>
        <button
          type="button"
          className="btn"
          aria-pressed={drawing?.what === 'region'}
          onClick={() => setDrawing({ what: 'region', points: [] })}
        >
          {PHOTO.drawARegion}
        </button>
        {drawing !== null && (
          <button type="button" className="quiet" onClick={() => setDrawing(null)}>
            {PHOTO.leaveIt}
          </button>
        )}
      </div>
      {drawing !== null && (
        <p className="small" role="status">
          {drawing.what === 'scale' ? PHOTO.pointAtTwo(drawing.points.length) : PHOTO.pointAtCorners(drawing.points.length, FEWEST_CORNERS)}
        </p>
      )}
      {drawing?.what === 'scale' && drawing.points.length === 2 && (
        <Ask label={PHOTO.howFarApart} example="20 mm" check={isLength} onSay={keepScale} />
      )}
      {drawing?.what === 'region' && drawing.points.length >= FEWEST_CORNERS && (
        <Ask label={PHOTO.whichPlace} example={PHOTO.placeExample} check={(text) => (text === '' ? PHOTO.aPlace : '')} onSay={keepRegion} />
      )}
      {size === null ? (
        <p className="small">{PHOTO.onItsWay}</p>
      ) : (
        <PhotoStage label={PHOTO.marksOn(photo.name)} source={photo.source} size={size} onPoint={drawing === null ? undefined : point}>
          {(zoom) => (
            <>
              {scale !== undefined && <ScaleMark scale={scale} zoom={zoom} />}
              {regions.map((region) => (
                <RegionMark key={region.id} points={region.points} name={names.get(region.place) ?? region.place} zoom={zoom} />
              ))}
              {drawing?.points.map((at, index) => (
                <NumberedPoint key={`${at.x} ${at.y}`} at={at} number={index + 1} scale={zoom} />
              ))}
            </>
          )}
        </PhotoStage>
      )}
      <ul className="netlist" aria-label={PHOTO.marksOn(photo.name)}>
        {scale !== undefined && <li>{PHOTO.scaleIs(scale.length)}</li>}
        {regions.map((region) => (
          <li key={region.id}>
            {PHOTO.regionIs(names.get(region.place) ?? region.place, region.points.length)}
            <button
              type="button"
              className="quiet"
              onClick={() => store.set(`${place}/regions/${region.id}`, undefined, newItemId('region'), { key: 'region', args: {} })}
            >
              {PHOTO.takeRegionAway}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** One answer about what was just pointed at; `check` says what is missing in it, or nothing. */
function Ask({
  label,
  example,
  check,
  onSay,
}: {
  label: string;
  example: string;
  check: (text: string) => string;
  onSay: (text: string) => void;
}) {
  const [text, setText] = useState('');
  const [wrong, setWrong] = useState('');
  const say = (event: FormEvent): void => {
    event.preventDefault();
    const missing = check(text.trim());
    setWrong(missing);
    if (missing === '') onSay(text.trim());
  };
  return (
    <form className="chosenpad" onSubmit={say}>
      <label>
        {label}{' '}
        <input aria-label={label} value={text} placeholder={example} autoComplete="off" onChange={(event) => setText(event.target.value)} />
      </label>
      <button type="submit" className="btn">
        {PHOTO.keepIt}
      </button>
      <p className="trouble" role="alert">
        {wrong === '' ? '' : PHOTO.isNot(text, wrong)}
      </p>
    </form>
  );
}

function isLength(text: string): string {
  const read = parseQuantity(text, 'length');
  return isRefusal(read) ? read.expected : '';
}

/** A line with ends and its length. */
function ScaleMark({ scale: { points, length }, zoom }: { scale: Scale; zoom: number }) {
  const [[x1, y1], [x2, y2]] = points;
  const [END, TEXT] = [7, 13]; // px of the screen
  const far = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [nx, ny] = [((y1 - y2) / far) * (END / zoom), ((x2 - x1) / far) * (END / zoom)];
  const way = `M${x1} ${y1}L${x2} ${y2}M${x1 - nx} ${y1 - ny}L${x1 + nx} ${y1 + ny}M${x2 - nx} ${y2 - ny}L${x2 + nx} ${y2 + ny}`;
  return (
    <g className="photo-mark">
      <path className="halo" d={way} strokeWidth={5 / zoom} />
      <path className="line" d={way} strokeWidth={2 / zoom} />
      <Plate x={(x1 + x2) / 2} y={(y1 + y2) / 2} text={length} size={TEXT} zoom={zoom} />
    </g>
  );
}

function RegionMark({ points, name, zoom }: { points: readonly Pixel[]; name: string; zoom: number }) {
  const TEXT = 13; // px of the screen
  const way = points.map(([x, y]) => `${x},${y}`).join(' ');
  const [x, y] = [0, 1].map((axis) => points.reduce((sum, one) => sum + (one[axis] ?? 0), 0) / Math.max(1, points.length)) as [
    number,
    number,
  ];
  return (
    <g className="photo-mark">
      <polygon className="halo" points={way} strokeWidth={5 / zoom} />
      <polygon className="line" points={way} strokeWidth={2 / zoom} strokeDasharray={`${8 / zoom} ${4 / zoom}`} />
      <Plate x={x} y={y} text={name} size={TEXT} zoom={zoom} />
    </g>
  );
}

/** A text on a plate that keeps its size on the screen. */
function Plate({ x, y, text, size, zoom }: { x: number; y: number; text: string; size: number; zoom: number }) {
  const LETTER = 0.58; // width of a letter beside its height
  const wide = text.length * size * LETTER + 8;
  return (
    <g transform={`translate(${x} ${y}) scale(${1 / zoom})`}>
      <rect className="plate" x={-wide / 2} y={-size * 0.8} width={wide} height={size * 1.5} rx={2} />
      <text textAnchor="middle" y={size * 0.32} fontSize={size}>
        {text}
      </text>
    </g>
  );
}

function toPixel({ x, y }: At): Pixel {
  const TENTH = 10; // of a pixel: nobody points more finely
  return [Math.round(x * TENTH) / TENTH, Math.round(y * TENTH) / TENTH];
}
