import { type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { MOST_PIXELS } from './check-photo.ts';

/** Name of the small picture among what is made of a file. */
export const THUMB = 'thumb-320';
const WIDTH = 320;

/** A small picture, upright as the camera was held, with nothing but its pixels. */
export async function thumbOf(bytes: Uint8Array): Promise<Uint8Array | Refusal> {
  const { default: sharp } = await import('sharp'); // read in with the first picture, not with the server
  try {
    return new Uint8Array(
      await sharp(bytes, { limitInputPixels: MOST_PIXELS }).rotate().resize({ width: WIDTH, withoutEnlargement: true }).webp().toBuffer(),
    );
  } catch {
    return refuse('unknown-media', 'a file that is no picture', 'a picture');
  }
}
