import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';

/** Dots of a page in grey: 0 is black. */
export interface Dots {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
}

/** A PDF as Poppler reads it, which is general-purpose reference software: what it says of the file, its text, and its first page in dots. */
export class PrintedPage {
  readonly #folder = mkdtempSync(join(tmpdir(), 'mainsworthy-paper-'));
  readonly #file = join(this.#folder, 'page.pdf');

  constructor(bytes: Uint8Array) {
    writeFileSync(this.#file, bytes);
  }

  info(): string {
    return execFileSync('pdfinfo', [this.#file], { encoding: 'utf8' });
  }

  fonts(): string {
    return execFileSync('pdffonts', [this.#file], { encoding: 'utf8' });
  }

  text(): string {
    return execFileSync('pdftotext', ['-layout', this.#file, '-'], { encoding: 'utf8' });
  }

  async dots(perInch: number): Promise<Dots> {
    execFileSync('pdftoppm', ['-r', String(perInch), '-png', '-singlefile', this.#file, join(this.#folder, 'page')]);
    const { data, info } = await sharp(join(this.#folder, 'page.png')).greyscale().raw().toBuffer({ resolveWithObject: true });
    return { width: info.width, height: info.height, grey: data };
  }

  remove(): void {
    rmSync(this.#folder, { recursive: true, force: true });
  }
}

/** The box around every dot that is not white. */
export function inkOf({ width, height, grey }: Dots): { left: number; top: number; right: number; bottom: number } {
  const ink = { left: width, top: height, right: -1, bottom: -1 };
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1)
      if ((grey[y * width + x] ?? 255) < 255) {
        ink.left = Math.min(ink.left, x);
        ink.right = Math.max(ink.right, x);
        ink.top = Math.min(ink.top, y);
        ink.bottom = Math.max(ink.bottom, y);
      }
  return ink;
}
