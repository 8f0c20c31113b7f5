import { KIND_IN_WORDS, kindOf, type SiUnit } from '../../core/quantity/unit.ts';
import { amountText, type Show } from './amount-text.ts';
import { foundText } from './found-words.ts';

/** What can be put into a sentence: SI numbers and text. */
export type TemplateArgs = Readonly<Record<string, string | number>>;
/** Sentences by key. Keys come from other rooms and stay open: a key without a sentence is shown as it is. */
export type Templates = Readonly<Record<string, string>>;

const SHOWN_AS: readonly string[] = ['percent', 'hours', 'minutes', 'milliamperes', 'millimetres'] satisfies readonly Show[];

/**
 * Puts arguments into a sentence: `{name}` as it is, `{name|m}` as a quantity in that SI unit, `{name|percent}` as the Assessment's `show`
 * words say, `{name|word}` as the words for what can be found. An argument that is missing leaves its braces standing, so that the gap is seen.
 */
export function fillTemplate(template: string, args: TemplateArgs): string {
  return template.replace(/\{([A-Za-z0-9]+)(?:\|([^}]+))?\}/g, (whole, name: string, how: string | undefined) => {
    const given = args[name];
    if (given === undefined) return whole;
    if (typeof given === 'string') return how === undefined ? given : foundText(given);
    if (how !== undefined && SHOWN_AS.includes(how))
      return amountText({ value: given, unit: unitBehind(how as Show), u: null }, how as Show);
    return amountText({ value: given, unit: how ?? '1', u: null });
  });
}

/** The sentence for a key; a key nobody has written a sentence for is printed itself, with what came along. */
export function sentenceFor(templates: Templates, key: string, args: TemplateArgs = {}): string {
  const template = Object.hasOwn(templates, key) ? templates[key] : undefined;
  if (template !== undefined) return fillTemplate(template, args);
  const rest = Object.entries(args).map(
    ([name, value]) => `${name} ${typeof value === 'number' ? amountText({ value, unit: '1', u: null }) : value}`,
  );
  return rest.length === 0 ? key : `${key} (${rest.join(', ')})`;
}

function unitBehind(show: Show): SiUnit {
  const units = { percent: '1', hours: 's', minutes: 's', milliamperes: 'A', millimetres: 'm' } as const satisfies Record<Show, SiUnit>;
  return units[show];
}

/** True when a unit is one the Assessment keeps; used by the tests over every template. */
export function isKeptUnit(unit: string): boolean {
  try {
    return KIND_IN_WORDS[kindOf(unit as SiUnit)] !== undefined;
  } catch {
    return false;
  }
}
