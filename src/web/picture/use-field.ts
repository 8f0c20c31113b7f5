import { useEffect, useState } from 'react';
import { pictureOf } from '../api/casebook.ts';

/** A thermal picture as the camera shows it, °C, row by row from the top left. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
  readonly least: number;
  readonly greatest: number;
}

const HEAD = 2; // width and height before the numbers

/** The numbers of a picture, asked for again when what they hang on (`key`) has changed and is on the disk; or why there are none. */
export function useField(id: string, exhibit: string, key: string, ready: boolean): { field: Field | null; trouble: string } {
  const [got, setGot] = useState<{ field: Field | null; trouble: string }>({ field: null, trouble: '' });
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key is what the numbers hang on
  useEffect(() => {
    if (!ready) return;
    const stop = new AbortController();
    pictureOf(id, exhibit, stop.signal).then(
      (bytes) => setGot({ field: toField(bytes), trouble: '' }),
      (error: Error) => !stop.signal.aborted && setGot({ field: null, trouble: error.message }),
    );
    return () => stop.abort();
  }, [id, exhibit, key, ready]);
  return got;
}

/** Numbers come little-endian, as the machines lie that browsers run on. */
function toField(bytes: ArrayBuffer): Field {
  const [width = 0, height = 0] = new Uint32Array(bytes, 0, HEAD);
  const values = new Float32Array(bytes, HEAD * Uint32Array.BYTES_PER_ELEMENT, width * height);
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < least) least = value;
    if (value > greatest) greatest = value;
  }
  if (!(least <= greatest)) [least, greatest] = [0, 1]; // no number anywhere
  return { width, height, values, least, greatest };
}
