/** A grammar of exports: each sentence of it is a file together with what the file holds. Names and numbers are invented. */

export interface TrueColumn {
  readonly name: string;
  /** null: the file does not state it. */
  readonly unit: string | null;
  /** NaN is missing. */
  readonly values: readonly number[];
  readonly reasons: Readonly<Record<string, number>>;
  readonly kind: 'number' | 'time' | 'text';
  readonly texts?: readonly string[];
}

export interface Layout {
  readonly label: string;
  readonly bytes: Uint8Array;
  readonly columns: readonly TrueColumn[];
  readonly rows: number;
  /** Seconds from the first row; null when the file does not tell. */
  readonly times: readonly number[] | null;
  readonly stepS: number | null;
  readonly decimalMark: 'point' | 'comma';
  /** Whether a careful reader needs to ask nothing. */
  readonly saysEverything: boolean;
}

/** A small seeded generator (a 32-bit mixing counter), so that every run makes the same files. */
export class Dice {
  private state: number;
  constructor(seed: number) {
    this.state = seed >>> 0;
  }
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  }
  below(n: number): number {
    return Math.floor(this.next() * n);
  }
  pick<T>(items: readonly T[]): T {
    return items[this.below(items.length)]!;
  }
  chance(p: number): boolean {
    return this.next() < p;
  }
}

const QUANTITIES = [
  { name: 'Voltage', unit: 'V', word: 'Volt', scale: 5, stem: 'V_out' },
  { name: 'Current', unit: 'A', word: 'Ampere', scale: 2, stem: 'I_load' },
  { name: 'Current', unit: 'mA', word: 'mA', scale: 800, stem: 'I_in' },
  { name: 'Ripple', unit: 'mV', word: 'Millivolts', scale: 120, stem: 'V_ripple' },
  { name: 'Power', unit: 'W', word: 'Watt', scale: 20, stem: 'P_in' },
  { name: 'Temperature', unit: '°C', word: 'Celsius', scale: 60, stem: 'temp_case' },
  { name: 'Frequency', unit: 'Hz', word: 'Hertz', scale: 50, stem: 'freq' },
] as const;

const MISSING_MARKS: readonly (readonly [mark: string, reason: string])[] = [
  ['', 'blank'],
  ['OL', 'overload'],
  ['-OL', 'overload'],
  ['OVLD', 'overload'],
  ['9.9E37', 'overload'],
  ['+9.91E+37', 'not-a-number-mark'],
  ['inf', 'overload'],
  ['NaN', 'not-a-number-mark'],
  ['----', 'no-reading-mark'],
];

type UnitPlace = 'round' | 'square' | 'row-round' | 'row-word' | 'comma' | 'slash' | 'suffix' | 'cell' | 'none';
type TimeForm =
  | 'seconds'
  | 'milliseconds'
  | 'microseconds'
  | 'uneven'
  | 'interval'
  | 'rate'
  | 'beside'
  | 'beside-late'
  | 'clock'
  | 'clock-half'
  | 'iso'
  | 'day-month'
  | 'day-13'
  | 'two-columns'
  | 'duration'
  | 'days'
  | 'none'
  | 'still'
  | 'inf'
  | 'no-unit';
const CLOCKS: readonly TimeForm[] = ['clock', 'clock-half', 'iso', 'day-month', 'day-13', 'two-columns', 'duration', 'days'];
const TOLD_OUTSIDE: readonly TimeForm[] = ['interval', 'rate', 'beside', 'beside-late', 'inf', 'none'];
const ASKED: readonly TimeForm[] = ['beside', 'beside-late', 'day-month', 'none', 'still', 'inf', 'no-unit'];

export interface Choice {
  separator: ',' | ';' | '\t';
  comma: boolean;
  preamble: 'none' | 'cells' | 'equals' | 'comments' | 'sections' | 'title' | 'hint' | 'beside';
  unit: UnitPlace;
  time: TimeForm;
  encoding: 'utf-8' | 'utf-8-bom' | 'utf-16le' | 'utf-16be' | 'utf-16le-bare' | 'latin-1';
  lineEnd: '\n' | '\r\n' | '\r';
  missing: number;
  trailing: boolean;
  quoted: boolean;
  repeated: boolean;
  summary: boolean;
  textColumn: boolean;
  emptyColumn: boolean;
  closed: boolean;
  scientific: boolean;
  columns: number;
  rows: number;
  decimals: number;
  blankLine: boolean;
  /** Decimal commas between commas, without quotes: nobody can read it without asking. */
  bareCommas: boolean;
}

export function rollChoice(dice: Dice): Choice {
  const separator = dice.pick([',', ';', '\t'] as const);
  return {
    separator,
    comma: dice.chance(0.35),
    preamble: dice.pick(['none', 'none', 'cells', 'equals', 'comments', 'sections', 'title', 'hint', 'beside'] as const),
    unit: dice.pick(['round', 'square', 'row-round', 'row-word', 'comma', 'slash', 'suffix', 'cell', 'none'] as const),
    time: dice.pick([
      'seconds',
      'milliseconds',
      'microseconds',
      'uneven',
      'interval',
      'rate',
      'beside',
      'beside-late',
      ...CLOCKS,
      'none',
      'still',
      'inf',
      'no-unit',
    ] as const),
    encoding: dice.pick(['utf-8', 'utf-8', 'utf-8-bom', 'utf-16le', 'utf-16be', 'utf-16le-bare', 'latin-1'] as const),
    lineEnd: dice.pick(['\n', '\r\n', '\r'] as const),
    missing: dice.below(MISSING_MARKS.length + 4) - 4,
    trailing: dice.chance(0.25),
    quoted: dice.chance(0.2),
    repeated: dice.chance(0.1),
    summary: dice.chance(0.1),
    textColumn: dice.chance(0.2),
    emptyColumn: dice.chance(0.1),
    closed: dice.chance(0.8),
    scientific: dice.chance(0.25),
    columns: 1 + dice.below(4),
    rows: 3 + dice.below(40),
    decimals: 1 + dice.below(6),
    blankLine: dice.chance(0.15),
    bareCommas: dice.chance(0.3),
  };
}

/** Digits with the file's mark. */
function write(value: number, choice: Choice, decimals = choice.decimals): string {
  const text = choice.scientific ? value.toExponential(decimals) : value.toFixed(decimals);
  return choice.comma ? text.replace('.', ',') : text;
}

function readBack(text: string): number {
  return Number(text.replace(',', '.'));
}

function pad(n: number): string {
  return String(n).padStart(2, '0');
}

function clockText(seconds: number): string {
  const s = Math.round(seconds) % 86400;
  return `${pad(Math.floor(s / 3600))}:${pad(Math.floor(s / 60) % 60)}:${pad(s % 60)}`;
}

function halfDayText(seconds: number, words: readonly [string, string]): string {
  const s = Math.round(seconds) % 86400;
  const hour = Math.floor(s / 3600);
  return `${hour % 12 === 0 ? 12 : hour % 12}:${pad(Math.floor(s / 60) % 60)}:${pad(s % 60)} ${hour < 12 ? words[0] : words[1]}`;
}

export function makeLayout(dice: Dice, choice: Choice): Layout {
  const { rows } = choice;
  const columns: TrueColumn[] = [];
  const cells: string[][] = [];
  const headings: string[] = [];
  const units: string[] = [];
  const add = (heading: string, unit: string, texts: string[], column: TrueColumn) => {
    headings.push(heading);
    units.push(unit);
    cells.push(texts);
    columns.push(column);
  };
  const inRow = choice.unit === 'row-round' || choice.unit === 'row-word';
  const rowUnit = (symbol: string, word: string) => (choice.unit === 'row-round' ? `(${symbol})` : choice.unit === 'row-word' ? word : '');
  let times: number[] | null = null;
  let stepS: number | null = null;
  const preambleLines: [string, string][] = [];
  let besides: [string, string][] = [];

  const timeUnit = { seconds: 's', uneven: 's', still: 's', milliseconds: 'ms', microseconds: 'µs' }[choice.time as string];
  if (timeUnit !== undefined) {
    const base = dice.pick([0.1, 0.25, 0.5, 1, 2, 20]);
    const start = dice.pick([0, 0, -2, 10]);
    const numbers = Array.from({ length: rows }, (_, i) => {
      if (choice.time === 'still') return 1;
      if (choice.time === 'uneven') return start + base * (i + (i * i) / 10 + (i % 3) / 2);
      return start + base * i;
    });
    const texts = numbers.map((n) => write(n, choice, choice.scientific ? 9 : 4));
    const values = texts.map(readBack);
    const scale = { s: 1, ms: 1e3, µs: 1e6 }[timeUnit]!;
    times = choice.time === 'still' ? null : values.map((v) => (v - values[0]!) / scale);
    stepS = choice.time === 'uneven' || choice.time === 'still' ? null : base / scale;
    const heading = inRow ? 'Time' : choice.unit === 'square' ? `Time [${timeUnit}]` : `Time (${timeUnit})`;
    add(heading, rowUnit(timeUnit, { s: 'Second', ms: 'ms', µs: 'us' }[timeUnit]!), texts, {
      name: 'Time',
      unit: timeUnit,
      values,
      reasons: {},
      kind: choice.time === 'still' ? 'number' : 'time',
    });
  } else if (choice.time === 'no-unit') {
    const texts = Array.from({ length: rows }, (_, i) => write(i * 0.5, choice, 4));
    add('Time', inRow ? '-' : '', texts, { name: 'Time', unit: null, values: texts.map(readBack), reasons: {}, kind: 'number' });
  } else if (CLOCKS.includes(choice.time)) {
    const step = dice.pick([1, 2, 10, 60, 900]);
    const start = dice.pick([0, 8 * 3600 + 30 * 60, 12 * 3600 - 5, 23 * 3600 + 3590]);
    times = Array.from({ length: rows }, (_, i) => i * step);
    stepS = step;
    const at = times.map((t) => start + t);
    const day = (t: number) => (choice.time === 'day-13' ? 14 : 3) + Math.floor(t / 86400);
    const words = dice.pick([
      ['AM', 'PM'],
      ['a.m.', 'p.m.'],
      ['vorm.', 'nachm.'],
    ] as const);
    const stamp = (y: number, m: number, d: number) => Date.UTC(y, m - 1, d) / 1000;
    const truth = (name: string, values: number[]): TrueColumn => ({ name, unit: 's', values, reasons: {}, kind: 'time' });
    if (choice.time === 'clock') add('Time', '', at.map(clockText), truth('Time', at));
    else if (choice.time === 'clock-half')
      add(
        'Time',
        '',
        at.map((t) => halfDayText(t, words)),
        truth('Time', at),
      );
    else if (choice.time === 'duration')
      add(
        'Elapsed',
        '',
        times.map((t) => `${Math.floor(t / 3600)}:${pad(Math.floor(t / 60) % 60)}:${pad(t % 60)}`),
        truth('Elapsed', times),
      );
    else if (choice.time === 'days')
      add(
        'Elapsed',
        '',
        times.map((t) => `${Math.floor(t / 86400)}d ${clockText(t)}`),
        truth('Elapsed', times),
      );
    else if (choice.time === 'iso')
      add(
        'Timestamp',
        '',
        at.map((t) => `2031-05-${pad(day(t))} ${clockText(t)}`),
        truth(
          'Timestamp',
          at.map((t) => stamp(2031, 5, 3) + t),
        ),
      );
    else if (choice.time === 'two-columns') {
      add(
        'Date',
        '',
        at.map((t) => `2031/05/${pad(day(t))}`),
        truth(
          'Date',
          at.map((t) => stamp(2031, 5, day(t))),
        ),
      );
      add(
        'Time',
        '',
        at.map(clockText),
        truth(
          'Time',
          at.map((t) => t % 86400),
        ),
      );
    } else {
      const first = choice.time === 'day-13' ? 14 : 3;
      const monthFirst = choice.time === 'day-13' && dice.chance(0.5);
      const written = (t: number) => (monthFirst ? `05/${pad(day(t))}/2031` : `${pad(day(t))}/05/2031`);
      add(
        'Timestamp',
        '',
        at.map((t) => `${written(t)} ${clockText(t)}`),
        truth(
          'Timestamp',
          at.map((t) => stamp(2031, 5, first) + t),
        ),
      );
    }
  } else if (choice.time === 'interval' || choice.time === 'inf') {
    const step = dice.pick([0.001, 0.02, 0.5]);
    preambleLines.push(['Sample Interval', choice.time === 'inf' ? 'Inf' : `${choice.comma ? String(step).replace('.', ',') : step} s`]);
    if (choice.time === 'interval') {
      stepS = step;
      times = Array.from({ length: rows }, (_, i) => i * step);
    }
  } else if (choice.time === 'rate') {
    preambleLines.push(['Sample Rate', '2 kSa/s']);
    stepS = 0.0005;
    times = Array.from({ length: rows }, (_, i) => i * 0.0005);
  }
  if (choice.time === 'beside' || choice.time === 'beside-late') {
    const first = choice.time === 'beside' ? 0 : 600;
    const texts = Array.from({ length: rows }, (_, i) => String(first + i));
    add('X', 'Sequence', texts, { name: 'X', unit: '1', values: texts.map(Number), reasons: {}, kind: 'number' });
    besides = [
      ['Start', write(-0.25, choice, 3)],
      ['Increment', write(0.5, { ...choice, scientific: true }, 2)],
    ];
  }

  const used = new Set<string>();
  for (let c = 0; c < choice.columns; c++) {
    const quantity = dice.pick(QUANTITIES);
    const texts: string[] = [];
    const values: number[] = [];
    const reasons: Record<string, number> = {};
    const mark = choice.missing >= 0 && dice.chance(0.6) ? MISSING_MARKS[choice.missing]! : null;
    for (let r = 0; r < rows; r++) {
      if (mark !== null && r > 0 && r < rows - 1 && dice.chance(0.2)) {
        texts.push(mark[0]);
        values.push(Number.NaN);
        reasons[mark[1]] = (reasons[mark[1]] ?? 0) + 1;
        continue;
      }
      const text = write((dice.next() - 0.3) * quantity.scale, choice);
      const value = readBack(text);
      values.push(value);
      texts.push(choice.unit === 'cell' ? `${text} ${quantity.unit}` : text);
    }
    let name: string = choice.unit === 'suffix' ? quantity.stem : quantity.name;
    if (choice.unit === 'suffix') while (used.has(name)) name += '2';
    else if (dice.chance(0.4)) name += ` ${c + 1}`;
    used.add(name);
    const suffixUnit = quantity.unit === '°C' ? 'degC' : quantity.unit;
    const heading = {
      round: `${name} (${quantity.unit})`,
      square: `${name} [${quantity.unit}]`,
      comma: `${name}, ${quantity.unit}`,
      slash: `${name} / ${quantity.unit}`,
      suffix: `${name}_${suffixUnit}`,
      'row-round': name,
      'row-word': name,
      cell: name,
      none: name,
    }[choice.unit];
    add(heading, rowUnit(quantity.unit, quantity.word), texts, {
      name,
      unit: choice.unit === 'none' ? null : quantity.unit,
      values,
      reasons,
      kind: 'number',
    });
  }
  if (choice.textColumn) {
    const texts = Array.from({ length: rows }, () => dice.pick(['CC', 'CV', 'standby', 'ready']));
    const dirty = texts.map((text) => (dice.chance(0.2) ? `${text}\u0007` : text));
    add('Mode', '', dirty, { name: 'Mode', unit: null, values: texts.map(() => Number.NaN), reasons: {}, kind: 'text', texts });
  }
  if (choice.emptyColumn) {
    add('Humidity (%)', '', Array<string>(rows).fill(''), {
      name: 'Humidity',
      unit: '%',
      values: Array<number>(rows).fill(Number.NaN),
      reasons: { blank: rows },
      kind: 'number',
    });
  }
  const bytes = render(choice, { headings, units: inRow || besides.length > 0 ? units : null, cells, preambleLines, besides });
  return {
    label: JSON.stringify(choice),
    bytes,
    columns,
    rows,
    times,
    stepS,
    decimalMark: choice.comma ? 'comma' : 'point',
    saysEverything: saysEverything(choice, columns, cells),
  };
}

function saysEverything(choice: Choice, columns: readonly TrueColumn[], cells: readonly string[][]): boolean {
  if (choice.bareCommas && choice.comma && choice.separator === ',') return false;
  if (choice.unit === 'none' || ASKED.includes(choice.time)) return false;
  // A label and one number per row cannot be told from a preamble.
  if (columns.filter((column) => column.kind !== 'text').length === 1 && columns.length === 2 && choice.textColumn) return false;
  if (TOLD_OUTSIDE.includes(choice.time) && choice.preamble === 'title') return false;
  // "1,234" alone may group thousands, and numbers without any mark show none.
  const marked = cells.flat().filter((cell) => /^-?\d+,\d+/.test(cell));
  if (choice.comma && !marked.some((cell) => !/^-?[1-9]\d{0,2},\d{3}( |$)/.test(cell))) return false;
  return true;
}

interface Parts {
  headings: string[];
  units: string[] | null;
  cells: string[][];
  preambleLines: [string, string][];
  besides: [string, string][];
}

function render(choice: Choice, parts: Parts): Uint8Array {
  const { separator } = choice;
  const isBare = choice.bareCommas && choice.comma && separator === ',';
  const quote = (text: string) =>
    isBare && /^-?\d+,\d/.test(text)
      ? text
      : text.includes(separator) || text.includes('"') || (choice.quoted && text !== '')
        ? `"${text.replaceAll('"', '""')}"`
        : text;
  const line = (cells: readonly string[]) => cells.map(quote).join(separator) + (choice.trailing ? separator : '');
  const keyed: [string, string][] = [['Device', 'Bench recorder'], ['Remark', 'second run, warm'], ...parts.preambleLines];
  const needsCells = choice.preamble === 'none' || choice.preamble === 'title' || choice.preamble === 'hint';
  const lines: string[] = [];
  const isBeside = choice.preamble === 'beside' && parts.besides.length === 0;
  if (choice.preamble === 'hint') lines.push(`sep=${separator}`);
  if (choice.preamble === 'title') lines.push('"Log of run 7"');
  if (choice.preamble === 'sections') lines.push('[Setup]');
  const style =
    needsCells && parts.preambleLines.length > 0 ? 'cells' : choice.preamble === 'beside' && !isBeside ? 'cells' : choice.preamble;
  if (style === 'cells' || style === 'sections') for (const [key, value] of keyed) lines.push([key, value].map(quote).join(separator));
  if (style === 'equals') for (const [key, value] of keyed) lines.push(`${key}=${value}`);
  if (style === 'comments') for (const [key, value] of keyed) lines.push(`# ${key}: ${value}`);
  if (choice.preamble === 'sections') lines.push('[Data]');
  const besideNames = parts.besides.map(([name]) => name);
  const besideValues = parts.besides.map(([, value]) => value);
  const table: string[][] = [[...parts.headings, ...besideNames]];
  if (parts.units !== null) table.push([...parts.units, ...besideValues]);
  const rows = parts.cells[0]!.length;
  for (let r = 0; r < rows; r++) table.push(parts.cells.map((column) => column[r]!));
  const first = parts.units === null ? 1 : 2;
  for (const [i, cells] of table.entries()) {
    if (i === first && choice.blankLine && !isBeside) lines.push('');
    if (isBeside) {
      const pair = i < keyed.length ? [keyed[i]![0], keyed[i]![1]] : ['', ''];
      lines.push(line([...pair, '', ...cells]));
    } else lines.push(line(cells));
    const isMiddle = i === first + Math.floor(rows / 2);
    if (isMiddle && choice.repeated && !isBeside) lines.push(line(table[0]!));
    if (isMiddle && choice.summary && !isBeside) lines.push(line(cells.map((_, c) => (c === 0 ? 'Average' : '1'))));
  }
  let text = lines.join(choice.lineEnd);
  if (choice.closed) text += choice.lineEnd;
  return encode(text, choice.encoding);
}

export function encode(text: string, encoding: Choice['encoding']): Uint8Array {
  if (encoding === 'utf-8') return new TextEncoder().encode(text);
  if (encoding === 'utf-8-bom') return new TextEncoder().encode(`\ufeff${text}`);
  if (encoding === 'latin-1') return Uint8Array.from(text, (character) => character.charCodeAt(0));
  const marked = encoding === 'utf-16le-bare' ? text : `\ufeff${text}`;
  const bytes = new Uint8Array(marked.length * 2);
  const view = new DataView(bytes.buffer);
  for (let i = 0; i < marked.length; i++) view.setUint16(i * 2, marked.charCodeAt(i), encoding !== 'utf-16be');
  return bytes;
}
