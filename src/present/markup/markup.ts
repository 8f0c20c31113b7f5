/**
 * Pages and figures are written with `html`, which makes every text put into it inert. Only a Markup value goes in as it is, and only
 * this file makes one, so that text typed by a person or read from a file can never become an element or an attribute.
 */
export interface Markup {
  readonly markup: string;
}

export type Piece = Markup | string | number | null | undefined | false | readonly Piece[];

export const NOTHING: Markup = { markup: '' };

export function html(fixed: TemplateStringsArray, ...pieces: readonly Piece[]): Markup {
  let markup = fixed[0] ?? '';
  pieces.forEach((piece, index) => {
    markup += toText(piece) + (fixed[index + 1] ?? '');
  });
  return { markup };
}

/** Our own style sheet or a finished figure goes in as it is. Never for text of a case. */
export function verbatim(ownText: string): Markup {
  return { markup: ownText };
}

/** Several pieces with nothing between them, or with a fixed separator. */
export function joined(pieces: readonly Piece[], between: Piece = ''): Markup {
  return { markup: pieces.map(toText).join(toText(between)) };
}

function toText(piece: Piece): string {
  if (piece === null || piece === undefined || piece === false) return '';
  if (typeof piece === 'string') return escapeText(piece);
  if (typeof piece === 'number') return escapeText(String(piece));
  if ('markup' in piece) return piece.markup;
  return piece.map(toText).join('');
}

const ESCAPED: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

export function escapeText(text: string): string {
  return toInertText(text).replace(/[&<>"']/g, (sign) => ESCAPED[sign] ?? sign);
}

/**
 * Control characters and marks that turn the direction of writing are replaced, on a page as in a terminal: a name must not be able to
 * move the cursor or to show itself backwards. Line ends and tabs stay.
 */
export function toInertText(text: string): string {
  return text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufffe\uffff]/g, '\ufffd')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd');
}
