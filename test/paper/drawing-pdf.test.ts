import sharp from 'sharp';
import { afterEach, describe, expect, test } from 'vitest';
import { assessCase } from '../../src/app/assess-case.ts';
import { drawCaseSchematic, partMarks } from '../../src/app/draw-case-schematic.ts';
import { toDrawingPdf } from '../../src/paper/to-drawing-pdf.ts';
import { FIGURE_CSS, LIGHT_COLOURS } from '../../src/present/figure/figure-style.ts';
import { type Markup, verbatim } from '../../src/present/markup/markup.ts';
import { PAPERS, type Paper } from '../../src/present/schematic/render-drawing-sheet.ts';
import { SCHEMATIC_CSS } from '../../src/present/schematic/schematic-style.ts';
import { caseFolder } from '../../src/store/folder/case-folder.ts';
import { inkOf, PrintedPage } from './printed-page.ts';

const AT = new Date(2026, 2, 4, 12);
const PER_INCH = 72;
/** ISO 216, lying, in points. */
const SIZES: Readonly<Record<Paper, RegExp>> = {
  A4: /Page size: +841\.8\d* x 595\.2\d* pts/,
  A3: /Page size: +1190\.5\d* x 841\.8\d* pts/,
};
const MARGIN = 10 * (PER_INCH / 25.4); // dots of 10 mm, as on the sheet for a browser

const pages: PrintedPage[] = [];
afterEach(() => {
  for (const page of pages.splice(0)) page.remove();
});

async function drawn(name: string) {
  const result = await assessCase(caseFolder(`examples/${name}`));
  if (Array.isArray(result)) throw new Error(`${name} is refused`);
  const { open, assessment } = result;
  const schematic = await drawCaseSchematic(open.one, { marks: partMarks(assessment) });
  if (schematic === null) throw new Error(`${name} has no circuit`);
  return { one: open.one, figure: schematic.figure, about: assessment.case, tool: assessment.tool };
}

async function printed(figure: Markup, sheet: Omit<Parameters<typeof toDrawingPdf>[1], 'at'>): Promise<PrintedPage> {
  const page = new PrintedPage(await toDrawingPdf(figure, { ...sheet, at: AT }));
  pages.push(page);
  return page;
}

const textsOf = ({ markup }: Markup): string[] =>
  [...markup.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text!.replaceAll('&#39;', "'"));

describe.each(['tarn-30', 'fell-12', 'beck-5'])('the schematic of %s on paper', (name) => {
  test.each(PAPERS)('is one lying page of %s that says every reference, and stays off the margins', async (paper) => {
    const { one, figure, about, tool } = await drawn(name);
    const page = await printed(figure, { about, paper, tool });
    const info = page.info();
    expect(info).toMatch(/Pages: +1\n/);
    expect(info).toMatch(SIZES[paper]);
    expect(info).toMatch(/JavaScript: +no/);
    const text = page.text();
    const words = new Set(text.split(/\s+/));
    const traced = one.parts.filter(({ id }) => figure.markup.includes(`data-part="${id}"`)).map(({ ref }) => ref);
    expect(traced.length).toBeGreaterThan(10);
    expect(traced.filter((ref) => !words.has(ref))).toEqual([]);
    for (const said of [about.name, `sample ${about.sample}`, 'Invented unit, invented data.', tool, '2026-03-04'])
      expect(text).toContain(said);
    const dots = await page.dots(PER_INCH);
    const ink = inkOf(dots);
    const [left, top, right, bottom] = [ink.left, ink.top, dots.width - 1 - ink.right, dots.height - 1 - ink.bottom];
    for (const white of [left, top, right, bottom]) expect(white).toBeGreaterThanOrEqual(Math.floor(MARGIN) - 1);
    // the drawing is as large as the sheet lets it be: it reaches the side margins, or the lines above and below
    expect(ink.right - ink.left).toBeGreaterThan(dots.width / 2);
    expect(ink.bottom - ink.top).toBeGreaterThan(dots.height - 2 * MARGIN - 6);
  });

  test('says every text of the drawing, in fonts that stand in the file', async () => {
    const { figure, about, tool } = await drawn(name);
    const page = await printed(figure, { about, paper: 'A3', tool });
    const words = new Set(page.text().split(/\s+/));
    // Poppler takes a space after a single letter for none
    const isSaid = (line: string): boolean => words.has(line.replaceAll(' ', '')) || line.split(' ').every((word) => words.has(word));
    const missing = textsOf(figure).filter((line) => !isSaid(line));
    expect(missing).toEqual([]);
    const fonts = page.fonts().trim().split('\n').slice(2);
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/SourceSans3.* yes yes yes /);
  });

  /** Both pictures are made by others: the SVG by librsvg (in sharp), the PDF by Poppler. Texts stay out, as librsvg has not our fonts. */
  test('shows the same lines as the SVG', async () => {
    const { figure, about, tool } = await drawn(name);
    const bare = verbatim(figure.markup.replace(/<text[^>]*>[^<]*<\/text>/g, ''));
    const DENSITY = 108; // dots per inch: fine enough for the gap of a barrier
    const dots = await (await printed(bare, { about, paper: 'A3', tool })).dots(DENSITY);
    const svg = await pictureOf(bare);
    const { data: here, info } = await sharp(Buffer.from(dots.grey), { raw: { width: dots.width, height: dots.height, channels: 1 } })
      .extract(figureIn(dots, svg.width / svg.height))
      .resize(svg.width, svg.height, { fit: 'fill' })
      .blur(2)
      .toColourspace('b-w')
      .raw()
      .toBuffer({ resolveWithObject: true });
    const there = await sharp(svg.data).greyscale().blur(2).toColourspace('b-w').raw().toBuffer();
    expect(here.length / info.channels).toBe(there.length);
    const FAR = 60; // of 255: a line that is there in one and not in the other, after blurring; not the edge of one
    let far = 0;
    for (let dot = 0; dot < there.length; dot += 1) if (Math.abs(here[dot * info.channels]! - there[dot]!) > FAR) far += 1;
    expect(far / there.length).toBeLessThan(0.0005);
  });
});

/** Where on the page the grounds of the drawing lie: every row and column that is mostly not white. */
function figureIn({ width, height, grey }: Awaited<ReturnType<PrintedPage['dots']>>, shape: number) {
  const filled = (length: number, at: (index: number) => number): number => {
    let count = 0;
    for (let index = 0; index < length; index += 1) if ((grey[at(index)] ?? 255) < 255) count += 1;
    return count / length;
  };
  const rows = [...Array(height).keys()].filter((y) => filled(width, (x) => y * width + x) > 0.5);
  const top = rows[0]!;
  const tall = rows.at(-1)! - top + 1;
  const columns = [...Array(width).keys()].filter((x) => filled(tall, (y) => (top + y) * width + x) > 0.9);
  const left = columns[0]!;
  const wide = columns.at(-1)! - left + 1;
  expect(wide / tall).toBeCloseTo(shape, 1);
  return { left, top, width: wide, height: tall };
}

async function pictureOf(figure: Markup): Promise<{ data: Buffer; width: number; height: number }> {
  const colours = new Map([...LIGHT_COLOURS.matchAll(/(--[\w-]+):([^;]+)/g)].map(([, name, colour]) => [name!, colour!]));
  // librsvg knows no custom properties
  const css = (FIGURE_CSS + SCHEMATIC_CSS).replace(/var\((--[\w-]+)\)/g, (_whole, name: string) => colours.get(name)!);
  const file = figure.markup.replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" ').replace('>', `><style>${css}</style>`);
  const { data, info } = await sharp(Buffer.from(file)).flatten({ background: '#ffffff' }).png().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
}

describe('a sheet', () => {
  test('is the same bytes when the same is drawn at the same time', async () => {
    const { figure, about, tool } = await drawn('beck-5');
    const [one, two] = await Promise.all([0, 1].map(() => toDrawingPdf(figure, { about, paper: 'A4', tool, at: AT })));
    expect(Buffer.compare(one!, two!)).toBe(0);
  });

  test('keeps a name of any length whole and off the margins', async () => {
    const { figure, about, tool } = await drawn('beck-5');
    const name = 'Endless'.repeat(40);
    const page = await printed(figure, { about: { ...about, name }, paper: 'A4', tool });
    expect(page.text()).toContain(name);
    const dots = await page.dots(PER_INCH);
    expect(dots.width - 1 - inkOf(dots).right).toBeGreaterThanOrEqual(Math.floor(MARGIN) - 1);
  });

  test('shows Greek and accents, and says so where a sign has no form in its fonts', async () => {
    const { figure, about, tool } = await drawn('beck-5');
    const whole = await printed(figure, { about: { ...about, name: 'Žďár 5 \u2126 λ' }, paper: 'A4', tool });
    expect(whole.text()).toContain('Žďár 5 Ω λ');
    expect(whole.text()).not.toContain('do not hold');
    const partly = await printed(figure, { about: { ...about, name: 'Beck 電' }, paper: 'A4', tool });
    expect(partly.text()).toContain('Beck ?');
    expect(partly.text()).toContain('“?” also stands for signs that the fonts of this sheet do not hold.');
  });

  test('says nothing of invented data where a case is not invented', async () => {
    const { figure, about, tool } = await drawn('beck-5');
    expect((await printed(figure, { about: { ...about, invented: false }, paper: 'A4', tool })).text()).not.toContain('Invented');
  });

  test('grows with what stands below a narrow drawing, so that nothing is cut off', async () => {
    const { about, tool } = await drawn('beck-5');
    const words = 'stands for a return with a very long name indeed';
    const figure = verbatim(
      `<svg class="sch" viewBox="0 0 100 80" width="100" height="80" role="img" aria-label="x"><rect class="plain mains" x="0" y="0" width="100" height="80"/><text class="second" x="20" y="70">${words}</text></svg>`,
    );
    const page = await printed(figure, { about, paper: 'A4', tool });
    expect(page.text()).toContain(words);
    const dots = await page.dots(PER_INCH);
    expect(dots.width - 1 - inkOf(dots).right).toBeGreaterThanOrEqual(Math.floor(MARGIN) - 1);
  });
});
