import { html, type Markup, NOTHING, type Piece } from '../markup/markup.ts';

/** A figure drawn once for a wide and once for a narrow page, with its number and a sentence that says what it shows. */
export interface FigurePart {
  readonly wide: Markup;
  readonly narrow: Markup;
  readonly title: string;
  readonly caption: Piece;
}

/** Figures are counted through the whole report, in the order in which they are set. */
export function setFigure({ wide, narrow, title, caption }: FigurePart, number: number): Markup {
  if (wide.markup === '') return NOTHING;
  return html`<figure><div class="wide">${wide}</div><div class="narrow">${narrow}</div>
<figcaption><b>Figure ${number}. ${title}:</b> ${caption}</figcaption></figure>\n`;
}
