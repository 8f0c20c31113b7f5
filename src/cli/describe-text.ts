import type { Description } from '../importer/describe.ts';

/** How a file was understood, for a person: what was found, one line a column, and every open question with its possible answers. */
export function describeText(file: Description): string {
  const lines = [
    `encoding ${file.encoding}, separator ${file.separator}, decimal ${file.decimalMark}, lines end in ${file.lineEnd}`,
    `${file.shape === 'matrix' ? 'a matrix' : 'columns'}, ${file.rows} rows from line ${file.firstDataRow}; header ${linesOf(file.headerRows)}, units ${file.unitRow === null ? 'not in a row of their own' : `in line ${file.unitRow}`}`,
    file.timeStepS === undefined ? 'no even time step' : `time step ${file.timeStepS} s`,
    ...Object.entries(file.skippedRows).map(([reason, count]) => `left out: ${count} × ${reason}`),
  ];
  const facts = Object.entries(file.preamble);
  if (facts.length > 0) lines.push('', 'said before the table:', ...facts.map(([key, value]) => `  ${key} = ${value}`));
  lines.push('', ...table(file));
  if (file.doubts.length === 0) lines.push('', 'nothing left open');
  else {
    lines.push('', 'asked, because the file does not say:');
    let said = '';
    for (const { code, question, answers } of file.doubts) {
      const choice = answers.join(' | ');
      lines.push(`  ${code}: ${question}`, `    answers: ${choice === said ? 'as above' : choice}`);
      said = choice;
    }
    lines.push('', 'answer with --settle CODE=ANSWER here, or with "settled" beside the file in the case');
  }
  return `${lines.join('\n')}\n`;
}

function linesOf(rows: readonly number[]): string {
  return rows.length === 0 ? 'none' : `in line ${rows.join(', ')}`;
}

const HEAD = ['column', 'unit', 'count', 'missing', 'first', 'last', 'min', 'max', 'mean', 'usable'] as const;
const MOST_SHOWN = 40; // columns of a matrix on a terminal; --json has all
const DIGITS = 6;

function table(file: Description): string[] {
  const shown = file.columns.slice(0, MOST_SHOWN);
  const cells = [
    [...HEAD],
    ...shown.map((column) => [
      column.name,
      column.unit ?? '?',
      String(column.count),
      missingText(column.missing),
      ...[column.first, column.last, column.min, column.max, column.mean].map((value) => cellText(value, column.kind)),
      column.usable ? 'yes' : 'no',
    ]),
  ];
  const widths = HEAD.map((_, index) => Math.max(...cells.map((row) => (row[index] ?? '').length)));
  const rows = cells.map((row) =>
    row
      .map((cell, index) => (index < 2 ? cell.padEnd(widths[index]!) : cell.padStart(widths[index]!)))
      .join('  ')
      .trimEnd(),
  );
  return shown.length < file.columns.length ? [...rows, `... and ${file.columns.length - shown.length} columns more`] : rows;
}

function missingText(missing: Description['columns'][number]['missing']): string {
  if (missing.count === 0) return '0';
  return `${missing.count} (${Object.entries(missing.reasons)
    .map(([reason, count]) => `${count} ${reason}`)
    .join(', ')})`;
}

const DATED_FROM_S = 86_400 * 366; // seconds since 1970 beyond the first year: a date, not a duration

function cellText(value: number | string | null, kind: Description['columns'][number]['kind']): string {
  if (value === null) return '';
  if (kind === 'time' && typeof value === 'number' && value > DATED_FROM_S)
    return new Date(value * 1000)
      .toISOString()
      .replace('T', ' ')
      .replace(/(\.000)?Z$/, '');
  return typeof value === 'number' ? String(Number(value.toPrecision(DIGITS))) : value;
}
