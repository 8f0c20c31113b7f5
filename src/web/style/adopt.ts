import { DARK_COLOURS, FIGURE_CSS, LIGHT_COLOURS } from '../../present/figure/figure-style.ts';
import { HALVES_CSS } from '../../present/report/halves-style.ts';
import { SCHEMATIC_CSS } from '../../present/schematic/schematic-style.ts';

/** Tints of drawings and grounds that only the workspace uses. */
const LIGHT_MORE = '--sea-tint:#dceef2;--slate-tint:#e6ebe7;--mains:#8a5a14;--mains-tint:#f8efdf;--touch-tint:#edf4f4;';
const DARK_MORE = '--sea-tint:#12303a;--slate-tint:#1e2926;--mains:#e0ae63;--mains-tint:#231d13;--touch-tint:#132022;';

/** Colours and figures are the report's own, adopted as a sheet: the page and the paper cannot drift apart, and no inline style is needed. */
export function adoptFigureStyle(): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    `:root{${LIGHT_COLOURS}${LIGHT_MORE}}@media (prefers-color-scheme:dark){:root{${DARK_COLOURS}${DARK_MORE}}}${FIGURE_CSS}${HALVES_CSS}${SCHEMATIC_CSS}`,
  );
  document.adoptedStyleSheets = [sheet];
}
