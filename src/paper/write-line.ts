import type PDFDocument from 'pdfkit';
import { type Face, toRuns } from './faces.ts';
import { PAPER_FONTS } from './fonts/font-data.ts';

export type Page = InstanceType<typeof PDFDocument>;

export interface LineStyle {
  /** In units of the page as it is scaled now. */
  readonly size: number;
  readonly weight: number;
  readonly italic: boolean;
  readonly colour: string;
}

/** Makes the faces known to a page; only those that are used go into the file, and of each only the signs that are used. */
export function registerFaces(page: Page): void {
  for (const face of Object.keys(PAPER_FONTS) as Face[]) page.registerFont(face, Buffer.from(PAPER_FONTS[face].woff, 'base64'));
}

export function widthOfLine(page: Page, text: string, { size, weight, italic }: LineStyle): number {
  return toRuns(text, weight, italic).reduce((sum, run) => sum + page.font(run.face, size).widthOfString(run.text), 0);
}

/** One line on its baseline, from x to the right, around it, or up to it. */
export function writeLine(page: Page, text: string, x: number, baseline: number, style: LineStyle, anchor = 'start'): void {
  const width = anchor === 'start' ? 0 : widthOfLine(page, text, style);
  let from = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x;
  page.fillColor(style.colour);
  for (const run of toRuns(text, style.weight, style.italic)) {
    page.font(run.face, style.size).text(run.text, from, baseline, { lineBreak: false, baseline: 'alphabetic' });
    from += page.widthOfString(run.text);
  }
}
