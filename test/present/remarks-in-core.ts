import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { SLIPS } from '../../src/core/circuit/slip/slip.ts';
import type { NoSetPoints } from '../../src/core/working/circuit/set-points.ts';
import type { SpotReading } from '../../src/core/working/heat/spot-facts.ts';
import type { EnclosureQuestion } from '../../src/core/working/label/enclosure-facts.ts';
import type { LimitKind } from '../../src/core/working/load/kind-of-limit.ts';
import type { Sweep } from '../../src/core/working/load/read-sweep.ts';
import type { TouchReading } from '../../src/core/working/touch/touch-facts.ts';

/** One place where the core makes a remark, and every key it can have there; none where nobody can tell. */
export interface RemarkPlace {
  readonly path: string;
  readonly expression: string;
  readonly keys: readonly string[];
}

/** Keys that come out of a type: the compiler asks here for every word of it, and the test asks for a sentence to each. */
const TOUCH = {
  supplyNotDirect: true,
  supplyNotStated: true,
  orientationNotStated: true,
  mainsNotStated: true,
} satisfies Record<NonNullable<TouchReading['refused']>, true>;
const SPOT = { bareMetal: true, emissivityUnknown: true, reflectionTooStrong: true } satisfies Record<
  NonNullable<SpotReading['refused']>,
  true
>;
const LEFT_OUT = {
  cellNotRead: true,
  fileMissing: true,
  columnMissing: true,
  columnInDoubt: true,
  unitNotStated: true,
} satisfies Record<Sweep['leftOut'][number]['because'], true>;
const SET_POINTS = { notRecognised: true, setInsideChip: true } satisfies Record<Exclude<NoSetPoints['because'], 'value'>, true>;
const ENCLOSURE = {
  fewDrops: true,
  dropHeightNotStated: true,
  dropTooLow: true,
  dropTooHigh: true,
} satisfies Record<NonNullable<EnclosureQuestion['seen'][number]['short']>, true>;
const LIMITS = {
  constantCurrent: true,
  constantPower: true,
  foldback: true,
  hiccup: true,
  latchOff: true,
  soft: true,
} satisfies Record<LimitKind, true>;

const BY_TYPE: Readonly<Record<string, readonly string[]>> = {
  'src/core/assess/find-warnings.ts: reading.refused': Object.keys(TOUCH),
  'src/core/assess/find-warnings.ts: because': Object.keys(LEFT_OUT),
  'src/core/assess/find-warnings.ts: `slip-${code}`': SLIPS.map((code) => `slip-${code}`),
  'src/core/check/shock/touch-current.ts: reading.refused': Object.keys(TOUCH),
  'src/core/check/refused-spot.ts: reading.refused': Object.keys(SPOT),
  'src/core/check/judge-set-points.ts: found.because': Object.keys(SET_POINTS),
  'src/core/check/shock/enclosure.ts: short': Object.keys(ENCLOSURE),
  'src/core/check/delivery/regulation-mode.ts: `limit-${found.kind}`': Object.keys(LIMITS).map((kind) => `limit-${kind}`),
};

/** Where notes are carried from one place to another. */
const CARRIED = new Set(['src/core/assess/to-steps.ts', 'src/core/assess/to-finding.ts']);

const MADE = /\{\s*key(?::\s*((?:[^{},]|\$\{[^}]*\})*?))?,\s*(?:at:[^{}]*?)?args\b/g;

export function remarksInCore(): RemarkPlace[] {
  const files = readdirSync('src/core', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join('src/core', name))
    .filter((path) => !CARRIED.has(path));
  const texts = new Map(files.map((path) => [path, readFileSync(path, 'utf8')]));
  return [...texts].flatMap(([path, text]) =>
    [...text.matchAll(MADE)].flatMap(({ 1: made, index }): RemarkPlace[] => {
      const expression = (made ?? 'key').trim();
      if (expression === 'string' || expression.startsWith('z.')) return []; // a type, or the schema of what is kept
      const keys = BY_TYPE[`${path}: ${expression}`] ?? resolve(expression, text, texts, index);
      return [{ path, expression, keys: [...keys] }];
    }),
  );
}

const DEEPEST = 4; // a key that is handed on more often than this is hidden

/** Every word an expression can come to, by the declarations of its file: literals, choices, constants, parameters, and what a function returns. */
function resolve(expression: string, text: string, texts: ReadonlyMap<string, string>, at: number, depth = 0): string[] {
  if (depth > DEEPEST) return [];
  const again = (one: string): string[] => resolve(one.trim(), text, texts, at, depth + 1);
  const literal = /^'([A-Za-z-]+)'$/.exec(expression)?.[1];
  if (literal !== undefined) return [literal];
  const choice = branches(expression);
  if (choice.length > 0) return choice.flatMap(again);
  const called = /^([A-Za-z]+)\(/.exec(expression)?.[1];
  if (called !== undefined) return returned(called, text, texts, depth);
  if (!/^[A-Za-z]+$/.test(expression)) return [];
  const declared = [...text.slice(0, at).matchAll(new RegExp(`const ${expression}(?:: [^=]+)? =\\s*([^;]+);`, 'g'))].at(-1)?.[1];
  if (declared !== undefined) return again(declared);
  return handedIn(expression, text, at).flatMap(again);
}

/** Both sides of a choice at the top level, of every choice inside; empty where there is none. */
function branches(expression: string): string[] {
  let depth = 0;
  let asked = -1;
  let open = 0;
  for (const [index, sign] of [...expression].entries()) {
    if ('([{'.includes(sign)) depth += 1;
    if (')]}'.includes(sign)) depth -= 1;
    if (depth > 0) continue;
    const next = expression[index + 1] ?? '';
    if (sign === '?' && next !== '.' && next !== '?' && expression[index - 1] !== '?') {
      if (asked < 0) asked = index;
      else open += 1;
    } else if (sign === ':' && asked >= 0) {
      if (open === 0) return [expression.slice(asked + 1, index), expression.slice(index + 1)].map(unwrapped);
      open -= 1;
    }
  }
  return [];
}

function unwrapped(text: string): string {
  const bare = text.trim();
  return bare.startsWith('(') && bare.endsWith(')') ? bare.slice(1, -1) : bare;
}

/** Words that a function of the core returns by name. */
function returned(name: string, text: string, texts: ReadonlyMap<string, string>, depth: number): string[] {
  const home = text.includes(`function ${name}(`) ? text : [...texts.values()].find((one) => one.includes(`export function ${name}(`));
  const from = home?.indexOf(`function ${name}(`) ?? -1;
  if (home === undefined || from < 0) return [];
  const body = home.slice(from, home.indexOf('\n}\n', from));
  return [...body.matchAll(/return ([^;]+);/g)].flatMap(({ 1: one = '', index }) => resolve(one, home, texts, from + index, depth + 1));
}

/** What callers in the same file hand in for a parameter of the function around a place. */
function handedIn(parameter: string, text: string, at: number): string[] {
  const before = [...text.slice(0, at).matchAll(/(?:function ([A-Za-z]+)|const ([A-Za-z]+) =) ?\(([^)]*)\)/g)].at(-1);
  if (before === undefined) return [];
  const name = before[1] ?? before[2] ?? '';
  const place = (before[3] ?? '').split(',').findIndex((one) => one.trim().startsWith(`${parameter}:`));
  if (place < 0) return [];
  return [...text.matchAll(new RegExp(`(?<!function )\\b${name}\\(([^()]*)\\)`, 'g'))].flatMap(
    ({ 1: list = '' }) => list.split(',')[place] ?? [],
  );
}
