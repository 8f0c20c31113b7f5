import type { Case, ExhibitOf } from '../../core/evidence/case.ts';
import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { ZERO_CELSIUS_K } from '../../core/quantity/unit.ts';
import type { Tables } from '../../core/working/bench/bench.ts';
import { type PictureTrouble, pictureScale } from '../../core/working/heat/picture-scale.ts';

/** A thermal picture as the camera shows it, °C, row by row from the top left; NaN where the file has no number. */
export interface ThermalField {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

const EXPECTED: Readonly<Record<PictureTrouble, string>> = {
  pictureHoldsNoNumbers: 'a field of temperatures as text or as a TIFF of 16-bit numbers: colours are no temperatures',
  pictureIsATable: 'a field of temperatures, not a table with columns of its own',
  pictureUnitUnknown: 'a scale in °C, K or °F',
  pictureUnitsDiffer: 'a scale in the unit that the file states',
  pictureInDoubt: 'a file whose open questions are answered',
};

/** The field of one thermal picture, by the scale that the exhibit states: the same numbers that are judged. */
export function readPicture(one: Pick<Case, 'exhibits' | 'files'>, tables: Tables, id: string): ThermalField | Refusal {
  const exhibit = one.exhibits.find((each): each is ExhibitOf<'thermalPicture'> => each.kind === 'thermalPicture' && each.id === id);
  if (exhibit === undefined) return refuse('no-such-picture', id, 'a thermal picture of this case', { place: '/exhibits' });
  const file = one.files.find((each) => each.id === exhibit.file);
  const table = file === undefined ? undefined : tables.get(file.sha256);
  const toKelvin = pictureScale(exhibit, table);
  if (typeof toKelvin === 'string')
    return refuse(
      toKelvin.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
      toKelvin.startsWith('pictureUnit') ? exhibit.scale.unit : (file?.path ?? ''),
      EXPECTED[toKelvin],
      { place: `/exhibits/${id}` },
    );
  const { columns, rows } = table!;
  const values = new Float32Array(columns.length * rows);
  for (const [x, { values: column }] of columns.entries())
    for (let y = 0; y < rows; y += 1) values[y * columns.length + x] = toKelvin(column[y]!) - ZERO_CELSIUS_K;
  return { width: columns.length, height: rows, values };
}
