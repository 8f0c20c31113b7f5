import exifr from 'exifr';
import sharp, { type Sharp } from 'sharp';
import { MOST_PIXELS } from './check-photo.ts';
import { hasMoreInJpeg } from './has-more-in-jpeg.ts';

const WRITTEN: Readonly<Record<string, (from: Sharp) => Sharp>> = {
  'image/jpeg': (from) => from.jpeg({ quality: 92, mozjpeg: false }),
  'image/png': (from) => from.png(),
  'image/webp': (from) => from.webp({ quality: 92 }),
  'image/avif': (from) => from.avif({ quality: 70 }),
  'image/tiff': (from) => from.tiff({ compression: 'lzw' }),
};

/**
 * A picture as it may leave: upright, its pixels and nothing else. A picture that carries no metadata beyond its size comes back byte for
 * byte, so that evidence without secrets keeps its hash.
 */
export async function withoutPlace(bytes: Uint8Array, media: string): Promise<Uint8Array> {
  const write = WRITTEN[media];
  if (write === undefined) return bytes;
  const more = (media === 'image/jpeg' && hasMoreInJpeg(bytes)) || (await saysMore(bytes));
  if (!more) return bytes;
  return new Uint8Array(await write(sharp(bytes, { limitInputPixels: MOST_PIXELS }).rotate()).toBuffer());
}

async function saysMore(bytes: Uint8Array): Promise<boolean> {
  const { exif, xmp, iptc, comments } = await sharp(bytes, { limitInputPixels: MOST_PIXELS }).metadata();
  if (exif === undefined && xmp === undefined && iptc === undefined) return (comments?.length ?? 0) > 0;
  const told = (await exifr.parse(Buffer.from(bytes), true).catch(() => ({ unread: true }))) as object | undefined;
  return told === undefined || Object.keys(told).length > 0;
}
