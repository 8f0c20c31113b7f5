import type { Attachment, ExhibitOf } from '../../core/evidence/case.ts';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { type Kind, readingsOfUnit, ZERO_CELSIUS_K } from '../../core/quantity/unit.ts';
import type { InstrumentFile } from '../../importer/instrument-file.ts';
import { toTimes } from '../../importer/to-times.ts';
import type { CaseSource } from '../case-source.ts';
import { readKeptFile } from '../kept-table.ts';

/** One column of a soak as numbers: kelvin for temperatures, SI for the rest. */
export interface SoakChannel {
  readonly column: string;
  readonly place: string | null;
  readonly role: string | null;
  readonly values: Float64Array;
  /** One step of the display, in the same unit. */
  readonly lastDigit: number;
}

/** A soak row by row; seconds from its first row. */
export interface SoakLog {
  readonly times: Float64Array;
  readonly channels: readonly SoakChannel[];
}

type Soak = ExhibitOf<'soak'>;
type TableColumn = Soak['table']['columns'][number];

/** The whole log of a soak, from its file or as typed. Refuses what leaves a question open: nothing is guessed. */
export async function readSoakLog(soak: Soak, files: readonly Attachment[], source: CaseSource): Promise<SoakLog | Refusal> {
  const attached = files.find(({ id }) => id === soak.table.file);
  const bytes = attached === undefined ? null : await source.readFile(attached.path);
  return isRefusal(bytes) ? bytes : toSoakLog(soak, bytes, attached?.settled ?? {});
}

/** The same from the bytes of its file, or as typed where there is none. */
export function toSoakLog(soak: Soak, bytes: Uint8Array | null, answers: Readonly<Record<string, string>>): SoakLog | Refusal {
  const file = bytes === null ? null : readKeptFile(bytes, { settled: answers });
  const log = isRefusal(file) ? file : settled(file === null ? typedLog(soak) : fileLog(soak, file));
  return isRefusal(log) ? { ...log, place: `/exhibits/${soak.id}/table${log.place}` } : log;
}

/** A log whose times go on from row to row. */
function settled(log: SoakLog | Refusal): SoakLog | Refusal {
  if (isRefusal(log)) return log;
  const { times } = log;
  for (let row = 1; row < times.length; row += 1) {
    const [before, now] = [times[row - 1]!, times[row]!];
    const rows = `rows ${row} and ${row + 1}`;
    if (now < before) return refuse('soak-runs-backwards', `${rows}: ${before} s, then ${now} s`, 'times that go on from row to row');
    if (now === before) return refuse('soak-time-twice', `${rows}: ${now} s twice`, 'a time of its own for every row');
    if (!Number.isFinite(now)) return refuse('soak-untimed-row', `row ${row + 1}`, 'a time for every row');
  }
  const first = times[0] ?? 0;
  return { ...log, times: times.map((one) => one - first) };
}

function fileLog(soak: Soak, file: InstrumentFile): SoakLog | Refusal {
  const [open] = file.doubts.filter((doubt) => touches(doubt, soak, file));
  if (open !== undefined) return refuse('file-in-doubt', open.question, `an answer to "${open.code}": ${open.answers.join(', ')}`);
  const times = toTimes(file);
  if (times === null) return refuse('soak-no-time', 'a table without times', 'a log with the time of every row');
  const channels: SoakChannel[] = [];
  for (const column of soak.table.columns) {
    if (column.role === undefined && column.of === undefined) continue;
    const from = column.from ?? column.id;
    const own = typeof from === 'number' ? file.columns[from - 1] : file.columns.find(({ name }) => name === from);
    if (own === undefined)
      return refuse('column-missing', String(from), `one of ${file.columns.map(({ name }) => name).join(', ')}`, {
        place: `/columns/${column.id}`,
      });
    const channel = toChannel(column, own.values, own.unit);
    if (isRefusal(channel)) return channel;
    channels.push(channel);
  }
  return { times, channels };
}

/** An open question about the whole file, about its times, or about a column that the soak takes. */
function touches({ code, columns }: InstrumentFile['doubts'][number], soak: Soak, file: InstrumentFile): boolean {
  if (columns.length === 0 || code.startsWith('time') || file.timeBase === null) return true;
  const taken = new Set(soak.table.columns.map(({ id, from }) => from ?? id));
  return columns.some((index) => taken.has(index + 1) || taken.has(file.columns[index]?.name ?? ''));
}

const KIND_OF_ROLE: Readonly<Record<string, Kind>> = { outputCurrent: 'current', outputVoltage: 'voltage', inputPower: 'power' };

function toChannel(column: TableColumn, values: ArrayLike<number>, stated: string | null): SoakChannel | Refusal {
  const text = column.unit ?? stated ?? '';
  const kind = KIND_OF_ROLE[column.role ?? ''] ?? 'temperature';
  const place = `/columns/${column.id}/unit`;
  const unit = readingsOfUnit(text).find((reading) => reading.unit.kind === kind);
  if (unit === undefined) return refuse('unit-not-stated', text === '' ? 'no unit' : text, `a unit of ${kind}`, { place });
  if (stated !== null && column.unit !== undefined && !readingsOfUnit(stated).some((reading) => reading.unit.symbol === unit.unit.symbol))
    return refuse('units-differ', column.unit, `${stated}, as the file states`, { place });
  const { factor, offset } = unit.unit;
  const scale = factor * unit.prefix;
  return {
    column: column.id,
    place: column.of ?? null,
    role: column.role ?? null,
    values: Float64Array.from({ length: values.length }, (_, row) => (values[row]! + offset) * scale),
    lastDigit: lastDigitOf(values) * scale,
  };
}

const LOOKED_AT = 1000; // rows tell how many decimals a display has
const MOST_DECIMALS = 6; // more come from arithmetic, not from a display

function lastDigitOf(values: ArrayLike<number>): number {
  let decimals = 0;
  for (let row = 0; row < Math.min(values.length, LOOKED_AT); row += 1)
    decimals = Math.max(decimals, String(values[row]).split('e')[0]!.split('.')[1]?.length ?? 0);
  return Number(`1e-${Math.min(decimals, MOST_DECIMALS)}`);
}

/** Rows typed by hand: the column without a role whose cells are times tells the time. */
function typedLog(soak: Soak): SoakLog | Refusal {
  const rows = (soak.table.rows ?? []).filter(({ struck }) => struck === undefined);
  const cellsOf = (index: number, unit: string | undefined, kind: Kind): Float64Array =>
    Float64Array.from(rows, ({ cells }) => {
      const cell = cells[index];
      if (typeof cell !== 'string') return Number.NaN;
      const bare = /^[\s\d.,+-]+$/.test(cell);
      const read = parseQuantity(bare ? `${cell} ${unit ?? ''}` : cell, kind);
      return isRefusal(read) ? Number.NaN : read.value;
    });
  const timeAt = soak.table.columns.findIndex(
    (column, index) => column.role === undefined && column.of === undefined && cellsOf(index, column.unit, 'time').some(Number.isFinite),
  );
  if (timeAt === -1) return refuse('soak-no-time', 'a table without times', 'a column of times beside the temperatures');
  const channels = soak.table.columns.flatMap((column, index): SoakChannel[] => {
    if (column.role === undefined && column.of === undefined) return [];
    const kind = KIND_OF_ROLE[column.role ?? ''] ?? 'temperature';
    const values = cellsOf(index, column.unit, kind);
    const base = kind === 'temperature' ? ZERO_CELSIUS_K : 0;
    const lastDigit = lastDigitOf(Array.from(values, (value) => Number((value - base).toFixed(MOST_DECIMALS))));
    return [{ column: column.id, place: column.of ?? null, role: column.role ?? null, values, lastDigit }];
  });
  return { times: cellsOf(timeAt, soak.table.columns[timeAt]!.unit, 'time'), channels };
}
