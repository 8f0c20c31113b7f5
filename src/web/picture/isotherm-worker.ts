import { isothermPath, isotherms, type NumberField, numberPlace } from '../../present/figure/isotherms.ts';

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
  const drawn: DrawnIsotherm[] = isotherms(data.field, data.levels).map((line, index) => ({
    level: line.level,
    path: isothermPath(line),
    at: numberPlace(line, index),
  }));
  self.postMessage(drawn);
};
