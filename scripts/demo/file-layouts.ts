/** Text layouts of invented instruments, each different, to carry the demo data: what bench instruments write, in general. */
export interface SweepRow {
  readonly seconds: number;
  readonly current: number;
  readonly voltage: number;
  readonly power: number;
}

const fixed = (value: number, digits: number): string => value.toFixed(digits);
const comma = (text: string): string => text.replace('.', ',');

/** Comma separated, units in brackets behind the names, facts before the table. */
export function bracketUnits(rows: readonly SweepRow[], title: string): string {
  const head = [`# invented data: ${title}`, '# mode: constant current', 'Time (s),Current (A),Voltage (V),Input power (W)'];
  return `${[...head, ...rows.map((row) => [fixed(row.seconds, 1), fixed(row.current, 3), fixed(row.voltage, 3), fixed(row.power, 2)].join(','))].join('\n')}\n`;
}

/** Semicolons and decimal commas, as instruments set to continental Europe write; units in square brackets, CRLF. */
export function semicolonComma(rows: readonly SweepRow[], title: string): string {
  const head = [`Note;invented data: ${title}`, '', 'I out [A];U out [V];P in [W]'];
  const body = rows.map((row) => [fixed(row.current, 3), fixed(row.voltage, 3), fixed(row.power, 2)].map(comma).join(';'));
  return `${[...head, ...body].join('\r\n')}\r\n`;
}

/** Tabs, names in one row and units in the next, milliamperes. */
export function unitRowTabs(rows: readonly SweepRow[], title: string): string {
  const head = [`Comment: invented data, ${title}`, 'Load\tOutput\tInput', 'mA\tV\tW'];
  return `${[...head, ...rows.map((row) => [fixed(row.current * 1000, 0), fixed(row.voltage, 3), fixed(row.power, 2)].join('\t'))].join('\n')}\n`;
}

/** Key and value lines, then a quoted header, wall-clock times, UTF-16 with mark. */
export function clockQuoted(rows: readonly SweepRow[], title: string): string {
  const clock = (seconds: number): string =>
    `2026-03-09 14:${String(Math.floor(seconds / 60)).padStart(2, '0')}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;
  const head = [`Remark=invented data, ${title}`, 'Mode=steps', '"Clock","Voltage/V","Current/A","Power in/W"'];
  return `\ufeff${[...head, ...rows.map((row) => [clock(row.seconds), fixed(row.voltage, 3), fixed(row.current, 3), fixed(row.power, 2)].join(','))].join('\r\n')}\r\n`;
}

/** A logger: elapsed time as h:mm:ss, one column a channel, decimal point, semicolons. */
export function elapsedLogger(
  channels: readonly string[],
  rows: readonly { seconds: number; values: readonly number[] }[],
  title: string,
): string {
  const pad = (n: number): string => String(n).padStart(2, '0');
  const elapsed = (s: number): string => `${Math.floor(s / 3600)}:${pad(Math.floor(s / 60) % 60)}:${pad(s % 60)}`;
  const head = [`"invented data: ${title}"`, `Elapsed;${channels.map((name) => `${name} (°C)`).join(';')}`];
  return `${[...head, ...rows.map(({ seconds, values }) => [elapsed(seconds), ...values.map((value) => fixed(value, 1))].join(';'))].join('\n')}\n`;
}

/** A scope: a counted sample column, start and increment in the row of units. */
export function startIncrement(stepS: number, samples: readonly number[], channel: string, firstS: number): string {
  const head = [`X,${channel},Start,Increment`, `Sequence,Volt,${firstS.toExponential(6)},${stepS.toExponential(6)}`];
  return `${[...head, ...samples.map((value, index) => `${index},${value.toExponential(3)},,`)].join('\n')}\n`;
}

/** A thermal camera: a matrix of degrees, no header, decimal comma and semicolons. */
export function matrix(values: readonly (readonly number[])[]): string {
  return `${values.map((row) => row.map((value) => comma(fixed(value, 1))).join(';')).join('\n')}\n`;
}

export function utf16(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let index = 0; index < text.length; index += 1) view.setUint16(index * 2, text.charCodeAt(index), true);
  return bytes;
}
