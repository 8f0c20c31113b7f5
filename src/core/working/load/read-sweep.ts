import type { ExhibitOf } from '../../evidence/case.ts';
import { ROLES, type Role } from '../../evidence/instrument.ts';
import { derive } from '../../formula/derive.ts';
import { voltageAtSocket } from '../../formula/load/voltage-at-socket.ts';
import { parseNumber } from '../../quantity/parse-number.ts';
import { parseQuantity, type Quantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { powerOfTen, shiftDecimal } from '../../quantity/shift-decimal.ts';
import { readingsOfUnit, SI_UNIT } from '../../quantity/unit.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { conditionsOf, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';

export interface SweepRow {
  readonly id: string;
  readonly current: Derived;
  /** At the place the exhibit says, leads taken out. */
  readonly voltage: Derived;
  readonly inputPower: Derived | null;
}

export interface Sweep {
  readonly exhibit: ExhibitOf<'sweep'>;
  readonly port: string;
  readonly level: string;
  /** In order of current, lowest first. */
  readonly rows: readonly SweepRow[];
  /** As the load was raised (a downward sweep turned round), up to where the unit takes the current back by itself. */
  readonly rising: readonly SweepRow[];
  /** The unit took the current back by itself behind the last rising row. */
  readonly gaveWay: boolean;
  readonly mains: Quantity | null;
  readonly frequency: Quantity | null;
  /** Cells that were kept as typed and left out, and columns of a file that cannot be used. */
  readonly leftOut: readonly {
    readonly field: string;
    readonly because: 'cellNotRead' | 'fileMissing' | 'columnMissing' | 'columnInDoubt' | 'unitNotStated';
  }[];
}

type LeftOut = Sweep['leftOut'][number];

interface Cell {
  readonly value: number;
  readonly lastDigit: number;
  /** Stated in the cell itself: "4.85 V ± 0.6 V". */
  readonly u?: number | null;
  readonly side?: 'below' | 'above';
}

/** One column as numbers in SI with their last digit; null where there is none. */
type Cells = { readonly field: string; readonly cell: Cell | null }[];

export function readSweep(bench: Bench, exhibit: ExhibitOf<'sweep'>): Sweep {
  const leftOut: LeftOut[] = [];
  const columns = new Map<Role, Cells>();
  for (const role of ['outputCurrent', 'outputVoltage', 'inputPower'] as const) {
    const cells = exhibit.table.file === undefined ? typedCells(exhibit, role, leftOut) : fileCells(bench, exhibit, role, leftOut);
    if (cells !== null) columns.set(role, cells);
  }
  const under = conditionsOf(bench, exhibit);
  const quantityOf = (text: string | null, kind: 'voltage' | 'frequency'): Quantity | null => {
    const read = text === null ? null : parseQuantity(text, kind);
    return read === null || isRefusal(read) ? null : read;
  };
  const currents = columns.get('outputCurrent') ?? [];
  const voltages = columns.get('outputVoltage') ?? [];
  const powers = columns.get('inputPower');
  const rows = currents.flatMap(({ field, cell }, index): SweepRow[] => {
    const volts = voltages[index];
    if (cell === null || volts === undefined || volts.cell === null) return [];
    const current = derived(bench, exhibit, 'outputCurrent', field, cell, 'I');
    const raw = derived(bench, exhibit, 'outputVoltage', volts.field, volts.cell, 'V');
    const power = powers?.[index];
    return [
      {
        id: String(index + 1),
        current,
        voltage: withoutLeads(bench, exhibit, raw, current, index),
        inputPower:
          power === undefined || power.cell === null ? null : derived(bench, exhibit, 'inputPower', power.field, power.cell, 'P_i'),
      },
    ];
  });
  const rising = risingPart(exhibit.order === 'down' ? rows.toReversed() : rows);
  return {
    exhibit,
    port: exhibit.port,
    level: levelOfSweep(bench, exhibit) ?? NOT_STATED,
    rows: rows.toSorted((a, b) => a.current.value - b.current.value),
    rising,
    gaveWay: rising.length < rows.length,
    mains: quantityOf(findCondition(under.mains), 'voltage'),
    frequency: quantityOf(findCondition(under.frequency), 'frequency'),
    leftOut,
  };
}

const NOT_STATED = 'not stated'; // no id of a level can hold a space

/** The level a sweep is of. A port with several levels does not tell which one was on: then the sweep names it, or nobody knows. */
export function levelOfSweep(bench: Bench, exhibit: ExhibitOf<'sweep'>): string | null {
  const levels = bench.ports.get(exhibit.port)?.levels ?? [];
  return exhibit.level ?? (levels.length === 1 ? levels[0]!.id : null);
}

const TAKEN_BACK = 0.02; // share by which a current must fall below the largest so far to count as taken back by the unit

/** Rows until the current falls back although more was asked for: what follows is the unit's own limiting, not its output at a load. */
function risingPart(rows: readonly SweepRow[]): SweepRow[] {
  let most = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [index, { current, voltage }] of rows.entries()) {
    if (current.value < most * (1 - TAKEN_BACK) && voltage.value < least) return rows.slice(0, index);
    most = Math.max(most, current.value);
    least = Math.min(least, voltage.value);
  }
  return [...rows];
}

function derived(bench: Bench, exhibit: ExhibitOf<'sweep'>, role: Role, field: string, cell: Cell, symbol: string): Derived {
  const kind = ROLES[role];
  const side = cell.side === undefined ? {} : { side: cell.side };
  const quantity: Quantity = {
    text: '',
    kind,
    value: cell.value,
    unit: SI_UNIT[kind],
    u: cell.u ?? null,
    lastDigit: cell.lastDigit,
    ...side,
  };
  return deriveReading(bench, quantity, { field, role, day: exhibit.day, symbol });
}

/** The drop in the leads of the day is added back where the exhibit reads at the socket through them. */
function withoutLeads(bench: Bench, exhibit: ExhibitOf<'sweep'>, voltage: Derived, current: Derived, index: number): Derived {
  const day = exhibit.day === undefined ? undefined : bench.days.get(exhibit.day);
  const leads = day?.leads?.find((lead) => lead.port === undefined || lead.port === exhibit.port);
  const text = leads === undefined ? null : findRead(leads.resistance);
  const quantity = text === null ? null : parseQuantity(text, 'resistance');
  if (leads === undefined || quantity === null || isRefusal(quantity) || quantity.value === 0) return voltage;
  const resistance = deriveReading(bench, quantity, {
    field: `/days/${day?.id ?? ''}/leads/${leads.id}/resistance`,
    role: 'resistance',
    day: day?.id,
    symbol: 'R',
  });
  return derive(voltageAtSocket, { voltage, current, resistance }, `load/${exhibit.id}/${index + 1}/voltage-at-socket`);
}

function typedCells(exhibit: ExhibitOf<'sweep'>, role: Role, leftOut: LeftOut[]): Cells | null {
  const index = exhibit.table.columns.findIndex((column) => column.role === role);
  const column = exhibit.table.columns[index];
  if (column === undefined) return null;
  return (exhibit.table.rows ?? []).map((row) => {
    const field = `/exhibits/${exhibit.id}/table/rows/${row.id}/${column.id}`;
    const text = row.struck === undefined ? row.cells[index] : undefined;
    if (typeof text !== 'string' || text.trim() === '') return { field, cell: null };
    const number = parseNumber(text);
    const quantity = isRefusal(number) ? parseQuantity(text, ROLES[role]) : parseQuantity(`${text} ${column.unit ?? ''}`, ROLES[role]);
    if (isRefusal(quantity)) {
      leftOut.push({ field, because: 'cellNotRead' });
      return { field, cell: null };
    }
    return {
      field,
      cell: {
        value: quantity.value,
        lastDigit: quantity.lastDigit,
        u: quantity.u,
        ...(quantity.side === undefined ? {} : { side: quantity.side }),
      },
    };
  });
}

function fileCells(bench: Bench, exhibit: ExhibitOf<'sweep'>, role: Role, leftOut: LeftOut[]): Cells | null {
  const column = exhibit.table.columns.find((one) => one.role === role);
  if (column === undefined) return null;
  const field = `/exhibits/${exhibit.id}/table/columns/${column.id}`;
  const file = exhibit.table.file === undefined ? undefined : bench.files.get(exhibit.table.file);
  const table = file === undefined ? undefined : bench.tables.get(file.sha256);
  const refuse = (because: LeftOut['because']): null => {
    leftOut.push({ field, because });
    return null;
  };
  if (table === undefined) return refuse('fileMissing');
  const from = column.from ?? column.id;
  const own = typeof from === 'number' ? table.columns[from - 1] : table.columns.find(({ name }) => name === from);
  if (own === undefined) return refuse('columnMissing');
  if (own.doubts.length > 0) return refuse('columnInDoubt');
  const unit = readingsOfUnit(column.unit ?? own.unit ?? '').find((reading) => reading.unit.kind === ROLES[role]);
  if (unit === undefined) return refuse('unitNotStated');
  const scale = unit.unit.factor * unit.prefix;
  const step = lastDigitOf(own.values);
  return Array.from({ length: table.rows }, (_, row) => {
    const value = own.values[row] ?? Number.NaN;
    return {
      field: `${field}/${row + 1}`,
      cell: Number.isFinite(value) ? { value: scaled(value, scale), lastDigit: scaled(step, scale) } : null,
    };
  });
}

function scaled(value: number, scale: number): number {
  const exponent = powerOfTen(scale);
  return exponent === null ? value * scale : shiftDecimal(value, exponent);
}

/** The last decimal that any value of a column uses: what one digit of the display was worth. */
function lastDigitOf(values: ArrayLike<number>): number {
  let decimals = 0;
  for (let row = 0; row < values.length; row += 1) {
    const [mantissa = '', exponent = '0'] = String(values[row]).split('e');
    decimals = Math.max(decimals, (mantissa.split('.')[1]?.length ?? 0) - Number(exponent));
  }
  return shiftDecimal(1, -decimals);
}
