/** Which rows of a long list stand in the window, with some to spare above and below. Heights in px; the end is one past the last. */
export function visibleRows(of: {
  readonly total: number;
  readonly rowHeight: number;
  /** Of the window, from the top of the list; negative while the list begins below its upper edge. */
  readonly top: number;
  readonly height: number;
}): { readonly first: number; readonly end: number } {
  const { total, rowHeight, top, height } = of;
  const first = Math.min(total, Math.max(0, Math.floor(top / rowHeight) - SPARE));
  const end = Math.min(total, Math.max(first, Math.ceil((top + height) / rowHeight) + SPARE));
  return { first, end };
}

const SPARE = 6;

/** The pages of a list that hold some rows and are not there yet. */
export function missingPages(first: number, end: number, page: number, has: (index: number) => boolean): readonly number[] {
  const missing = new Set<number>();
  for (let index = first; index < end; index += 1) if (!has(index)) missing.add(Math.floor(index / page));
  return [...missing];
}

/** Where the arrow keys lead in a list, or null for a key that leads nowhere. */
export function stepTo(key: string, at: number, total: number, page: number): number | null {
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: at + 1,
    ArrowUp: at - 1,
    PageDown: at + page,
    PageUp: at - page,
    Home: 0,
    End: total - 1,
  };
  const to = steps[key];
  return to === undefined || total === 0 ? null : Math.min(total - 1, Math.max(0, to));
}
