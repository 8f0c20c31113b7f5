import type { FigureElement } from './read-figure.ts';

/** Properties that hold for an element, by name; every one is handed down to what stands inside it. */
export type Style = ReadonlyMap<string, string>;

interface Rule {
  /** From the outermost to the element itself. */
  readonly steps: readonly { readonly tag: string; readonly classes: readonly string[] }[];
  readonly weight: number;
  readonly properties: readonly (readonly [string, string])[];
}

/** What paper can draw. All of them are handed down (SVG 2, property index). */
const DRAWN = ['fill', 'stroke', 'stroke-width', 'stroke-linejoin', 'font-size', 'font-weight', 'font-style', 'text-anchor'] as const;
/** How a page flows, and the family, of which paper has one. */
const OF_A_PAGE = ['font-family', 'display', 'overflow'];
const CLASS_WEIGHT = 1000; // one class outweighs any number of tags that a selector of ours holds (CSS Selectors 4, section 17)

/** What holds before any rule (SVG 2, property index). */
export const INITIAL: Style = new Map([
  ['fill', '#000000'],
  ['stroke', 'none'],
  ['stroke-width', '1'],
  ['stroke-linejoin', 'miter'],
  ['font-size', '12px'],
  ['font-weight', '400'],
  ['font-style', 'normal'],
  ['text-anchor', 'start'],
]);

/** The rules of our own style sheets: tags and classes, one inside another. Anything else in a selector is a defect. */
export function parseRules(css: string): readonly Rule[] {
  return [...css.matchAll(/([^{}]+)\{([^{}]*)\}/g)].flatMap(([, selectors, body]) => {
    const properties = propertiesOf(body!);
    return selectors!.split(',').map((selector): Rule => {
      const steps = selector.trim().split(/\s+/).map(stepOf);
      const weight = steps.reduce((sum, { tag, classes }) => sum + (tag === '' ? 0 : 1) + classes.length * CLASS_WEIGHT, 0);
      return { steps, weight, properties };
    });
  });
}

/** `--name` to value of a list of colours. */
export function propertiesOf(body: string): (readonly [string, string])[] {
  return [...body.matchAll(/([a-z0-9-]+):([^;]+)/g)].map(([, name, value]) => [name!, value!.trim()] as const);
}

function stepOf(text: string): Rule['steps'][number] {
  const [whole, tag, classes] = /^([a-z]*)((?:\.[\w-]+)*)$/.exec(text) ?? [];
  if (whole === undefined || whole === '') throw new Error(`a style of ours selects by more than tags and classes: ${text}`);
  return { tag: tag!, classes: classes!.split('.').slice(1) };
}

/** Style of the last of these elements, each standing in the one before it: its own attributes, then rules from light to heavy, later over earlier. */
export function styleOf(
  way: readonly FigureElement[],
  inherited: Style,
  rules: readonly Rule[],
  colours: ReadonlyMap<string, string>,
): Style {
  const own = way.at(-1)!;
  const style = new Map(inherited);
  for (const name of DRAWN) {
    const value = own.attributes.get(name);
    if (value !== undefined) style.set(name, value);
  }
  const matching = rules.filter(({ steps }) => matches(steps, way)).sort((a, b) => a.weight - b.weight);
  for (const [name, value] of matching.flatMap(({ properties }) => properties)) {
    if (OF_A_PAGE.includes(name)) continue;
    if (!DRAWN.some((one) => one === name)) throw new Error(`paper cannot draw ${name} of ${own.tag}`);
    style.set(
      name,
      value.replace(/var\((--[\w-]+)\)/, (_whole, colour: string) => colours.get(colour) ?? missing(colour)),
    );
  }
  return style;
}

function missing(colour: string): never {
  throw new Error(`no colour ${colour}`);
}

function matches(steps: Rule['steps'], way: readonly FigureElement[]): boolean {
  let step = steps.length - 1;
  if (!isStep(steps[step]!, way.at(-1)!)) return false;
  step -= 1;
  for (let at = way.length - 2; at >= 0 && step >= 0; at -= 1) if (isStep(steps[step]!, way[at]!)) step -= 1;
  return step < 0;
}

function isStep({ tag, classes }: Rule['steps'][number], element: FigureElement): boolean {
  if (tag !== '' && tag !== element.tag) return false;
  if (classes.length === 0) return true;
  const own = (element.attributes.get('class') ?? '').split(' ');
  return classes.every((one) => own.includes(one));
}
