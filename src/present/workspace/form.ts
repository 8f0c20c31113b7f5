import type { z } from 'zod';
import { caseDocument } from '../../core/evidence/case.ts';
import { date, id, localTime, sha256, words } from '../../core/evidence/typed.ts';
import { noValue, read } from '../../core/evidence/value.ts';

/**
 * What can be entered where, told by the schema itself: the page has no list of fields of its own, so that a field that joins the case
 * can be entered the same day. `value` fields know the five states; `condition` fields know "unknown" beside a reading.
 */
export type FormNode =
  | { readonly is: 'quantity'; readonly kind: string; readonly range: boolean }
  | { readonly is: 'text' | 'date' | 'time' | 'flag' | 'number' | 'hash' | 'id' }
  /** The id of an item of a list of the case. */
  | { readonly is: 'reference'; readonly list: string }
  | { readonly is: 'choice'; readonly options: readonly (string | number)[] }
  | { readonly is: 'fixed'; readonly value: string | number | boolean }
  | { readonly is: 'value' | 'condition'; readonly of: FormNode }
  | { readonly is: 'object'; readonly members: readonly FormMember[] }
  | { readonly is: 'list'; readonly of: FormNode; readonly keyed: boolean }
  | { readonly is: 'pair'; readonly of: readonly FormNode[] }
  | { readonly is: 'map'; readonly keys: readonly string[]; readonly of: FormNode }
  | { readonly is: 'variants'; readonly by: string; readonly of: Readonly<Record<string, FormNode>> }
  | { readonly is: 'either'; readonly of: readonly FormNode[] };

export interface FormMember {
  readonly key: string;
  readonly node: FormNode;
  readonly required: boolean;
}

/** Members whose id points into a list of the case. */
const LIST_OF: Readonly<Record<string, string>> = {
  port: 'ports',
  day: 'days',
  part: 'parts',
  place: 'places',
  instrument: 'instruments',
  file: 'files',
  files: 'files',
  photo: 'exhibits',
  from: 'conductors',
  to: 'conductors',
  between: 'conductors',
  node: 'conductors',
  net: 'conductors',
  coreConductor: 'conductors',
  pins: 'conductors',
  fusePart: 'parts',
  switchPart: 'parts',
  rectifierPart: 'parts',
  bulk: 'parts',
  inrush: 'parts',
  bleeders: 'parts',
  suppression: 'parts',
  sharesWith: 'ports',
  of: 'places',
  at: 'conductors',
  uses: 'instruments',
  level: 'levels',
};

type Def = Readonly<Record<string, unknown>> & { readonly type: string };

/** The form of a whole case. */
export function toForm(): FormNode {
  return nodeOf(caseDocument, '');
}

/** The form of what goes with a single reading: when, with what, how, under which conditions. */
export function toReadingForm(): FormNode {
  return nodeOf(read(words), '');
}

function nodeOf(schema: z.core.$ZodType, key: string): FormNode {
  if (schema === words) return { is: 'text' };
  if (schema === date) return { is: 'date' };
  if (schema === localTime) return { is: 'time' };
  if (schema === sha256) return { is: 'hash' };
  if (schema === id) {
    const list = LIST_OF[key];
    return key === 'id' || list === undefined ? { is: 'id' } : { is: 'reference', list };
  }
  const def = schema._zod.def as unknown as Def;
  const inner = (name: string): z.core.$ZodType => def[name] as z.core.$ZodType;
  switch (def.type) {
    case 'optional':
    case 'default':
      return nodeOf(inner('innerType'), key);
    case 'pipe':
      return nodeOf(inner('in'), key);
    case 'string':
      return stringNode(schema);
    case 'boolean':
      return { is: 'flag' };
    case 'number':
      return { is: 'number' };
    case 'enum':
      return { is: 'choice', options: Object.values(def['entries'] as Record<string, string>) };
    case 'literal':
      return { is: 'fixed', value: (def['values'] as (string | number | boolean)[])[0] ?? '' };
    case 'object':
      return objectNode(def);
    case 'array':
      return listNode(inner('element'), key);
    case 'tuple':
      return { is: 'pair', of: (def['items'] as z.core.$ZodType[]).map((item) => nodeOf(item, key)) };
    case 'record':
      return { is: 'map', keys: keysOf(inner('keyType')), of: nodeOf(inner('valueType'), key) };
    case 'union':
      return unionNode(def, key);
    default:
      throw new Error(`a schema of type ${def.type} has no form`);
  }
}

function stringNode(schema: z.core.$ZodType): FormNode {
  const told = (schema as z.ZodType).meta()?.description ?? '';
  const quantity = /^A (\w+), as typed/.exec(told)?.[1];
  if (quantity !== undefined) return { is: 'quantity', kind: quantity, range: false };
  const range = /^A (\w+) or a range/.exec(told)?.[1];
  return range === undefined ? { is: 'text' } : { is: 'quantity', kind: range, range: true };
}

function objectNode(def: Def): FormNode {
  const members = Object.entries(def['shape'] as Record<string, z.core.$ZodType>).map(([key, schema]) => ({
    key,
    node: nodeOf(schema, key),
    required: !['optional', 'default'].includes((schema._zod.def as unknown as Def).type),
  }));
  return { is: 'object', members };
}

function listNode(element: z.core.$ZodType, key: string): FormNode {
  const of = nodeOf(element, key);
  const inside = of.is === 'variants' ? Object.values(of.of)[0] : of;
  return { is: 'list', of, keyed: inside?.is === 'object' && inside.members.some((member) => member.key === 'id') };
}

function unionNode(def: Def, key: string): FormNode {
  const options = def['options'] as z.core.$ZodType[];
  const by = def['discriminator'];
  if (typeof by === 'string') return variantsNode(options, by, key);
  const [first] = options;
  if (first !== undefined && options.includes(noValue)) return { is: 'value', of: nodeOf(first, key) };
  const nodes = options.map((option) => nodeOf(option, key));
  if (nodes.every((node) => node.is === 'fixed'))
    return { is: 'choice', options: nodes.map((node) => (node as { value: string | number }).value) };
  const [reading, state] = nodes;
  if (nodes.length === 2 && reading !== undefined && state?.is === 'object' && state.members[0]?.key === 'state' && onlyUnknown(state))
    return { is: 'condition', of: reading };
  return { is: 'either', of: nodes };
}

function onlyUnknown(state: Extract<FormNode, { is: 'object' }>): boolean {
  const [first] = state.members;
  return first?.node.is === 'fixed' && first.node.value === 'unknown';
}

function variantsNode(options: readonly z.core.$ZodType[], by: string, key: string): FormNode {
  const of: Record<string, FormNode> = {};
  for (const option of options) {
    const node = nodeOf(option, key);
    // a variant can have variants of its own: cold and touch readings by their quantity
    const sample = node.is === 'variants' ? Object.values(node.of)[0] : node;
    const name = sample?.is === 'object' ? sample.members.find((member) => member.key === by)?.node : undefined;
    if (name?.is !== 'fixed') throw new Error(`a variant without its ${by}`);
    of[String(name.value)] = node;
  }
  return { is: 'variants', by, of };
}

function keysOf(schema: z.core.$ZodType): string[] {
  const def = schema._zod.def as unknown as Def;
  return def.type === 'enum' ? Object.values(def['entries'] as Record<string, string>) : [];
}
