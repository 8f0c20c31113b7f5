import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { readInstrumentFile, type Settled } from '../../src/importer/read-instrument-file.ts';
import { toTimes } from '../../src/importer/to-times.ts';
import type { Layout } from './layout-grammar.ts';

/** `asked`: a doubt or a refusal. `wrong`: something usable differs from what the file holds. */
export type Judgement = { readonly outcome: 'understood' | 'asked' | 'wrong'; readonly why: string };

const TIME_TOLERANCE = 1e-9; // relative; adding start and steps rounds

/** With answers, what the person said counts as told: units and times the file is silent about are not held against it. */
export function judgeReading(layout: Layout, settled: Settled = {}): Judgement {
  const isAnswered = Object.keys(settled).length > 0;
  const file = readInstrumentFile(layout.bytes, settled);
  if (isRefusal(file)) return { outcome: 'asked', why: `refused: ${file.code} ${file.got}` };
  const asked = file.doubts.map((doubt) => doubt.code).join(' ');
  const wrong = (why: string): Judgement => ({ outcome: 'wrong', why: `${why} (doubts: ${asked})` });
  const usable = file.columns.filter((column) => column.usable);
  if (usable.length > 0 && file.columns.length !== layout.columns.length) return wrong(`${file.columns.length} columns`);
  if (usable.length > 0 && file.rows !== layout.rows) return wrong(`${file.rows} rows instead of ${layout.rows}`);
  for (const [i, column] of file.columns.entries()) {
    if (!column.usable) continue;
    const truth = layout.columns[i]!;
    if (column.name !== truth.name) return wrong(`column ${i} is called ${column.name}, not ${truth.name}`);
    if (column.kind !== truth.kind && !(column.kind === 'number' && truth.kind === 'time' && file.timeBase === null))
      return wrong(`${column.name} is ${column.kind}`);
    if (column.unit !== truth.unit && !(isAnswered && truth.unit === null))
      return wrong(`${column.name} has unit ${column.unit}, not ${truth.unit}`);
    for (let row = 0; row < layout.rows; row++) {
      if (truth.kind === 'text') {
        if (column.texts![row] !== truth.texts![row]) return wrong(`${column.name} row ${row} is "${column.texts![row]}"`);
      } else if (!Object.is(column.values[row], truth.values[row]))
        return wrong(`${column.name} row ${row} is ${column.values[row]}, not ${truth.values[row]}`);
    }
    if (truth.kind !== 'text' && JSON.stringify(sorted(column.missing.reasons)) !== JSON.stringify(sorted(truth.reasons))) {
      return wrong(`${column.name} misses ${JSON.stringify(column.missing)}`);
    }
  }
  const times = toTimes(file);
  if (times !== null && file.timeBase !== null) {
    const touched =
      file.timeBase.kind === 'column'
        ? file.timeBase.column
        : file.timeBase.kind === 'parts'
          ? file.timeBase.seconds
          : file.timeBase.sequence;
    if (touched === null || file.columns[touched]!.usable) {
      if (layout.times === null && !isAnswered) return wrong('a time base that the file does not tell');
      for (const [row, time] of (layout.times ?? []).entries()) {
        if (!(Math.abs(times[row]! - times[0]! - time) <= TIME_TOLERANCE * Math.max(1, Math.abs(times[row]!), time)))
          return wrong(`time of row ${row} is ${times[row]! - times[0]!}`);
      }
      if (
        file.timeStepS !== null &&
        !(isAnswered && layout.times === null) &&
        (layout.stepS === null || Math.abs(file.timeStepS - layout.stepS) > layout.stepS * TIME_TOLERANCE)
      )
        return wrong(`time step ${file.timeStepS}`);
    }
  }
  if (usable.some((column) => column.kind === 'number') && file.decimalMark !== layout.decimalMark && asked === '') {
    const isShown = layout.columns.some((column) => column.values.some((value) => !Number.isInteger(value) && !Number.isNaN(value)));
    if (isShown) return wrong(`decimal mark ${file.decimalMark}`);
  }
  if (file.doubts.length > 0) return { outcome: 'asked', why: asked };
  if (layout.times !== null && file.timeBase === null) return { outcome: 'asked', why: 'no time base, and not asked' };
  return { outcome: 'understood', why: '' };
}

function sorted(reasons: Readonly<Record<string, number>>): [string, number][] {
  return Object.entries(reasons).sort(([a], [b]) => (a < b ? -1 : 1));
}
