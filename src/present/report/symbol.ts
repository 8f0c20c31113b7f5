import { html, joined, type Markup } from '../markup/markup.ts';

const SUBSCRIPT = /_(?:\{([^}]*)\}|([\p{L}\p{N},]+))/u;

/** "V_out" with the index lowered and upright. */
export function setSubscripts(text: string): Markup {
  const parts = text.split(new RegExp(SUBSCRIPT, 'gu'));
  const GROUPS = 3; // plain text, then the two ways of writing an index
  return joined(
    parts.map((part, index) => (index % GROUPS === 0 ? html`${part}` : part === undefined ? html`` : html`<sub>${part}</sub>`)),
  );
}

export function setSymbol(symbol: string): Markup {
  return html`<span class="sym">${setSubscripts(symbol)}</span>`;
}
