import { describe, expect, test } from 'vitest';
import { INITIAL, parseRules, styleOf } from '../../src/paper/cascade.ts';
import { type FigureElement, readFigure } from '../../src/paper/read-figure.ts';
import { FIGURE_CSS, LIGHT_COLOURS } from '../../src/present/figure/figure-style.ts';
import { html } from '../../src/present/markup/markup.ts';
import { SCHEMATIC_CSS } from '../../src/present/schematic/schematic-style.ts';

const COLOURS = new Map([['--ink', '#14201e']]);

/** Style of the innermost of elements that stand in one another, first children all the way. */
function styleIn(markup: string, css: string) {
  const rules = parseRules(css);
  const way: FigureElement[] = [];
  let style = INITIAL;
  for (let here: FigureElement | undefined = readFigure(markup); here !== undefined; here = here.children[0]) {
    way.push(here);
    style = styleOf(way, style, rules, COLOURS);
  }
  return style;
}

describe('the style of an element on paper', () => {
  // CSS Cascading 5 and Selectors 4: classes before tags before order; an attribute gives way to every rule
  test('comes from the heavier selector, and from the later of two as heavy', () => {
    expect(styleIn('<g class="a"><path class="b"/></g>', '.a .b{stroke:red}.a path{stroke:blue}').get('stroke')).toBe('red');
    expect(styleIn('<g class="a"><path class="b"/></g>', '.a path{stroke:blue}path{stroke:green}').get('stroke')).toBe('blue');
    expect(styleIn('<g class="a"><path class="b"/></g>', '.a .b{stroke:red}.a .b{stroke:blue}').get('stroke')).toBe('blue');
    expect(styleIn('<path stroke-width="3"/>', 'path{stroke-width:2}').get('stroke-width')).toBe('2');
    expect(styleIn('<path stroke-width="3"/>', 'rect{stroke-width:2}').get('stroke-width')).toBe('3');
  });
  test('is handed down, and a selector reaches through what stands between', () => {
    expect(styleIn('<g class="a"><g><path/></g></g>', '.a{fill:var(--ink)}').get('fill')).toBe('#14201e');
    expect(styleIn('<g class="a"><g><path/></g></g>', '.a path{fill:none}').get('fill')).toBe('none');
    expect(styleIn('<g><g class="a"><path/></g></g>', '.b .a path{fill:none}').get('fill')).toBe('#000000');
    expect(styleIn('<g class="a b"><path/></g>', '.a.b path{fill:none}').get('fill')).toBe('none');
  });
  test('is a defect where paper cannot draw it, so that no line goes missing unseen', () => {
    expect(() => styleIn('<path/>', 'path{stroke-dasharray:2 2}')).toThrow('cannot draw stroke-dasharray');
    expect(() => styleIn('<path/>', 'path{stroke:var(--none)}')).toThrow('no colour --none');
    expect(() => parseRules('.a>path{fill:none}')).toThrow('more than tags and classes');
  });
  test('can be read from the style sheets of the figures', () => {
    expect(parseRules(FIGURE_CSS + SCHEMATIC_CSS).length).toBeGreaterThan(50);
    expect(LIGHT_COLOURS).toContain('--ink:#14201e');
  });
});

describe('a figure read back', () => {
  test('has the texts and names that were put into it, whatever signs they hold', () => {
    const name = `<&>"'é`;
    const { children, attributes } = readFigure(html`<svg aria-label="${name}"><text x="1">${name}</text><path d="M0 0"/></svg>`.markup);
    expect(attributes.get('aria-label')).toBe(name);
    expect(children.map(({ tag, text }) => [tag, text])).toEqual([
      ['text', name],
      ['path', ''],
    ]);
  });
  test('is a defect where it is not one whole element', () => {
    for (const broken of ['', '<svg>', '<svg></g>', '<svg><p x=1/></svg>', '</svg>']) expect(() => readFigure(broken)).toThrow();
  });
});
