import type { Doubts } from './doubts.ts';
import { stripBrackets, type Table } from './find-table.ts';
import { type Heading, toHeading } from './name-column.ts';
import { findUnit, type Unit } from './parse-unit.ts';
import type { Preamble } from './read-preamble.ts';
import type { RowReader } from './row-reader.ts';
import { TIME_UNIT_KEY } from './stated-steps.ts';

export interface Headings {
  readonly headings: readonly Heading[];
  /** The unit row's cells per column, '' where there is none. */
  readonly unitCells: readonly string[];
}

/** The cells of the name row, without trailing blank ones. */
export function readNames(rows: RowReader, table: Table): string[] {
  const line = table.headerLines.at(-1);
  return line === undefined ? [] : readCells(rows, line);
}

export function readCells(rows: RowReader, line: number): string[] {
  const cells: string[] = [];
  let count = rows.read(line, cells);
  while (count > 0 && cells[count - 1] === '') count--;
  return cells.slice(0, count).map((cell) => cell.replace(/^#\s*/, ''));
}

/** `named` is the number of names that belong to columns (a start and an increment beside them do not). */
export function readHeadings(rows: RowReader, table: Table, named: number, preamble: Preamble, doubts: Doubts): Headings {
  const { width } = table;
  let names = readNames(rows, table).slice(0, named);
  if (names.length > 0 && names.length !== width) {
    const answer = doubts.ask({
      code: 'names',
      question: `The heading has ${names.length} names and the rows have ${width} cells: do the names begin at the first cell, or end at the last one?`,
      answers: ['from-left', 'from-right'],
      columns: Array.from({ length: width }, (_, i) => i),
    });
    const gap = Math.max(0, width - names.length);
    if (answer === 'from-right') names = [...Array<string>(gap).fill(''), ...names].slice(-width);
    else names = names.slice(0, width);
  }
  for (const line of [...table.headerLines].slice(0, -1).reverse()) {
    const groups = spreadGroups(readCells(rows, line), names);
    names = names.map((name, i) => [groups[i] ?? '', name].filter((text) => text !== '').join(' '));
  }
  const unitCells = table.unitLine === null ? [] : readCells(rows, table.unitLine).map(stripBrackets);
  const headings: Heading[] = [];
  for (let i = 0; i < width; i++) {
    const name = names[i] ?? '';
    headings.push(name === '' ? { name: `column ${i + 1}`, unit: null } : toHeading(name, names));
  }
  nameBySource(headings, table, preamble);
  return { headings, unitCells: headings.map((_, i) => (i < width ? (unitCells[i] ?? '') : '')) };
}

/** A group's name holds for the blank cells behind it, as long as the names below go on being told apart by it. */
function spreadGroups(groups: readonly string[], names: readonly string[]): string[] {
  if (groups.every((group) => group !== '')) return [...groups];
  const spread: string[] = [];
  let group = '';
  let inGroup = new Set<string>();
  for (const [i, name] of names.entries()) {
    if ((groups[i] ?? '') !== '') {
      group = groups[i]!;
      inGroup = new Set();
    }
    // The same name twice under one group: the second one does not belong to it.
    spread.push(inGroup.has(name) ? '' : group);
    inGroup.add(name);
  }
  return spread;
}

/** One curve without a heading, whose channel the preamble names. */
function nameBySource(headings: Heading[], table: Table, preamble: Preamble): void {
  if (table.headerLines.length > 0 || headings.length !== 2) return;
  const source = preamble.find(/^(source|channel|trace|signal)$/i)?.value ?? '';
  if (source !== '' && !source.includes(',')) headings[1] = { name: source, unit: null };
}

const VALUE_UNIT_KEY = /^(?:vertical|y|value|data)(?:[ _-]?axis)?[ _-]?units?$/i;
const BARE_UNIT_KEY = /^(?:temperature[ _-]?)?units?$/i;

/** What the preamble says of the unit of each column: of the first one as the axis of time, of the others by their place. */
export function findPreambleUnits(preamble: Preamble, width: number, isMatrix: boolean): (Unit | null)[] {
  const units: (Unit | null)[] = Array<Unit | null>(width).fill(null);
  const bare = preamble.find(BARE_UNIT_KEY)?.value ?? '';
  if (isMatrix || width === 1) return units.fill(findUnit(stripBrackets(bare)));
  units[0] = findUnit(preamble.find(TIME_UNIT_KEY)?.value ?? '');
  const stated = preamble.find(VALUE_UNIT_KEY)?.value ?? '';
  const each = stated.split(/\s*,\s*/);
  if (each.length === 1 && width > 2 && stated !== '' && saidForEach(preamble, width - 1))
    return units.map((unit, i) => (i === 0 ? unit : findUnit(stated)));
  if (each.length === width - 1) for (const [i, text] of each.entries()) units[i + 1] = findUnit(text);
  if (stated === '' && width === 2 && bare !== '') units[1] = findUnit(stripBrackets(bare));
  return units;
}

/** Whether the unit of the values is stated once for each of them. */
function saidForEach(preamble: Preamble, values: number): boolean {
  const entry = Object.entries(preamble.toRecord()).find(([key]) => VALUE_UNIT_KEY.test(key));
  return entry !== undefined && entry[1].split(', ').length === values;
}
