import { type PointerEvent, useRef, useState } from 'react';
import { pointLabel } from '../../present/words/picture-words.ts';
import { type Point, rounded, stepOf } from './outline.ts';

export interface Mark {
  readonly id: string;
  readonly at: Point;
}

interface Props {
  readonly marks: readonly Mark[];
  readonly size: { readonly width: number; readonly height: number };
  readonly of: string;
  readonly onMove: (id: string, to: Point) => void;
}

const MARK_SHARE = 0.018;

/** Numbered points on a picture, dragged or moved by arrow keys; the same numbers stand on the other picture. */
export function SamePoints({ marks, size, of, onMove }: Props) {
  const [held, setHeld] = useState<Mark | null>(null);
  const layer = useRef<SVGGElement>(null);
  const { width, height } = size;
  const r = Math.max(width, height) * MARK_SHARE;
  const inside = ([x, y]: Point): Point => rounded([Math.min(width, Math.max(0, x)), Math.min(height, Math.max(0, y))]);
  const toPixel = (event: PointerEvent): Point => {
    const box = layer.current?.ownerSVGElement?.getBoundingClientRect();
    if (box === undefined) return [0, 0];
    return inside([((event.clientX - box.left) / box.width) * width, ((event.clientY - box.top) / box.height) * height]);
  };
  return (
    <g ref={layer} className="same-points">
      {marks.map(({ id, at }, index) => {
        const [x, y] = held?.id === id ? held.at : at;
        return (
          // biome-ignore lint/a11y/useSemanticElements: a shape of a drawing cannot be a button element
          <g
            key={id}
            role="button"
            tabIndex={0}
            aria-label={pointLabel(index + 1, of)}
            onKeyDown={(event) => {
              const step = stepOf(event);
              if (step === null) return;
              event.preventDefault();
              event.stopPropagation();
              onMove(id, inside([x + step[0], y + step[1]]));
            }}
            onPointerDown={(event) => {
              event.stopPropagation();
              event.currentTarget.setPointerCapture(event.pointerId);
              setHeld({ id, at: [x, y] });
            }}
            onPointerMove={(event) => held?.id === id && setHeld({ id, at: toPixel(event) })}
            onPointerUp={() => {
              if (held !== null) onMove(held.id, held.at);
              setHeld(null);
            }}
          >
            <circle cx={x} cy={y} r={r} />
            <path
              d={`M${x - 2 * r} ${y}H${x - r / 2}M${x + r / 2} ${y}H${x + 2 * r}M${x} ${y - 2 * r}V${y - r / 2}M${x} ${y + r / 2}V${y + 2 * r}`}
            />
            <text x={x + r * 1.2} y={y - r * 1.2} style={{ fontSize: r * 2 }}>
              {index + 1}
            </text>
          </g>
        );
      })}
    </g>
  );
}
