import { describe, expect, test } from 'vitest';
import { FORMULAS } from '../../src/core/formula/registry.ts';
import { GRADES } from '../../src/core/source/grade.ts';
import type { Source } from '../../src/core/source/source.ts';
import { TABLES } from '../../src/core/table/registry.ts';
import { WORKED } from '../worked/examples.ts';
import { filesBelow } from './read-tree.ts';

function expectSource(source: Source, of: string): void {
  expect(source.publication, of).not.toBe('');
  expect(source.place, of).not.toBe('');
  expect(GRADES, of).toContain(source.grade);
  expect(source.checked, of).toMatch(/^\d{4}-\d{2}-\d{2}$/);
  if (source.grade === 'secondary')
    expect((source.alsoBy ?? []).length + source.place.length, `${of}: a secondary figure says where it was read`).toBeGreaterThan(0);
}

describe('every formula', () => {
  test.each(FORMULAS)('$id has a source with a grade and says where it holds', (formula) => {
    expectSource(formula.source, formula.id);
    expect(formula.validity).not.toBe('');
  });
  test.each(FORMULAS)('$id prints every input symbol in its plain text', (formula) => {
    for (const { symbol } of Object.values(formula.inputs)) expect(formula.text.split(/[\s()^⁴]+/), formula.text).toContain(symbol);
  });
  test.each(FORMULAS)('$id is checked against something that is not our own output', (formula) => {
    const origins = WORKED.filter((example) => 'formula' in example && example.formula === formula.id).map(({ origin }) => origin);
    expect(origins.filter((origin) => origin !== 'own').length, `${formula.id} has ${origins.length} examples`).toBeGreaterThan(0);
  });
});

describe('every table', () => {
  const code = filesBelow('src/core', ['.ts'])
    .filter(({ path }) => !path.startsWith('src/core/table/') && !path.endsWith('registry.ts'))
    .map(({ text }) => text)
    .join('\n');
  test.each(TABLES)('$id has a source with a grade, also cell by cell', (table) => {
    expectSource(table.source, table.id);
    for (const [cell, source] of Object.entries(table.cellSources ?? {})) {
      expectSource(source, `${table.id} ${cell}`);
      const [row = '', column = ''] = cell.split('/');
      expect(
        table.rows.some(([key]) => String(key) === row),
        `${table.id} has the row ${row}`,
      ).toBe(true);
      expect(Object.keys(table.columns), table.id).toContain(column);
    }
  });
  test.each(TABLES)('$id is looked up by somebody', (table) => expect(code).toContain(`table/${table.id}.ts`));
  test.each(TABLES)('$id has as many cells in each row as it has columns', (table) => {
    for (const row of table.rows) expect(row.length - 1, String(row[0])).toBe(Object.keys(table.columns).length);
  });
});
