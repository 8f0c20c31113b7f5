import type { ReactNode } from 'react';
import { type Alignment, toCssTransform } from '../../present/figure/alignment.ts';
import { PHOTO } from '../../present/words/photo-words.ts';
import { Stage } from './stage.tsx';
import type { At, Size } from './stage-view.ts';

/** A photo laid over the one below it, and how much of it shows, from 0 to 1. */
export interface LaidOver {
  readonly source: string;
  readonly size: Size;
  readonly onto: Alignment;
  readonly shows: number;
}

/**
 * A window on a photo, with another one laid over it or not; drawings on it are in pixels of the photo below, and are given the scale so that
 * lines and texts can keep their size on the screen.
 */
export function PhotoStage({
  label,
  source,
  size,
  over,
  onPoint,
  tools,
  children,
}: {
  label: string;
  source: string;
  size: Size;
  over?: LaidOver | null;
  onPoint?: ((at: At) => void) | undefined;
  tools?: ReactNode;
  children?: (scale: number) => ReactNode;
}) {
  return (
    <Stage label={label} content={size} fits onPoint={onPoint} tools={tools}>
      {(scale) => (
        <>
          <img className="photo" src={source} alt="" draggable={false} width={size.width} height={size.height} />
          {over != null && (
            <img
              className="photo laid-over"
              src={over.source}
              alt=""
              draggable={false}
              width={over.size.width}
              height={over.size.height}
              style={{ transform: toCssTransform(over.onto), opacity: over.shows }}
            />
          )}
          {/* biome-ignore lint/a11y/useSemanticElements: a drawing with buttons in it has no element of its own */}
          <svg
            className="photo-drawing"
            width={size.width}
            height={size.height}
            viewBox={`0 0 ${size.width} ${size.height}`}
            role="group"
            aria-label={PHOTO.drawnOn(label)}
          >
            {children?.(scale)}
          </svg>
        </>
      )}
    </Stage>
  );
}

/** A numbered point on a photo. */
export function NumberedPoint({ at, number, scale }: { at: At; number: number; scale: number }) {
  const [ARM, TEXT] = [14, 13]; // px of the screen
  return (
    <g className="point" transform={`translate(${at.x} ${at.y}) scale(${1 / scale})`}>
      <path className="halo" d={`M${-ARM} 0H${ARM}M0 ${-ARM}V${ARM}`} />
      <path d={`M${-ARM} 0H${ARM}M0 ${-ARM}V${ARM}`} />
      <text x={6} y={-5} fontSize={TEXT}>
        {number}
      </text>
    </g>
  );
}
