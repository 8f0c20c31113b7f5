const PLACES = 2; // a hundredth of a pixel: finer than any screen, short enough to read in a diff

/** A coordinate as it is written into a figure: the same number gives the same bytes, and there is no minus zero. */
export function coordinate(value: number): string {
  const text = value.toFixed(PLACES).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
