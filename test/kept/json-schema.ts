/** The part of JSON Schema that the case schema is written in. A keyword outside it throws: nothing is passed over in silence. */
export interface Schema {
  readonly [keyword: string]: unknown;
}
export interface Root extends Schema {
  readonly $defs: Readonly<Record<string, Schema>>;
}

const KNOWN = new Set([
  '$schema',
  '$defs',
  '$ref',
  'title',
  'description',
  'default',
  'type',
  'const',
  'enum',
  'anyOf',
  'oneOf',
  'properties',
  'required',
  'additionalProperties',
  'propertyNames',
  'items',
  'prefixItems',
  'minItems',
  'maxItems',
  'pattern',
  'format',
  'maxLength',
  'minimum',
  'maximum',
  'exclusiveMinimum',
  'exclusiveMaximum',
]);

/** Follows references until something is said. What stands beside a reference adds to what it says. */
export function resolve(root: Root, schema: Schema): Schema {
  const strange = Object.keys(schema).find((keyword) => !KNOWN.has(keyword));
  if (strange !== undefined) throw new Error(`the keyword ${strange} is not known here`);
  const { $ref: ref, ...beside } = schema;
  if (typeof ref !== 'string') return schema;
  const target = root.$defs[ref.replace('#/$defs/', '')];
  if (target === undefined) throw new Error(`${ref} leads nowhere`);
  return { ...resolve(root, target), ...beside };
}

/** Branches of a union, flattened; a schema that is no union is its own only branch. */
export function branchesOf(root: Root, schema: Schema): Schema[] {
  const own = resolve(root, schema);
  const union = (own['anyOf'] ?? own['oneOf']) as Schema[] | undefined;
  return union === undefined ? [own] : union.flatMap((branch) => branchesOf(root, branch));
}

export function propertiesOf(schema: Schema): Readonly<Record<string, Schema>> {
  return (schema['properties'] ?? {}) as Record<string, Schema>;
}

/** The parts of an array: of the fixed places first, then of all that follow. */
export function itemsOf(schema: Schema): { fixed: readonly Schema[]; rest: Schema | null } {
  const rest = schema['items'];
  return {
    fixed: (schema['prefixItems'] ?? []) as Schema[],
    rest: typeof rest === 'object' && rest !== null ? (rest as Schema) : null,
  };
}

/** What values of keys that are not listed must be; null where there may be none. */
export function othersOf(schema: Schema): Schema | null {
  const others = schema['additionalProperties'];
  return others === false ? null : typeof others === 'object' && others !== null ? (others as Schema) : {};
}

/** Words that stand alone: a constant or a list. */
export function wordsOf(schema: Schema): readonly unknown[] | null {
  return 'const' in schema ? [schema['const']] : ((schema['enum'] as unknown[] | undefined) ?? null);
}
