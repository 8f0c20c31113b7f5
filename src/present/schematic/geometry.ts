/** Everything stands on this grid, so that wires meet pins. Pixels. */
export const GRID = 10;

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

export function overlaps(one: Box, two: Box): boolean {
  return one.x < two.x + two.width && two.x < one.x + one.width && one.y < two.y + two.height && two.y < one.y + one.height;
}

export function moved(box: Box, by: Point): Box {
  return { ...box, x: box.x + by.x, y: box.y + by.y };
}

export function around(boxes: readonly Box[]): Box {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  return {
    x,
    y,
    width: Math.max(...boxes.map((box) => box.x + box.width)) - x,
    height: Math.max(...boxes.map((box) => box.y + box.height)) - y,
  };
}

export function onGrid(value: number): number {
  return Math.round(value / GRID) * GRID;
}

export function upToGrid(value: number): number {
  return Math.ceil(value / GRID) * GRID;
}

const LETTER = 6.8; // width of a letter at 12 px with room to spare: wide letters of the page's font stay inside
export const LINE = 14; // height of a line of text, px

/** Room that a text takes. */
export function textWidth(text: string): number {
  return text.length === 0 ? 0 : text.length * LETTER + 2;
}
