import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { type At, fitView, panBy, type Size, type StageView, toContent, toWindow, zoomAt } from './stage-view.ts';

const ZOOM = 1.25; // of a press of a button or key
const WHEEL = 0.002; // of a notch of a wheel, per px
const SLACK = 4; // px that a hand may move and still have meant the point
const STEP = 40; // px of the window that an arrow key pans by
const AIM = 4; // px of the window that an arrow key moves the crosshair by; with Shift eight times that
const AIM_FAR = 32;

const ARROWS: Readonly<Record<string, At>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/**
 * A window on a picture: a drag or the arrow keys pan, buttons, + and −, pinch or Ctrl with the wheel zoom, 0 shows all of it. With `onPoint`
 * a click gives a point of the picture, and so does Enter under a crosshair that the arrow keys move. What stands in it is given the scale, so
 * that marks can keep their size.
 */
export function Stage({
  label,
  content,
  least,
  fits = false,
  onPoint,
  tools,
  children,
}: {
  label: string;
  content: Size;
  /** The smallest scale it begins with. */
  least?: number;
  /** The window has the shape of the picture. */
  fits?: boolean;
  onPoint?: ((at: At) => void) | undefined;
  tools?: ReactNode;
  children: (scale: number) => ReactNode;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState<Size | null>(null);
  const [own, setOwn] = useState<StageView | null>(null);
  const [aim, setAim] = useState<At | null>(null);
  const hands = useRef(new Map<number, At>());
  const from = useRef<{ at: At; panned: boolean } | null>(null);
  useEffect(() => {
    const here = frame.current;
    if (here === null) return;
    const watch = new ResizeObserver(() => setRoom({ width: here.clientWidth, height: here.clientHeight }));
    watch.observe(here);
    return () => watch.disconnect();
  }, []);
  const view = own ?? (room === null ? { x: 0, y: 0, scale: 1 } : fitView(content, room, least));
  const now = useRef(view);
  now.current = view;
  const middle = (): At => ({ x: (room?.width ?? 0) / 2, y: (room?.height ?? 0) / 2 });
  const zoom = (factor: number, at: At = middle()): void => setOwn(zoomAt(now.current, factor, at));
  const pan = (by: At): void => setOwn(panBy(now.current, by, content, room ?? content));
  useEffect(() => {
    const here = frame.current;
    // React listens to wheels passively, where the page's own zoom cannot be held back
    const wheel = (event: WheelEvent): void => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      const { left, top } = here!.getBoundingClientRect();
      setOwn(zoomAt(now.current, Math.exp(-event.deltaY * WHEEL), { x: event.clientX - left, y: event.clientY - top }));
    };
    here?.addEventListener('wheel', wheel, { passive: false });
    return () => here?.removeEventListener('wheel', wheel);
  }, []);
  const place = (event: { clientX: number; clientY: number }): At => {
    const { left, top } = frame.current!.getBoundingClientRect();
    return { x: event.clientX - left, y: event.clientY - top };
  };
  /** What takes the focus inside comes into the window. */
  const bringIn = (target: Element): void => {
    if (hands.current.size > 0) return; // it was pointed at, so it is seen
    const [inner, outer] = [target.getBoundingClientRect(), frame.current!.getBoundingClientRect()];
    const beyond = (low: number, high: number, first: number, last: number): number =>
      low < first ? first - low + STEP : high > last ? last - high - STEP : 0;
    const by = { x: beyond(inner.left, inner.right, outer.left, outer.right), y: beyond(inner.top, inner.bottom, outer.top, outer.bottom) };
    if (by.x !== 0 || by.y !== 0) pan(by);
  };
  const down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    hands.current.set(event.pointerId, place(event));
    if (hands.current.size === 1) from.current = { at: place(event), panned: false };
    setAim(null);
  };
  const move = (event: PointerEvent): void => {
    const before = hands.current.get(event.pointerId);
    if (before === undefined || from.current === null) return;
    if (event.buttons === 0) {
      hands.current.delete(event.pointerId); // let go of outside of the window
      return;
    }
    const here = place(event);
    const other = [...hands.current].find(([id]) => id !== event.pointerId)?.[1];
    if (other !== undefined) {
      const apart = (one: At): number => Math.hypot(one.x - other.x, one.y - other.y);
      zoom(apart(here) / Math.max(1, apart(before)), { x: (here.x + other.x) / 2, y: (here.y + other.y) / 2 });
      from.current.panned = true;
    } else if (from.current.panned || Math.hypot(here.x - from.current.at.x, here.y - from.current.at.y) > SLACK) {
      if (!from.current.panned) frame.current?.setPointerCapture(event.pointerId);
      from.current.panned = true;
      pan({ x: here.x - before.x, y: here.y - before.y });
    } else return;
    hands.current.set(event.pointerId, here);
  };
  const up = (event: PointerEvent): void => {
    hands.current.delete(event.pointerId);
  };
  const click = (event: React.MouseEvent): void => {
    const panned = from.current?.panned === true;
    from.current = null;
    if (panned) {
      event.stopPropagation();
      return;
    }
    if ((event.target as Element).closest('button, [data-own-click]') !== null) return; // it knows itself what it is for
    const at = toContent(now.current, place(event));
    if (onPoint !== undefined && isInside(at, content)) onPoint(at);
  };
  const key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = ARROWS[event.key];
    if (event.key === '+' || event.key === '=') zoom(ZOOM);
    else if (event.key === '-') zoom(1 / ZOOM);
    else if (event.key === '0') setOwn(null);
    else if (event.target !== event.currentTarget) return;
    else if (arrow !== undefined && onPoint === undefined) pan({ x: -arrow.x * STEP, y: -arrow.y * STEP });
    else if (arrow !== undefined) {
      const step = (event.shiftKey ? AIM_FAR : AIM) / view.scale;
      const old = aim ?? toContent(view, middle());
      const next = { x: within(old.x + arrow.x * step, content.width), y: within(old.y + arrow.y * step, content.height) };
      setAim(next);
      const seen = toWindow(view, next);
      const beyond = (at: number, length: number): number => Math.min(0, length - STEP - at) + Math.max(0, STEP - at);
      if (room !== null) pan({ x: beyond(seen.x, room.width), y: beyond(seen.y, room.height) });
    } else if ((event.key === 'Enter' || event.key === ' ') && onPoint !== undefined) onPoint(aim ?? toContent(view, middle()));
    else return;
    event.preventDefault();
  };
  const cross = aim === null ? null : toWindow(view, aim);
  return (
    <div className="stage">
      {/* biome-ignore lint/a11y/useSemanticElements: a window on a picture has no element of its own */}
      <div
        ref={frame}
        className={`stage-window${onPoint === undefined ? '' : ' aims'}${fits ? ' fits' : ''}`}
        style={fits ? { aspectRatio: `${content.width} / ${content.height}` } : {}}
        role="group"
        aria-label={label}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: panned and pointed in with keys
        tabIndex={0}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={up}
        onPointerCancel={up}
        onClickCapture={click}
        onKeyDown={key}
        onFocus={(event) => event.target !== event.currentTarget && bringIn(event.target)}
        onBlur={() => setAim(null)}
      >
        <div
          className="stage-content"
          style={{
            width: content.width,
            height: content.height,
            transform: `translate(${view.x}px, ${view.y}px) scale(${view.scale})`,
          }}
        >
          {children(view.scale)}
        </div>
        {cross !== null && <div className="stage-cross" style={{ transform: `translate(${cross.x}px, ${cross.y}px)` }} />}
      </div>
      <div className="stage-tools">
        <button type="button" className="btn" aria-label={CASE_PAGE.figureLarger(label)} onClick={() => zoom(ZOOM)}>
          +
        </button>
        <button type="button" className="btn" aria-label={CASE_PAGE.figureSmaller(label)} onClick={() => zoom(1 / ZOOM)}>
          −
        </button>
        <button type="button" className="btn" onClick={() => setOwn(null)}>
          {CASE_PAGE.all}
        </button>
        {tools}
      </div>
    </div>
  );
}

function within(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}

function isInside({ x, y }: At, { width, height }: Size): boolean {
  return x >= 0 && y >= 0 && x <= width && y <= height;
}
