/** Words of a thermal picture in the workspace, and of following a soak to its end. */
export const PICTURE_WORDS = {
  draw: 'draw a region',
  close: 'close it',
  lines: 'lines of equal temperature',
  point: 'point at the picture to read it',
  over: 'photo over it',
  noNumber: 'no number',
  noPlace: 'a place that is not there',
  thermal: 'the thermal picture',
  photo: 'the photo',
  onPhoto: 'points on the photo',
  seen: 'the same side as the camera saw it',
  addPoint: '+ a point on both',
  laid: 'laid under the picture; drag its strength beside the scale',
  inLine: 'three of the points lie on one line: move one aside',
  regions: 'Regions of the thermal picture',
  region: 'region',
  place: 'place',
  hottest: 'hottest, °C',
  mean: 'mean, °C',
  surface: 'the surface',
  decides: 'decides',
  noPixel: 'no pixel inside',
  colours: 'colours',
  darkest: 'darkest',
  lightest: 'lightest',
  whole: 'from coldest to hottest',
} as const;

/** Shapes that can be drawn, and how each is. */
export const SHAPE_WORDS = {
  rectangle: { name: 'rectangle', how: 'drag from corner to corner' },
  ellipse: { name: 'ellipse', how: 'drag from corner to corner of its box' },
  polygon: { name: 'outline', how: 'one corner after the other; the first again closes it' },
} as const;

export const howToDraw = (shape: keyof typeof SHAPE_WORDS): string => `${SHAPE_WORDS[shape].how}; or arrow keys and Enter`;

export const pictureLabel = (id: string, width: number, height: number): string =>
  `thermal picture ${id}, ${width} by ${height}: arrow keys move the cross, Enter puts a corner`;

export const readoutText = (column: number, row: number, celsius: number | null): string =>
  `column ${column}, row ${row}: ${celsius === null ? PICTURE_WORDS.noNumber : `${celsius.toFixed(1)} °C as the camera shows it`}`;

export const regionLabel = (number: number, name: string): string => `region ${number}, ${name}: arrow keys move it, Delete takes it away`;
export const regionTitle = (number: number, name: string): string => `region ${number}, ${name}`;
export const cornerLabel = (corner: number, region: number): string => `corner ${corner} of region ${region}: arrow keys move it`;
export const placeOfRegion = (number: number): string => `place of region ${number}`;
export const whereFrom = (number: number): string => `where the temperature of region ${number} comes from`;
export const takeRegion = (number: number): string => `take region ${number} away`;

export const pointLabel = (number: number, of: string): string => `point ${number} on ${of}: arrow keys move it`;
export const takePoint = (number: number): string => `take point ${number} away`;
export const pointsMissing = (count: number): string => `${count} more points to lay it under the picture`;

export const degreesText = (celsius: number): string => `${celsius.toFixed(1)} °C`;

export const FORESEE_WORDS = {
  section: 'where it is heading',
  start: 'Work out where it is heading',
  within: 'its end to ±',
  done: 'temperatures worked out',
  stop: 'Stop',
  stopped: 'Stopped; nothing was kept.',
  stale: 'The log has changed since this was worked out; it is not used until it is worked out again.',
} as const;

/** What a field of numbers is, and the scale that makes temperatures of it. */
export const FIELD_WORDS = {
  numbersAre: 'its numbers are, after × and +',
  notSaid: 'not said',
  factor: '× factor',
  offset: '+ offset',
} as const;

export function fieldText(columns: number, rows: number, least: number, greatest: number, unit: string | null): string {
  const said = unit === null ? '; the file does not say in which unit' : ` ${unit}`;
  return `A field of ${columns} by ${rows} numbers from ${least} to ${greatest}${said}.`;
}
