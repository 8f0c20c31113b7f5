import { isothermPath, isotherms, type NumberField } from '../../present/figure/isotherms.ts';

export interface IsothermOrder {
  readonly field: NumberField;
  readonly levels: readonly number[];
}

export interface DrawnIsotherm {
  readonly level: number;
  readonly path: string;
  /** Where its number stands. */
  readonly at: readonly [number, number] | null;
}

// lines of a picture beside the page, so that drawing on it never waits for them
self.onmessage = ({ data }: MessageEvent<IsothermOrder>): void => {
  const drawn: DrawnIsotherm[] = isotherms(data.field, data.levels).map((line) => ({
    level: line.level,
    path: isothermPath(line),
    at: longestOf(line.rings)?.[0] ?? null,
  }));
  self.postMessage(drawn);
};

function longestOf<T>(rings: readonly (readonly T[])[]): readonly T[] | undefined {
  return rings.reduce<readonly T[] | undefined>((longest, ring) => (ring.length > (longest?.length ?? 0) ? ring : longest), undefined);
}
