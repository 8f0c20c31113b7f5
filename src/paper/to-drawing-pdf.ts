import PDFDocument from 'pdfkit';
import type { Assessment } from '../core/result/assessment.ts';
import { FIGURE_CSS, LIGHT_COLOURS } from '../present/figure/figure-style.ts';
import { type Markup, toInertText } from '../present/markup/markup.ts';
import type { Paper } from '../present/schematic/render-drawing-sheet.ts';
import { SCHEMATIC_CSS } from '../present/schematic/schematic-style.ts';
import { PAPER_WORDS, SHEET_TITLE } from '../present/words/circuit-words.ts';
import { INVENTED } from '../present/words/fixed-sentences.ts';
import { parseRules } from './cascade.ts';
import { coloursOf, drawFigure, extentOf, type FigureInk } from './draw-figure.ts';
import { isWhole, NO_FORM } from './faces.ts';
import { type FigureElement, readFigure } from './read-figure.ts';
import { type LineStyle, type Page, registerFaces, widthOfLine, writeLine } from './write-line.ts';

/** Size of a sheet lying on its long side, in points (1/72 inch): ISO 216, A4 297 mm by 210 mm, A3 420 mm by 297 mm. */
const MM = 72 / 25.4;
const SIZES: Readonly<Record<Paper, readonly [number, number]>> = { A4: [297 * MM, 210 * MM], A3: [420 * MM, 297 * MM] };
const MARGIN = 10 * MM; // as on the sheet that a browser prints
const TITLE = 13; // pt; the sizes of what stands around the drawing
const SMALL = 8.5;
const GAP = 6;

export interface DrawingSheet {
  readonly about: Assessment['case'];
  readonly paper: Paper;
  /** Name and version of what drew it. */
  readonly tool: string;
  readonly at: Date;
}

/**
 * The schematic as a PDF of one lying sheet: the lines, symbols and texts of the same markup that is shown on the screen, in the colours of a
 * light ground, as large as the sheet lets it be. Fonts stand inside; the same drawing at the same time gives the same bytes.
 */
export async function toDrawingPdf(figure: Markup, { about, paper, tool, at }: DrawingSheet): Promise<Uint8Array> {
  const [width, height] = SIZES[paper];
  const ink: FigureInk = { rules: parseRules(FIGURE_CSS + SCHEMATIC_CSS), colours: coloursOf(LIGHT_COLOURS) };
  const read = readFigure(figure.markup);
  const title = toInertText(SHEET_TITLE(about.name, about.sample));
  const page = new PDFDocument({
    size: [width, height],
    margin: 0,
    font: '', // else a font that is not embedded is looked for on the disk
    pdfVersion: '1.7',
    lang: 'en',
    tagged: true,
    displayTitle: true,
    info: { Title: title, Creator: tool, CreationDate: at },
  });
  const bytes = collect(page);
  registerFaces(page);
  const line = (size: number, colour: string, weight = 400): LineStyle => ({
    size,
    colour: ink.colours.get(colour)!,
    weight,
    italic: false,
  });
  const room = width - 2 * MARGIN;
  const write = (text: string, baseline: number, style: LineStyle): void => {
    // a name of any length stays whole: it becomes smaller
    const share = Math.min(1, room / widthOfLine(page, text, style));
    writeLine(page, text, MARGIN, baseline, { ...style, size: style.size * share });
  };
  tagged(page, 'H1', title, () => write(title, MARGIN + TITLE, line(TITLE, '--ink', 600)));
  let top = MARGIN + TITLE + GAP;
  if (about.invented) {
    tagged(page, 'P', INVENTED, () => write(INVENTED, top + SMALL, line(SMALL, '--ink')));
    top += SMALL + GAP;
  }
  const foot = [PAPER_WORDS.drawn(tool, dayOf(at)), ...(isWhole(title + textOf(read)) ? [] : [PAPER_WORDS.noForm(NO_FORM)])].join(' ');
  tagged(page, 'P', foot, () => write(foot, height - MARGIN - 2, line(SMALL, '--ink-2')));
  const below = height - MARGIN - SMALL - GAP;
  tagged(page, 'Figure', read.attributes.get('aria-label') ?? '', () => {
    const extent = extentOf(page, read, ink);
    const scale = Math.min(room / extent.width, (below - top) / extent.height);
    page.save();
    page
      .translate(MARGIN + (room - extent.width * scale) / 2, top)
      .scale(scale)
      .translate(-extent.x, -extent.y);
    drawFigure(page, read, ink);
    page.restore();
  });
  page.end();
  return bytes;
}

/** A piece of the page with what a reader hears of it. */
function tagged(page: Page, tag: 'H1' | 'P' | 'Figure', spoken: string, draw: () => void): void {
  page.addStructure(page.struct(tag, tag === 'Figure' ? { alt: spoken } : {}, draw));
}

function collect(page: Page): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const pieces: Uint8Array[] = [];
    page.on('data', (piece: Uint8Array) => pieces.push(piece));
    page.on('end', () => resolve(Buffer.concat(pieces)));
    page.on('error', reject);
  });
}

const textOf = ({ text, children }: FigureElement): string => text + children.map(textOf).join('');

/** Where the drawing is made, as it stands on a calendar there. */
function dayOf(at: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
