import { escapeText, type Markup } from '../markup/markup.ts';
import { DARK_COLOURS, FIGURE_CSS, LIGHT_COLOURS } from './figure-style.ts';

const SVG_NAMESPACE = 'http://www.w3.org/2000/svg'; // a name, not a place: nothing is loaded from it

/** A figure as a file of its own: with its namespace, its colours and its style inside. */
export function toSvgFile(figure: Markup, theme: 'light' | 'dark' = 'light', css = FIGURE_CSS): string {
  const colours = theme === 'light' ? LIGHT_COLOURS : DARK_COLOURS;
  const head = `<svg xmlns="${SVG_NAMESPACE}" `;
  const style = `<style>:root{${escapeText(colours)}}${css}</style>`;
  const open = figure.markup.indexOf('>') + 1;
  return `${head}${figure.markup.slice('<svg '.length, open)}${style}${figure.markup.slice(open)}\n`;
}
