import type { Sharp } from 'sharp';
import { CasebookRefused } from '../../app/casebook/casebook-refused.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { MOST_PIXELS } from './check-photo.ts';
import { hasMoreInAvif, hasMoreInPng, hasMoreInWebp } from './has-more-in-chunks.ts';
import { hasMoreInJpeg } from './has-more-in-jpeg.ts';

const WRITTEN: Readonly<Record<string, (from: Sharp) => Sharp>> = {
  'image/jpeg': (from) => from.jpeg({ quality: 92, mozjpeg: false }),
  'image/png': (from) => from.png(),
  'image/webp': (from) => from.webp({ quality: 92 }),
  'image/avif': (from) => from.avif({ quality: 70 }),
  'image/tiff': (from) => from.tiff({ compression: 'lzw' }),
};

const NUMBERS = 'grey16';

/** Whether there is more in a file than its pixels, by how it is laid out. A TIFF can hide bytes anywhere: it always counts as more. */
const HAS_MORE: Readonly<Record<string, (bytes: Uint8Array) => boolean>> = {
  'image/jpeg': hasMoreInJpeg,
  'image/png': hasMoreInPng,
  'image/webp': hasMoreInWebp,
  'image/avif': hasMoreInAvif,
  'image/tiff': () => true,
};

/**
 * A picture as it may leave: upright, its pixels and nothing else. A picture that carries nothing beyond them comes back byte for byte, so
 * that evidence without secrets keeps its hash. Throws CasebookRefused for a kind that cannot be looked into: what cannot be cleaned stays.
 */
export async function withoutPlace(bytes: Uint8Array, media: string): Promise<Uint8Array> {
  const write = WRITTEN[media];
  const hasMore = HAS_MORE[media];
  if (write === undefined || hasMore === undefined)
    throw new CasebookRefused(refuse('photo-not-cleaned', media, 'a JPEG, PNG, WebP, AVIF or TIFF, out of which its place can be taken'));
  if (!hasMore(bytes) && !(await saysMore(bytes))) return bytes;
  const { default: sharp } = await import('sharp');
  const picture = sharp(bytes, { limitInputPixels: MOST_PIXELS });
  const { space } = await picture.metadata();
  // numbers of 16 bits are readings, as a thermal camera stores them: they leave as they are, and unpacked, since that is how they are read
  const clean =
    media === 'image/tiff' && space === NUMBERS
      ? picture.toColourspace(NUMBERS).tiff({ compression: 'none', predictor: 'none' })
      : write(picture.rotate());
  return new Uint8Array(await clean.toBuffer());
}

async function saysMore(bytes: Uint8Array): Promise<boolean> {
  const { default: sharp } = await import('sharp'); // both are read in with the first picture, not with the server
  const { exif, xmp, iptc, comments } = await sharp(bytes, { limitInputPixels: MOST_PIXELS }).metadata();
  if (exif === undefined && xmp === undefined && iptc === undefined) return (comments?.length ?? 0) > 0;
  const { default: exifr } = await import('exifr');
  const told = (await exifr.parse(Buffer.from(bytes), true).catch(() => ({ unread: true }))) as object | undefined;
  return told === undefined || Object.keys(told).length > 0;
}
