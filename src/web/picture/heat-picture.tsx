import { type KeyboardEvent, type PointerEvent, useCallback, useEffect, useRef, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { howToDraw, PICTURE_WORDS, pictureLabel, readoutText, SHAPE_WORDS } from '../../present/words/picture-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { fileOf } from '../api/casebook.ts';
import { listOf } from '../part/new-exhibit.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { type Drawn, outlineBetween, type Point, rounded, stepOf } from './outline.ts';
import { paint } from './paint.ts';
import { type Pair, PhotoBeside, photoFile, photoTransform } from './photo-under.tsx';
import { type DrawnRegion, RegionLayer } from './region-layer.tsx';
import { RegionTable } from './region-table.tsx';
import { SamePoints } from './same-points.tsx';
import { ScaleBar } from './scale-bar.tsx';
import { type Field, useField } from './use-field.ts';
import { useIsotherms } from './use-isotherms.ts';

type Tree = Readonly<Record<string, Json>>;
type ObjectNode = Extract<FormNode, { is: 'object' }>;

const TOOLS = Object.keys(SHAPE_WORDS) as readonly Drawn[];
const NEAR_SHARE = 0.025; // of the longer side: a corner so near to the first closes an outline
const FEWEST_CORNERS = 3;

/** A thermal picture to draw on: numbers as colours, lines of equal temperature, regions, the photo under it, and what was read in each region. */
export function HeatPicture({ id, node }: { id: string; node: ObjectNode }) {
  const { store } = useOpenPage();
  const { id: caseId, view, waiting } = useSnapshot();
  const place = `/case/exhibits/${id}`;
  const exhibit = (store.valueAt(place) ?? {}) as Tree;
  const file = listOf(store, 'files').find((item) => item['id'] === exhibit['file']);
  const key = JSON.stringify([file, exhibit['scale']]);
  const { field, trouble } = useField(caseId, id, key, waiting === 0 && file !== undefined);
  const regions = regionsOf(exhibit, listOf(store, 'places'));
  const readings = view.pictures.find((one) => one.exhibit === id)?.regions ?? [];
  const [selected, setSelected] = useState<string | null>(null);
  const regionNode = node.members.find((member) => member.key === 'regions')?.node;
  const remove = (region: string): void => {
    setSelected(null);
    store.set(`${place}/regions/${region}`, undefined, newItemId('remove'), { key: 'remove', args: {} });
  };
  const photo = photoFile(listOf(store, 'exhibits'), listOf(store, 'files'), exhibit['photo']);
  const pairs = (exhibit['samePoints'] ?? []) as unknown as readonly Pair[];
  if (file === undefined) return null;
  if (field === null) return trouble === '' ? null : <p className="trouble">{trouble}</p>;
  return (
    <div className="thermal">
      <div className="side-by-side">
        <Stage {...{ id, place, field, regions, selected, setSelected, remove, photo, pairs }} />
        {photo !== null && <PhotoBeside place={place} sha256={photo} pairs={pairs} picture={field} />}
      </div>
      {regionNode?.is === 'list' && regionNode.of.is === 'object' && (
        <RegionTable
          place={place}
          node={regionNode.of}
          regions={regions}
          readings={readings}
          selected={selected}
          onSelect={setSelected}
          onRemove={remove}
        />
      )}
    </div>
  );
}

interface StageProps {
  readonly id: string;
  readonly place: string;
  readonly field: Field;
  readonly regions: readonly DrawnRegion[];
  readonly selected: string | null;
  readonly setSelected: (id: string | null) => void;
  readonly remove: (id: string) => void;
  readonly photo: string | null;
  readonly pairs: readonly Pair[];
}

function Stage({ id, place, field, regions, selected, setSelected, remove, photo, pairs }: StageProps) {
  const { store } = useOpenPage();
  const { id: caseId } = useSnapshot();
  const canvas = useRef<HTMLCanvasElement>(null);
  const layer = useRef<SVGSVGElement>(null);
  const [range, setRange] = useState<readonly [number, number] | null>(null);
  const [from, to] = range ?? [field.least, field.greatest];
  const [lines, setLines] = useState(true);
  const [tool, setTool] = useState<Drawn | null>(null);
  const [corners, setCorners] = useState<readonly Point[]>([]);
  const [cross, setCross] = useState<Point | null>(null);
  const [strength, setStrength] = useState(0.5);
  const isotherms = useIsotherms(field, from, to, lines);
  const width = useWidth(layer);
  const longer = Math.max(field.width, field.height);
  useEffect(() => {
    if (canvas.current !== null) paint(canvas.current, field, from, to);
  }, [field, from, to]);
  const toPixel = useCallback(
    (event: PointerEvent): Point => {
      const box = layer.current?.getBoundingClientRect();
      if (box === undefined) return [0, 0];
      const share = (at: number, start: number, length: number): number => Math.min(1, Math.max(0, (at - start) / length));
      return rounded([share(event.clientX, box.left, box.width) * field.width, share(event.clientY, box.top, box.height) * field.height]);
    },
    [field],
  );
  const stop = (): void => {
    setTool(null);
    setCorners([]);
  };
  const finish = (drawn: Drawn, points: readonly Point[]): void => {
    const made = newItemId('r');
    const { change, placeId } = placeFor(regions, listOf(store, 'places'));
    const region = { id: made, place: placeId, drawn, points: points.map((point) => [...point]) };
    store.change([...change, { at: `${place}/regions/${made}`, to: region }], newItemId('add'), { key: 'addItem', args: {} });
    setSelected(made);
    stop();
    requestAnimationFrame(() => document.querySelector<HTMLElement>(`#record-${CSS.escape(made)} select`)?.focus());
  };
  const put = (point: Point): void => {
    if (tool === null) return;
    const [first] = corners;
    if (first === undefined) setCorners([point]);
    else if (tool !== 'polygon') finish(tool, outlineBetween(tool, first, point));
    else if (corners.length >= FEWEST_CORNERS && apart(point, first) < longer * NEAR_SHARE) finish(tool, corners);
    else if (apart(point, corners.at(-1) ?? first) > 0) setCorners([...corners, point]);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = stepOf(event);
    const at = cross ?? [Math.floor(field.width / 2), Math.floor(field.height / 2)];
    if (step !== null) {
      const inside = (value: number, most: number): number => Math.min(most - 1, Math.max(0, Math.round(value)));
      setCross([inside(at[0] + step[0], field.width), inside(at[1] + step[1], field.height)]);
    } else if ((event.key === 'Enter' || event.key === ' ') && tool !== null) put(at);
    else if (event.key === 'Escape') stop();
    else if (event.key === 'Backspace' && corners.length > 0) setCorners(corners.slice(0, -1));
    else return;
    event.preventDefault();
  };
  const { transform } = photoTransform(pairs);
  const preview =
    tool !== null && tool !== 'polygon' && corners[0] !== undefined && cross !== null ? outlineBetween(tool, corners[0], cross) : corners;
  return (
    <div className="beside-scale">
      <div className="tools" role="toolbar" aria-label={PICTURE_WORDS.draw}>
        {TOOLS.map((drawn) => (
          <button
            type="button"
            key={drawn}
            className={`btn${tool === drawn ? ' on' : ''}`}
            aria-pressed={tool === drawn}
            onClick={() => {
              setCorners([]);
              setTool(tool === drawn ? null : drawn);
              if (tool !== drawn) layer.current?.focus();
            }}
          >
            {SHAPE_WORDS[drawn].name}
          </button>
        ))}
        {tool === 'polygon' && corners.length >= FEWEST_CORNERS && (
          <button type="button" className="btn" onClick={() => finish('polygon', corners)}>
            {PICTURE_WORDS.close}
          </button>
        )}
        <label className="tick">
          <input type="checkbox" checked={lines} onChange={(event) => setLines(event.target.checked)} /> {PICTURE_WORDS.lines}
        </label>
        <small>{tool === null ? '' : howToDraw(tool)}</small>
      </div>
      <div className={`stage${tool === null ? '' : ' drawing'}`}>
        <canvas ref={canvas} width={field.width} height={field.height} />
        {photo !== null && transform !== '' && width > 0 && (
          <img
            className="under"
            src={fileOf(caseId, photo)}
            alt=""
            style={{ transform: `scale(${width / field.width}) ${transform}`, opacity: strength }}
          />
        )}
        <svg
          ref={layer}
          viewBox={`0 0 ${field.width} ${field.height}`}
          role="application"
          aria-label={pictureLabel(id, field.width, field.height)}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is drawn on by keys too, which the label tells
          tabIndex={0}
          onKeyDown={onKeyDown}
          onPointerDown={(event) => {
            if (tool === null) return setSelected(null);
            event.currentTarget.setPointerCapture(event.pointerId);
            put(toPixel(event));
          }}
          onPointerMove={(event) => setCross(toPixel(event))}
          onPointerUp={(event) => {
            const [first] = corners;
            const point = toPixel(event);
            // a drag ends with its second corner; a plain click waits for another one
            if (tool !== null && tool !== 'polygon' && first !== undefined && apart(first, point) > longer * NEAR_SHARE)
              finish(tool, outlineBetween(tool, first, point));
          }}
        >
          {isotherms.map(({ level, path, at }) => (
            <g key={level} className="isotherm">
              <path d={path} />
              {at !== null && (
                <text x={at[0]} y={at[1]} style={{ fontSize: longer / 34 }}>
                  {level}
                </text>
              )}
            </g>
          ))}
          <RegionLayer
            regions={regions}
            selected={selected}
            size={field}
            toPixel={toPixel}
            onSelect={setSelected}
            onRemove={remove}
            onPoints={(region, points) =>
              store.set(
                `${place}/regions/${region}/points`,
                points.map((point) => [...point]),
                `points-${region}`,
                { key: 'entry', args: { at: place } },
              )
            }
          />
          {preview.length > 0 && <polyline className="preview" points={preview.map((point) => point.join(',')).join(' ')} />}
          {photo !== null && (
            <SamePoints
              marks={pairs.map((pair) => ({ id: pair.id, at: pair.picture }))}
              size={field}
              of={PICTURE_WORDS.thermal}
              onMove={(pair, at) =>
                store.set(`${place}/samePoints/${pair}/picture`, [...at], `point-${pair}`, { key: 'entry', args: { at: place } })
              }
            />
          )}
          {cross !== null && <Cross at={cross} size={longer / 40} />}
        </svg>
      </div>
      <output className="readout">{cross === null ? PICTURE_WORDS.point : readout(field, cross)}</output>
      <ScaleBar {...{ field, from, to, setRange }} whole={range === null} />
      {photo !== null && transform !== '' && (
        <label className="strength">
          {PICTURE_WORDS.over}
          <input type="range" min={0} max={1} step={0.05} value={strength} onChange={(event) => setStrength(Number(event.target.value))} />
        </label>
      )}
    </div>
  );
}

function Cross({ at: [x, y], size }: { at: Point; size: number }) {
  return <path className="cross" d={`M${x - size} ${y}H${x + size}M${x} ${y - size}V${y + size}`} />;
}

function readout({ width, height, values }: Field, [x, y]: Point): string {
  const [column, row] = [Math.min(width - 1, Math.floor(x)), Math.min(height - 1, Math.floor(y))];
  const value = values[row * width + column];
  return readoutText(column, row, value === undefined || Number.isNaN(value) ? null : value);
}

function apart([x1, y1]: Point, [x2, y2]: Point): number {
  return Math.hypot(x1 - x2, y1 - y2);
}

function regionsOf(exhibit: Tree, places: readonly Tree[]): DrawnRegion[] {
  const list = Array.isArray(exhibit['regions']) ? (exhibit['regions'] as readonly Tree[]) : [];
  return list.map((region, index) => ({
    id: String(region['id']),
    number: index + 1,
    name: String(places.find((place) => place['id'] === region['place'])?.['name'] ?? PICTURE_WORDS.noPlace),
    drawn: (region['drawn'] as Drawn | undefined) ?? 'polygon',
    points: (region['points'] ?? []) as unknown as readonly Point[],
  }));
}

/** The first place that no region is of yet, else the first; made where there is none. */
function placeFor(regions: readonly DrawnRegion[], places: readonly Tree[]) {
  const names = new Set(regions.map(({ name }) => name));
  const free = places.find((place) => !names.has(String(place['name']))) ?? places[0];
  if (free !== undefined) return { change: [], placeId: String(free['id']) };
  const placeId = 'place-1';
  return { change: [{ at: `/case/places/${placeId}`, to: { id: placeId, name: 'place 1' } }], placeId };
}

/** How wide an element is drawn, in CSS pixels, kept up to date. */
function useWidth(element: { readonly current: Element | null }): number {
  const [width, setWidth] = useState(0);
  useEffect(() => {
    if (element.current === null) return;
    const watch = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width ?? 0));
    watch.observe(element.current);
    return () => watch.disconnect();
  }, [element]);
  return width;
}
