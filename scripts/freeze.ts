// npm run freeze NAME: keeps the case schema of today as test/kept/case-1.NAME.schema.json, once kept cases fill every field of it.
// A frozen schema is never edited (docs/decisions/0008-format-1-is-frozen.md); a release that adds something freezes one more.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { documentFits, fieldsOf, usedFields } from '../test/kept/fields.ts';
import type { Root } from '../test/kept/json-schema.ts';

const KEPT = 'test/kept';
const CASES = join(KEPT, 'case-1');
const readJson = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

const [name] = process.argv.slice(2);
if (name === undefined || !/^[a-z][a-z-]*$/.test(name))
  fail('say which name the frozen schema gets, in small letters: npm run freeze NAME');
const target = join(KEPT, `case-1.${name}.schema.json`);
if (existsSync(target)) fail(`${target} is there already, and a frozen schema is never edited; choose another name`);

const text = readFileSync('schema/case.schema.json', 'utf8');
const root = JSON.parse(text) as Root;
const same = readdirSync(KEPT).find((file) => /^case-1\..+\.schema\.json$/.test(file) && readFileSync(join(KEPT, file), 'utf8') === text);
if (same !== undefined) fail(`nothing was added to the format since ${same}`);

const documents = readdirSync(CASES)
  .map((folder) => readJson(join(CASES, folder, 'case.json')))
  .filter((one) => documentFits(root, one));
const used = new Set(documents.flatMap((one) => [...usedFields(root, one)]));
const empty = [...fieldsOf(root)].filter((field) => !used.has(field));
if (empty.length > 0) {
  const byForm = new Map<string, string[]>();
  for (const field of empty) {
    const [form = '', key = ''] = field.split(' > ');
    byForm.set(form, [...(byForm.get(form) ?? []), key]);
  }
  for (const [form, keys] of byForm) console.error(`  ${keys.join(', ')}   of the form with: ${form}`);
  fail(
    `${empty.length} fields above are filled by no kept case; add a folder to ${CASES} with a case.json that fills them, and run this again`,
  );
}
writeFileSync(target, text);
console.log(`${target}: ${fieldsOf(root).size} fields, each filled by a kept case`);

function fail(why: string): never {
  console.error(why);
  process.exit(1);
}
