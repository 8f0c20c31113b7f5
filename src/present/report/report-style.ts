import { FIGURE_CSS } from '../figure/figure-style.ts';
import { SCHEMATIC_CSS } from '../schematic/schematic-style.ts';
import { CHAPTERS_CSS } from './chapters-style.ts';
import { FONT_FACES } from './fonts/font-data.ts';
import { HALVES_CSS } from './halves-style.ts';
import { pageCss } from './page-style.ts';
import { SCREEN_CSS } from './screen-style.ts';

/** The report's whole style. The running head carries text of the case, which is written in escapes that only CSS reads. */
export function reportStyle(runningHead: string): string {
  return `${fontFaces()}${SCREEN_CSS}${CHAPTERS_CSS}${FIGURE_CSS}${SCHEMATIC_CSS}${HALVES_CSS}${pageCss(runningHead)}`;
}

/** The fonts of report and page, inside the style itself. */
export function fontFaces(): string {
  const WEIGHTS = '200 900';
  return FONT_FACES.map(
    ({ family, style, range, woff2 }) =>
      `@font-face{font-family:"${family}";font-style:${style};font-weight:${WEIGHTS};src:url(data:font/woff2;base64,${woff2}) format("woff2")${range === '' ? '' : `;unicode-range:${range}`}}`,
  ).join('\n');
}
