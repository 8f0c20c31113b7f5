import { branchesOf, itemsOf, othersOf, propertiesOf, type Root, resolve, type Schema, wordsOf } from './json-schema.ts';

interface Pair {
  readonly old: Root;
  readonly now: Root;
}

/**
 * Places where `now` may refuse, or read in another way, what `old` takes; none when it takes at least as much. A place is named by its keys. It errs to the
 * side of refusing: a pattern that is merely written otherwise counts as another.
 */
export function narrowings(pair: Pair): string[] {
  return compare(pair, pair.old, pair.now, '');
}

function compare(pair: Pair, old: Schema, now: Schema, place: string): string[] {
  const defaults = [resolve(pair.old, old)['default'], resolve(pair.now, now)['default']].map((one) => JSON.stringify(one));
  const meaning = defaults[0] === defaults[1] ? [] : [`${place}: what is left out means something else`];
  const olds = branchesOf(pair.old, old);
  const nows = branchesOf(pair.now, now);
  const lost = olds.flatMap((one) => {
    const tries = nows.map((other) => compareOne(pair, one, other, place));
    return tries.some((found) => found.length === 0) ? [] : (tries.toSorted((a, b) => a.length - b.length)[0] ?? []);
  });
  return [...meaning, ...lost];
}

function compareOne(pair: Pair, old: Schema, now: Schema, place: string): string[] {
  if (now['type'] === undefined && wordsOf(now) === null) return []; // anything goes
  const words = wordsOf(now);
  if (words !== null) {
    const gone = (wordsOf(old) ?? [undefined]).filter((word) => !words.includes(word));
    return gone.map((word) => `${place}: ${JSON.stringify(word) ?? 'a free value'} is no longer taken`);
  }
  if (old['type'] !== now['type'] && !(old['type'] === 'integer' && now['type'] === 'number'))
    return [`${place}: ${String(old['type'])} has become ${String(now['type'])}`];
  switch (old['type']) {
    case 'object':
      return compareObjects(pair, old, now, place);
    case 'array':
      return compareArrays(pair, old, now, place);
    default:
      return bounds(old, now, place);
  }
}

function compareObjects(pair: Pair, old: Schema, now: Schema, place: string): string[] {
  const [before, after] = [propertiesOf(old), propertiesOf(now)];
  const must = new Set((old['required'] ?? []) as string[]);
  const asked = ((now['required'] ?? []) as string[]).filter((key) => !must.has(key));
  const [oldOthers, others] = [othersOf(old), othersOf(now)];
  const names = [old['propertyNames'], now['propertyNames']] as (Schema | undefined)[];
  return [
    ...asked.map((key) => `${place}/${key}: is asked for now`),
    ...Object.entries(before).flatMap(([key, one]) => {
      const other = after[key] ?? others;
      return other === null ? [`${place}/${key}: is gone`] : compare(pair, one, other, `${place}/${key}`);
    }),
    ...(oldOthers === null ? [] : others === null ? [`${place}: other keys are gone`] : compare(pair, oldOthers, others, `${place}/*`)),
    ...(names[1] === undefined
      ? []
      : names[0] === undefined
        ? [`${place}: keys are bound now`]
        : compare(pair, names[0], names[1], `${place}/key`)),
  ];
}

function compareArrays(pair: Pair, old: Schema, now: Schema, place: string): string[] {
  const [before, after] = [itemsOf(old), itemsOf(now)];
  if (before.fixed.length !== after.fixed.length) return [`${place}: has another number of places`];
  const fixed = before.fixed.flatMap((one, index) => compare(pair, one, after.fixed[index]!, `${place}/${index}`));
  const rest =
    before.rest === null
      ? []
      : after.rest === null
        ? [`${place}: takes no more items`]
        : compare(pair, before.rest, after.rest, `${place}/*`);
  return [...fixed, ...rest, ...bounds(old, now, place)];
}

const FLOORS = ['minimum', 'exclusiveMinimum', 'minItems'] as const;
const CEILINGS = ['maximum', 'exclusiveMaximum', 'maxLength', 'maxItems'] as const;
/** Of a quantity as typed the description says which kind it is; the check itself is not in the schema. */
const AS_TYPED = /as typed/;

function bounds(old: Schema, now: Schema, place: string): string[] {
  const found: string[] = [];
  for (const key of FLOORS)
    if (now[key] !== undefined && !(Number(old[key]) >= Number(now[key]))) found.push(`${place}: ${key} is narrower`);
  for (const key of CEILINGS)
    if (now[key] !== undefined && !(Number(old[key]) <= Number(now[key]))) found.push(`${place}: ${key} is narrower`);
  for (const key of ['pattern', 'format'] as const)
    if (now[key] !== undefined && now[key] !== old[key] && wordsOf(old) === null) found.push(`${place}: ${key} is another`);
  const [before, after] = [old['description'], now['description']].map((text) => (AS_TYPED.test(String(text)) ? text : undefined));
  if (after !== undefined && before !== after) found.push(`${place}: it is read as another kind`);
  return found;
}
