import { type Refusal, refuse } from '../../core/quantity/refusal.ts';

export const MOST_PIXELS = 64_000_000; // 64 megapixels
/** A picture is opened whole, so its bytes are held at once; 64 megapixels of a camera's JPEG take about half. House choice. */
export const MOST_PHOTO_BYTES = 64 * 1024 ** 2;

/** Null when the bytes are a picture that can be opened whole; else why not. */
export async function checkPhoto(bytes: Uint8Array): Promise<Refusal | null> {
  const { default: sharp } = await import('sharp'); // read in with the first picture, not with the server
  try {
    const { width, height } = await sharp(bytes, { limitInputPixels: false }).metadata();
    if (width * height > MOST_PIXELS)
      return refuse('too-large', `a picture of ${width} by ${height} pixels`, `at most ${MOST_PIXELS / 1e6} megapixels`);
    await sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'truncated' }).resize(8, 8).toBuffer();
    return null;
  } catch {
    return refuse('broken-picture', 'a picture that breaks off or holds something else', 'a picture that can be opened');
  }
}
