/** An element of a figure as it was written, with its text where it holds text. */
export interface FigureElement {
  readonly tag: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly FigureElement[];
  readonly text: string;
}

interface Open {
  readonly tag: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: FigureElement[];
  text: string;
}

const PIECE = /<(\/?)([a-z]+)((?:\s+[a-zA-Z-]+="[^"]*")*)\s*(\/?)>|([^<]+)/gy;
const ATTRIBUTE = /([a-zA-Z-]+)="([^"]*)"/g;
const SIGNS: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'" };

/**
 * Reads a figure that `html` wrote (src/present/markup/markup.ts) back into its elements, so that paper is drawn from the very markup that
 * the screen shows. It knows that one way of writing and is no reader of SVG from elsewhere.
 */
export function readFigure(markup: string): FigureElement {
  const root: Open = { tag: '', attributes: new Map(), children: [], text: '' };
  const open: Open[] = [root];
  PIECE.lastIndex = 0;
  while (PIECE.lastIndex < markup.length) {
    const at = PIECE.lastIndex;
    const piece = PIECE.exec(markup);
    const inside = open.at(-1)!;
    if (piece === null) throw new Error(`a figure cannot be read at ${at}: ${markup.slice(at, at + 40)}`);
    const [, closing, tag, attributes, alone, text] = piece;
    if (text !== undefined) inside.text += plain(text);
    else if (closing === '/') {
      if (inside.tag !== tag) throw new Error(`a figure closes ${tag} inside ${inside.tag}`);
      open.pop();
    } else {
      const element: Open = { tag: tag!, attributes: attributesOf(attributes ?? ''), children: [], text: '' };
      inside.children.push(element);
      if (alone !== '/') open.push(element);
    }
  }
  const [figure] = root.children;
  if (open.length !== 1 || figure === undefined) throw new Error('a figure is not one whole element');
  return figure;
}

function attributesOf(text: string): ReadonlyMap<string, string> {
  return new Map([...text.matchAll(ATTRIBUTE)].map(([, name, value]) => [name!, plain(value!)]));
}

const plain = (text: string): string => text.replace(/&(?:amp|lt|gt|quot|#39);/g, (sign) => SIGNS[sign]!);
