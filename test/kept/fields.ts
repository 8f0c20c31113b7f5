import { branchesOf, itemsOf, othersOf, propertiesOf, type Root, type Schema, wordsOf } from './json-schema.ts';

/**
 * A field is a key of one form of object. Forms are told apart by their keys and constants, not by where they stand: a reading looks the same
 * wherever there is one.
 */
function formOf(root: Root, schema: Schema): string {
  return Object.entries(propertiesOf(schema))
    .map(([key, one]) => {
      const [only, ...more] = branchesOf(root, one);
      const word = only !== undefined && more.length === 0 && 'const' in only ? `=${String(only['const'])}` : '';
      return `${key}${word}`;
    })
    .sort()
    .join(' ');
}

/** "kind=soak … > table": every field that the schema knows. */
export function fieldsOf(root: Root): Set<string> {
  const found = new Set<string>();
  const visit = (schema: Schema): void => {
    for (const branch of branchesOf(root, schema)) {
      const form = formOf(root, branch);
      for (const [key, one] of Object.entries(propertiesOf(branch))) {
        found.add(`${form} > ${key}`);
        visit(one);
      }
      const { fixed, rest } = itemsOf(branch);
      for (const one of [...fixed, ...(rest === null ? [] : [rest])]) visit(one);
      const others = branch['type'] === 'object' ? othersOf(branch) : null;
      if (others !== null) visit(others);
    }
  };
  visit(root);
  return found;
}

/** The fields that a document fills. */
export function usedFields(root: Root, document: unknown): Set<string> {
  const found = new Set<string>();
  const visit = (schema: Schema, value: unknown): void => {
    const branch = branchesOf(root, schema).find((one) => fits(root, one, value));
    if (branch === undefined) throw new Error(`${JSON.stringify(value)} fits nothing that the schema allows`);
    if (Array.isArray(value)) {
      const { fixed, rest } = itemsOf(branch);
      for (const [index, item] of value.entries()) visit(fixed[index] ?? rest ?? {}, item);
    } else if (typeof value === 'object' && value !== null) {
      const own = propertiesOf(branch);
      const form = formOf(root, branch);
      for (const [key, item] of Object.entries(value)) {
        if (own[key] !== undefined) found.add(`${form} > ${key}`);
        visit(own[key] ?? othersOf(branch) ?? {}, item);
      }
    }
  };
  visit(root, document);
  return found;
}

/** Whether a document has a form that the schema allows; kinds of quantities and references are not looked at. */
export function documentFits(root: Root, document: unknown): boolean {
  return branchesOf(root, root).some((branch) => fits(root, branch, document));
}

/** Whether a value has the form of a branch that is no union: enough to tell branches apart. */
function fits(root: Root, branch: Schema, value: unknown): boolean {
  const words = wordsOf(branch);
  if (words !== null) return words.includes(value);
  const any = (schema: Schema, one: unknown): boolean => branchesOf(root, schema).some((own) => fits(root, own, one));
  switch (branch['type']) {
    case undefined:
      return true;
    case 'object': {
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
      const own = propertiesOf(branch);
      const others = othersOf(branch);
      const must = (branch['required'] ?? []) as string[];
      return (
        must.every((key) => key in value) &&
        Object.entries(value).every(([key, one]) => {
          const schema = own[key] ?? others;
          return schema !== null && schema !== undefined && any(schema, one);
        })
      );
    }
    case 'array': {
      if (!Array.isArray(value)) return false;
      const { fixed, rest } = itemsOf(branch);
      return value.every((one, index) => {
        const schema = fixed[index] ?? rest;
        return schema !== null && schema !== undefined && any(schema, one);
      });
    }
    case 'integer':
      return Number.isInteger(value);
    default:
      return typeof value === branch['type'];
  }
}
