import { type PointerEvent, useState } from 'react';
import { cornerLabel, regionLabel } from '../../present/words/picture-words.ts';
import { type Drawn, handlesOf, movedBy, type Point, stepOf, withHandle } from './outline.ts';

export interface DrawnRegion {
  readonly id: string;
  readonly number: number;
  readonly name: string;
  readonly drawn: Drawn;
  readonly points: readonly Point[];
}

interface Props {
  readonly regions: readonly DrawnRegion[];
  readonly selected: string | null;
  readonly size: { readonly width: number; readonly height: number };
  readonly toPixel: (event: PointerEvent) => Point;
  readonly onSelect: (id: string) => void;
  readonly onPoints: (id: string, points: readonly Point[]) => void;
  readonly onRemove: (id: string) => void;
}

/** What is being moved: the whole region, or one of its handles. */
interface Held {
  readonly id: string;
  readonly handle: number | null;
  readonly from: Point;
  readonly points: readonly Point[];
}

const HANDLE_SHARE = 0.011; // of the longer side: small on the picture, and a ring round it wide enough for a finger
const LABEL_SHARE = 0.032;

/** The regions over the picture: moved and resized by pointer, and by arrow keys once one has the focus. */
export function RegionLayer({ regions, selected, size, toPixel, onSelect, onPoints, onRemove }: Props) {
  const [held, setHeld] = useState<Held | null>(null);
  const longer = Math.max(size.width, size.height);
  const shown = regions.map((region) => (held?.id === region.id ? { ...region, points: held.points } : region));
  const take = (event: PointerEvent<SVGElement>, { id, points }: DrawnRegion, handle: number | null): void => {
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    onSelect(id);
    setHeld({ id, handle, from: toPixel(event), points });
  };
  const move = (event: PointerEvent, region: DrawnRegion): void => {
    if (held?.id !== region.id) return;
    event.stopPropagation();
    const [x, y] = toPixel(event);
    const before = regions.find(({ id }) => id === region.id)?.points ?? region.points;
    const points =
      held.handle === null
        ? movedBy(before, [x - held.from[0], y - held.from[1]], size)
        : withHandle(region.drawn, before, held.handle, [x, y]);
    setHeld({ ...held, points });
  };
  const drop = (): void => {
    if (held !== null) onPoints(held.id, held.points);
    setHeld(null);
  };
  const holding = (region: DrawnRegion, handle: number | null) => ({
    onPointerDown: (event: PointerEvent<SVGElement>) => take(event, region, handle),
    onPointerMove: (event: PointerEvent<SVGElement>) => move(event, region),
    onPointerUp: drop,
    onPointerCancel: () => setHeld(null),
  });
  return (
    <>
      {shown.map((region) => {
        const { id, number, name, points } = region;
        const [first = [0, 0]] = handlesOf(region.drawn === 'polygon' ? 'rectangle' : region.drawn, points);
        const side = longer * LABEL_SHARE;
        return (
          <g key={id} className={`region${selected === id ? ' chosen' : ''}`}>
            {/* biome-ignore lint/a11y/useSemanticElements: a shape of a drawing cannot be a button element */}
            <polygon
              points={points.map((point) => point.join(',')).join(' ')}
              role="button"
              tabIndex={0}
              aria-pressed={selected === id}
              aria-label={regionLabel(number, name)}
              data-region={id}
              onFocus={() => onSelect(id)}
              onKeyDown={(event) => {
                const step = stepOf(event);
                if (step !== null) onPoints(id, movedBy(points, step, size));
                else if (event.key === 'Delete' || event.key === 'Backspace') onRemove(id);
                else return;
                event.preventDefault();
                event.stopPropagation();
              }}
              {...holding(region, null)}
            />
            <rect className="tag" x={first[0]} y={first[1]} width={side} height={side} />
            <text className="tag" x={first[0] + side / 2} y={first[1] + side * 0.76} style={{ fontSize: side * 0.8 }} textAnchor="middle">
              {number}
            </text>
          </g>
        );
      })}
      {shown
        .filter(({ id }) => id === selected)
        .flatMap((region) =>
          handlesOf(region.drawn, region.points).map(([x, y], handle) => (
            // biome-ignore lint/a11y/useSemanticElements: a shape of a drawing cannot be a button element
            <circle
              // biome-ignore lint/suspicious/noArrayIndexKey: corners are their positions
              key={handle}
              className="handle"
              cx={x}
              cy={y}
              r={longer * HANDLE_SHARE}
              role="button"
              tabIndex={0}
              aria-label={cornerLabel(handle + 1, region.number)}
              onKeyDown={(event) => {
                const step = stepOf(event);
                if (step === null) return;
                event.preventDefault();
                event.stopPropagation();
                onPoints(region.id, withHandle(region.drawn, region.points, handle, [x + step[0], y + step[1]]));
              }}
              {...holding(region, handle)}
            />
          )),
        )}
    </>
  );
}
