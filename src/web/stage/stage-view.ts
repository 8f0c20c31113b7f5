/** Which part of a picture a window shows: the point of the window at which the picture's corner lies, and how large a pixel of it is. */
export interface StageView {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface At {
  readonly x: number;
  readonly y: number;
}

const LARGEST = 8; // times as large as the picture
const SMALLEST = 0.05;

/** The picture as large as the window shows it whole, but not below `least`, and not larger than it is unless it is small. */
export function fitView(content: Size, window: Size, least = SMALLEST): StageView {
  const whole = Math.min(window.width / content.width, window.height / content.height);
  const scale = Math.max(Math.min(whole, 1), least);
  const spare = (room: number, length: number): number => Math.max(0, (room - length * scale) / 2);
  return { x: spare(window.width, content.width), y: spare(window.height, content.height), scale };
}

/** Larger or smaller, with the point of the window that was pointed at staying where it is. */
export function zoomAt({ x, y, scale }: StageView, factor: number, at: At): StageView {
  const next = Math.min(LARGEST, Math.max(SMALLEST, scale * factor));
  const by = next / scale;
  return { x: at.x - (at.x - x) * by, y: at.y - (at.y - y) * by, scale: next };
}

/** Never so far aside that nothing of the picture is left in the window. */
export function panBy({ x, y, scale }: StageView, by: At, content: Size, window: Size): StageView {
  const KEPT = 40; // px of the picture that stay in the window
  const inside = (value: number, length: number, room: number): number =>
    Math.min(room - Math.min(KEPT, room), Math.max(Math.min(KEPT, room) - length * scale, value));
  return { x: inside(x + by.x, content.width, window.width), y: inside(y + by.y, content.height, window.height), scale };
}

export function toContent({ x, y, scale }: StageView, at: At): At {
  return { x: (at.x - x) / scale, y: (at.y - y) / scale };
}

export function toWindow({ x, y, scale }: StageView, at: At): At {
  return { x: at.x * scale + x, y: at.y * scale + y };
}
