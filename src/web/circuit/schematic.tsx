import { useEffect, useRef, useState } from 'react';
import type { LiveDrawing } from '../../app/casebook/desk.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { Stage } from '../stage/stage.tsx';
import type { At } from '../stage/stage-view.ts';
import { nearestThatWay } from './nearest-that-way.ts';

/** A part or a net that stands out. */
export type Chosen = { readonly part: string } | { readonly net: string } | null;

const LEAST = 0.6; // scale below which the texts of a drawing cannot be read
const NUDGE = 10; // px of an arrow key on a part that is moved: the grid of the drawing; with Shift five times that
const NUDGE_FAR = 50;
const REST_MS = 500; // after the last arrow key, before the drawing is laid out again
const SLACK = 4; // px before a press is a drag

const ARROWS: Readonly<Record<string, At>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/**
 * The drawing of the circuit. One part takes the focus, arrow keys lead to its neighbours, Enter chooses it; while `moving`, dragging or the arrow
 * keys shift it. Wires light up when they are pointed at.
 */
export function Schematic({
  drawing,
  chosen,
  lit,
  moving,
  busy,
  onChoose,
  onMove,
}: {
  drawing: LiveDrawing;
  chosen: Chosen;
  /** A net that is pointed at elsewhere. */
  lit: string | null;
  moving: boolean;
  busy: boolean;
  onChoose: (chosen: Chosen) => void;
  /** A part was put where its symbol's corner is now at this point of the drawing. */
  onMove: (part: string, at: At) => void;
}) {
  const holder = useRef<HTMLDivElement>(null);
  const [pointed, setPointed] = useState<string | null>(null);
  const [stop, setStop] = useState<string>(drawing.places[0]?.part ?? '');
  const keepsFocus = useRef(false);
  const nudge = useRef<{ part: string; by: At; rest: number } | null>(null);
  const drag = useRef<{ part: string; from: At; by: At; scale: number } | null>(null);
  const current = drawing.places.some(({ part }) => part === stop) ? stop : (drawing.places[0]?.part ?? '');
  const partOf = (id: string): SVGGElement | null => holder.current?.querySelector(`[data-part="${CSS.escape(id)}"]`) ?? null;
  const shift = (part: string, by: At): void => partOf(part)?.setAttribute('transform', `translate(${by.x} ${by.y})`);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing has new elements
  useEffect(() => {
    const all = holder.current;
    if (all === null) return;
    const part = chosen !== null && 'part' in chosen ? chosen.part : null;
    const nets = new Set([pointed, lit, chosen !== null && 'net' in chosen ? chosen.net : null]);
    for (const one of all.querySelectorAll<SVGGElement>('[data-part]')) {
      const id = one.dataset['part'] ?? '';
      one.classList.toggle('chosen', id === part);
      one.setAttribute('aria-pressed', String(id === part));
      one.setAttribute('tabindex', id === current ? '0' : '-1');
    }
    for (const one of all.querySelectorAll<SVGGElement>('[data-net]')) one.classList.toggle('lit', nets.has(one.dataset['net'] ?? ''));
  }, [drawing.svg, chosen, pointed, lit, current]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus goes to the same part of a new drawing
  useEffect(() => {
    nudge.current = null;
    if (keepsFocus.current && document.activeElement === document.body) partOf(current)?.focus();
  }, [drawing.svg]);

  const idOf = (target: EventTarget, kind: 'part' | 'net'): string | null =>
    (target as Element).closest<SVGGElement>(`[data-${kind}]`)?.dataset[kind] ?? null;
  const click = (event: React.MouseEvent): void => {
    const part = idOf(event.target, 'part');
    const net = part === null ? idOf(event.target, 'net') : null;
    if (part !== null) {
      setStop(part);
      partOf(part)?.focus({ preventScroll: true });
      onChoose({ part });
    } else onChoose(net === null ? null : { net });
  };
  const put = (part: string, by: At): void => {
    const at = drawing.places.find((place) => place.part === part)?.at;
    if (at !== undefined) onMove(part, { x: at.x + by.x, y: at.y + by.y });
  };
  const key = (event: React.KeyboardEvent): void => {
    const part = idOf(event.target, 'part');
    if (part === null || event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (event.key === 'Enter' || event.key === ' ') onChoose({ part });
    else if (event.key === 'Escape') onChoose(null);
    else if (arrow !== undefined && moving) {
      const step = event.shiftKey ? NUDGE_FAR : NUDGE;
      const old = nudge.current?.part === part ? nudge.current : null;
      if (old !== null) clearTimeout(old.rest);
      const by = { x: (old?.by.x ?? 0) + arrow.x * step, y: (old?.by.y ?? 0) + arrow.y * step };
      shift(part, by);
      nudge.current = { part, by, rest: window.setTimeout(() => put(part, by), REST_MS) };
    } else if (arrow !== undefined) {
      const next = nearestThatWay(drawing.places, part, arrow);
      if (next !== null) {
        setStop(next);
        partOf(next)?.focus();
      }
    } else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const down = (event: React.PointerEvent, scale: number): void => {
    const part = moving && event.button === 0 ? idOf(event.target, 'part') : null;
    if (part === null) return;
    event.stopPropagation(); // the window would pan
    drag.current = { part, from: { x: event.clientX, y: event.clientY }, by: { x: 0, y: 0 }, scale };
    (event.target as Element).setPointerCapture(event.pointerId);
  };
  const move = (event: React.PointerEvent): void => {
    const held = drag.current;
    if (held === null) return;
    const by = { x: (event.clientX - held.from.x) / held.scale, y: (event.clientY - held.from.y) / held.scale };
    drag.current = { ...held, by };
    if (isDrag(drag.current)) shift(held.part, by);
  };
  const up = (): void => {
    const held = drag.current;
    drag.current = null;
    if (held === null || !isDrag(held)) return;
    setStop(held.part);
    put(held.part, held.by);
  };
  const size = sizeOf(drawing.svg);
  return (
    <Stage label={CASE_PAGE.schematic} content={size} least={LEAST}>
      {(scale) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: the parts inside are buttons; this hears for all of them
        <div
          ref={holder}
          className={`schematic${moving ? ' moving' : ''}`}
          aria-busy={busy}
          onClick={click}
          onKeyDown={key}
          onPointerDown={(event) => down(event, scale)}
          onPointerMove={move}
          onPointerUp={up}
          onPointerCancel={up}
          onPointerOver={(event) => setPointed(idOf(event.target, 'part') === null ? idOf(event.target, 'net') : null)}
          onPointerLeave={() => setPointed(null)}
          onFocus={(event) => {
            keepsFocus.current = true;
            const part = idOf(event.target, 'part');
            if (part !== null) setStop(part);
          }}
          onBlur={(event) => {
            // an element that goes with its drawing is left without a next one; only then is the focus to be given back
            keepsFocus.current = event.relatedTarget === null && !event.target.isConnected;
          }}
        >
          <RawHtml html={drawing.svg} as="div" />
        </div>
      )}
    </Stage>
  );
}

function isDrag({ by, scale }: { readonly by: At; readonly scale: number }): boolean {
  return Math.hypot(by.x, by.y) * scale > SLACK;
}

function sizeOf(svg: string): { width: number; height: number } {
  const [, width = '1', height = '1'] = /width="([\d.]+)" height="([\d.]+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}
