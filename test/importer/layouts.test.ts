import { describe, expect, it } from 'vitest';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import type { InstrumentFile, Settled } from '../../src/importer/read-instrument-file.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';
import { toTimes } from '../../src/importer/to-times.ts';

function read(text: string, settled: Settled = {}): InstrumentFile {
  const file = readInstrumentFile(new TextEncoder().encode(text), settled);
  if (isRefusal(file)) throw new Error(sentence(file));
  return file;
}

const codes = (file: InstrumentFile) => file.doubts.map((doubt) => doubt.code);
const values = (file: InstrumentFile, column: number) => [...file.columns[column]!.values];
const times = (file: InstrumentFile) => [...(toTimes(file) ?? [])];

describe('start and increment beside the headings', () => {
  const text = 'X,CH1,CH2,Start,Increment,\nSequence,Volt,mA,-1.5e-3,5.0e-4\n0,1.25,3.5,\n1,1.5,3.25,\n2,1.75,3.0,\n';

  it('give no unit of time: the samples are usable, the time is asked for', () => {
    const file = read(text);
    expect(codes(file)).toEqual(['time-base']);
    expect(file.columns.map((column) => [column.name, column.unit, column.usable])).toEqual([
      ['X', '1', false],
      ['CH1', 'V', true],
      ['CH2', 'mA', true],
    ]);
    expect(file.preamble).toEqual({ Start: '-1.5e-3', Increment: '5.0e-4' });
    expect(file.timeStepS).toBeNull();
  });

  it('are settled by the unit alone', () => {
    const file = read(text, { 'time-base': 's' });
    expect(file.doubts).toEqual([]);
    expect(file.timeStepS).toBe(0.0005);
    expect(times(file)).toEqual([-0.0015, -0.001, -0.0005]);
  });

  it('say nothing of samples that begin at 600: it is asked whether the start belongs to sample 0', () => {
    const late = 'X,CH1,Start (s),Increment (s)\nSequence,Volt,-2,0.5\n600,1.5,\n601,1.25,\n602,1.0,\n';
    const file = read(late);
    expect(codes(file)).toEqual(['sequence-start']);
    expect(file.timeStepS).toBe(0.5);
    expect(file.columns.map((column) => column.usable)).toEqual([false, true]);
    expect(times(read(late, { 'sequence-start': 'zero' }))).toEqual([298, 298.5, 299]);
    expect(times(read(late, { 'sequence-start': 'first-row' }))).toEqual([-2, -1.5, -1]);
  });

  it.each(['Inf', '0', '-1e-3'])('an increment of %s is no step', (step) => {
    const file = read(`X,CH1,Start (s),Increment (s)\nSequence,Volt,0,${step}\n0,1.5,\n1,1.25,\n`);
    expect(codes(file)).toEqual(['time-base']);
    expect(file.timeBase).toBeNull();
    expect(file.columns.every((column) => !column.usable)).toBe(true);
  });
});

describe('the decimal mark', () => {
  it('1,234 beside semicolons may be a thousand times either', () => {
    const text = 'Time (s);Voltage (V)\n1,000;1,234\n2,000;5,678\n';
    const file = read(text);
    expect(codes(file)).toContain('decimal-mark');
    expect(file.columns.some((column) => column.usable)).toBe(false);
    expect(values(read(text, { 'decimal-mark': 'comma' }), 1)).toEqual([1.234, 5.678]);
    expect(values(read(text, { 'decimal-mark': 'point' }), 1)).toEqual([1234, 5678]);
  });

  it('one number with a leading zero shows that the comma is the decimal mark', () => {
    const file = read('Time (s);Voltage (V)\n0,000;1,234\n1,000;5,678\n');
    expect(file.doubts).toEqual([]);
    expect(values(file, 1)).toEqual([1.234, 5.678]);
  });

  it('numbers with both marks show which one groups', () => {
    const file = read('Time (s);Power (mW)\n0,5;1.234,5\n1,5;12.345\n');
    expect(file.doubts).toEqual([]);
    expect(values(file, 1)).toEqual([1234.5, 12345]);
  });

  it('points and commas in turn are asked about', () => {
    const file = read('Time (s);Voltage (V)\n0.5;1,25\n1.5;1,5\n');
    expect(codes(file)).toContain('decimal-mark');
    expect(file.columns.some((column) => column.usable)).toBe(false);
  });

  it('commas that separate and divide are asked about, and joined when settled', () => {
    const text = 'Time (s),Voltage (V)\n0,5,5,25\n1,5,5,125\n';
    expect(codes(read(text))).toContain('decimal-mark');
    const file = read(text, { 'decimal-mark': 'comma' });
    expect(file.doubts).toEqual([]);
    expect(values(file, 0)).toEqual([0.5, 1.5]);
    expect(values(file, 1)).toEqual([5.25, 5.125]);
  });

  it('joined numbers of which one has no fraction cannot be told apart', () => {
    const refused = readInstrumentFile(new TextEncoder().encode('Time (s),Voltage (V)\n0,5,5,25\n1,5,125\n'), { 'decimal-mark': 'comma' });
    expect(isRefusal(refused) && refused.code).toBe('comma-both');
    expect(isRefusal(refused) && refused.place).toBe('line 3');
  });

  it('a single column of decimal commas is not two columns', () => {
    const file = read('Voltage (V)\n5,02\n5,11\n');
    expect(codes(file)).toContain('decimal-mark');
    expect(values(read('Voltage (V)\n5,02\n5,11\n', { 'decimal-mark': 'comma' }), 0)).toEqual([5.02, 5.11]);
  });
});

describe('units', () => {
  it('may stand in the preamble, once for each channel', () => {
    const file = read('Source,CH1,CH2\nHorizontal Units,s,s\nVertical Units,V,A\nTIME,CH1,CH2\n0.0,1.5,2.5\n1.0e-6,1.25,2.25\n');
    expect(file.doubts).toEqual([]);
    expect(file.columns.map((column) => column.unit)).toEqual(['s', 'V', 'A']);
    const same = read('Source,CH1,CH2\nHorizontal Units,s,s\nVertical Units,V,V\nTIME,CH1,CH2\n0.0,1.5,2.5\n1.0e-6,1.25,2.25\n');
    expect(same.columns.map((column) => column.unit)).toEqual(['s', 'V', 'V']);
    const once = read('Horizontal Units,s\nVertical Units,V\nTIME,CH1,CH2\n0.0,1.5,2.5\n1.0e-6,1.25,2.25\n');
    expect(codes(once)).toEqual(['unit:1', 'unit:2']);
  });

  it.each([
    ['V_out_V', 'V'],
    ['Current_mA', 'mA'],
    ['Temp_degC', '°C'],
    ['Temp_C', '°C'],
    ['Temperature (C)', '°C'],
    ['U/V', 'V'],
    ['Voltage (Vrms)', 'V'],
    ['Volts', 'V'],
    ['Power factor', '1'],
    ['Case, °C', '°C'],
    ['Leistung [W]', 'W'],
    ['Drop (\u03bcV)', 'µV'],
  ])('%s is stated', (name, unit) => {
    const file = read(`Time (s);${name}\n0.5;0.25\n1.5;0.5\n2.5;0.75\n`);
    expect(file.doubts).toEqual([]);
    expect(file.columns[1]!.unit).toBe(unit);
  });

  it.each([
    'Voltage',
    'V',
    'W',
    'VOUT',
    'Voltage_A',
    'Phase_A',
    'Probe (C)',
    'Voltage (min)',
    'V_min',
    'Sample(s)',
    'CURRENT (MA)',
    'Voltage (1)',
    'Energy (C)',
    'Channel_h',
    'Input (x)',
  ])('%s states none beyond doubt', (name) => {
    const file = read(`Time (s);${name}\n0.5;0.25\n1.5;0.5\n2.5;0.75\n`);
    expect(codes(file)).toEqual(['unit:1']);
    expect(file.columns[1]!.usable).toBe(false);
    const settled = read(`Time (s);${name}\n0.5;0.25\n1.5;0.5\n2.5;0.75\n`, { 'unit:1': 'mA' });
    expect(settled.doubts).toEqual([]);
    expect(settled.columns[1]!.unit).toBe('mA');
  });

  it('letters that number the phases are no amperes', () => {
    expect(codes(read('Time (s),Current_A,Current_B\n0.5,1.5,2.5\n1.5,1.25,2.25\n'))).toEqual(['unit:1', 'unit:2']);
    expect(codes(read('Time (s),Probe (A),Probe (B)\n0.5,1.5,2.5\n1.5,1.25,2.25\n'))).toEqual(['unit:1', 'unit:2']);
  });

  it('a heading and a unit row that differ are asked about', () => {
    expect(codes(read('Time (s),Voltage (V)\ns,mV\n0.5,1.5\n1.5,1.25\n'))).toEqual(['unit:1']);
  });

  it('cells with prefixes are brought to the unit of the first one', () => {
    const file = read('Time (s),Voltage\n0.5,1.5 V\n1.5,980 mV\n2.5,OL V\n');
    expect(file.doubts).toEqual([]);
    expect(values(file, 1)).toEqual([1.5, 0.98, Number.NaN]);
    expect(file.columns[1]!.unit).toBe('V');
    expect(codes(read('Time (s),Voltage\n0.5,1.5 V\n1.5,980 A\n'))).toEqual(['text-cells:1', 'unit:1']);
    expect(codes(read('Time (s),Voltage\n0.5,1.5 V\n1.5,980\n'))).toEqual(['unit:1']);
  });
});

describe('missing readings', () => {
  it('what is colder than absolute zero, or thousands of degrees hot, is a mark of the logger', () => {
    const file = read('Time (s),Case (°C)\n0.5,21.5\n1.5,-300\n2.5,9999.9\n3.5,-273.15\n');
    expect(file.columns[1]!.missing).toEqual({ count: 2, reasons: { 'sensor-code': 2 } });
    expect(file.doubts).toEqual([]);
  });

  it('-200 °C may be either', () => {
    const text = 'Time (s),Case (°C)\n0.5,21.5\n1.5,-200\n2.5,22.5\n';
    expect(codes(read(text))).toEqual(['sensor-code:1']);
    expect(values(read(text, { 'sensor-code:1': 'missing' }), 1)).toEqual([21.5, Number.NaN, 22.5]);
    expect(values(read(text, { 'sensor-code:1': 'reading' }), 1)).toEqual([21.5, -200, 22.5]);
  });

  it('words nobody knows among numbers are asked about', () => {
    const text = 'Time (s),Voltage (V)\n0.5,1.5\n1.5,glitch\n2.5,1.25\n';
    const file = read(text);
    expect(codes(file)).toEqual(['text-cells:1']);
    expect(read(text, { 'text-cells:1': 'missing' }).columns[1]!.missing).toEqual({ count: 1, reasons: { text: 1 } });
  });

  it('the last cell of a file that ends in the middle of a row is not trusted', () => {
    const file = read('Time (s),A (V),B (V)\n0.5,1.5,2.5\n1.5,1.25,2.25\n2.5,1.0');
    expect(values(file, 1)).toEqual([1.5, 1.25, Number.NaN]);
    expect(file.columns[1]!.missing.reasons).toEqual({ 'cut-off': 1 });
  });
});

describe('the end of a file', () => {
  it.each(['2.5,1.', '2.5,1.0', '2.5,-', '2.5,1.25e'])('cut off as %s leaves no number behind', (end) => {
    const file = read(`Time (s),A (V)\n0.5,1.525\n1.5,1.250\n${end}`);
    expect(values(file, 1)).toEqual([1.525, 1.25, Number.NaN]);
  });

  it('is a number like the others when it is as long', () => {
    expect(values(read('Time (s),A (V)\n0.5,1.525\n1.5,1.250\n2.5,1.125'), 1)).toEqual([1.525, 1.25, 1.125]);
    expect(values(read('Time (s),A (V)\n0.5,1.5\n1.5,1.25\n2.5,1'), 1)).toEqual([1.5, 1.25, 1]);
  });
});

describe('clocks', () => {
  it('day and month that cannot be told apart are asked for', () => {
    const text = 'When,Voltage (V)\n03/04/2031 10:00:00,1.5\n03/04/2031 10:00:10,1.25\n';
    expect(read(text).doubts[0]).toMatchObject({ code: 'date-order:0', answers: ['day-month-year', 'month-day-year'] });
    expect(values(read(text, { 'date-order:0': 'day-month-year' }), 0)[0]).toBe(Date.UTC(2031, 3, 3, 10) / 1000);
    expect(values(read(text, { 'date-order:0': 'month-day-year' }), 0)[0]).toBe(Date.UTC(2031, 2, 4, 10) / 1000);
  });

  it('an even log that runs over midnight shows which number is the day', () => {
    const file = read('When,Voltage (V)\n21.04.08 23:30:00,1.5\n21.04.08 23:45:00,1.5\n21.04.09 00:00:00,1.5\n21.04.09 00:15:00,1.5\n');
    expect(file.doubts).toEqual([]);
    expect(file.timeStepS).toBe(900);
    expect(values(file, 0)[0]).toBe(Date.UTC(2021, 3, 8, 23, 30) / 1000);
  });

  it('two numbers with a colon are hours and minutes, or minutes and seconds', () => {
    const text = 'Time,Voltage (V)\n10:00,1.5\n10:30,1.25\n11:00,1.0\n';
    expect(codes(read(text))).toEqual(['clock-parts:0']);
    expect(read(text, { 'clock-parts:0': 'hh:mm' }).timeStepS).toBe(1800);
    expect(read(text, { 'clock-parts:0': 'mm:ss' }).timeStepS).toBe(30);
    expect(read(text.replace('Time', 'Time (mm:ss)')).timeStepS).toBe(30);
  });

  it('morning and afternoon may stand in a column of their own', () => {
    const file = read('Date,Time,,Voltage (V)\n2031-05-03,11:59:50,AM,1.5\n2031-05-03,12:00:00,PM,1.25\n2031-05-03,12:00:10,PM,1.0\n');
    expect(file.doubts).toEqual([]);
    expect(file.timeStepS).toBe(10);
    expect(times(file)[0]).toBe(Date.UTC(2031, 4, 3, 11, 59, 50) / 1000);
  });

  it('a clock that falls from twelve to one without a word counts half days', () => {
    expect(codes(read('Time,Voltage (V)\n12:59:50,1.5\n1:00:00,1.25\n1:00:10,1.0\n'))).toEqual(['half-day:0']);
  });

  it('durations start again with every step', () => {
    const file = read('Step,Step time,Current (A)\n1,0:00:00,0.5\n1,0:00:10,0.5\n2,0:00:00,1.5\n2,0:00:10,1.5\n');
    expect(file.doubts).toEqual([]);
    expect(file.timeBase).toEqual({ kind: 'column', column: 1, dateColumn: null, restarts: 1 });
    expect(file.timeStepS).toBeNull();
  });

  it('a clock that goes back is asked about', () => {
    expect(codes(read('Time,Voltage (V)\n10:00:00,1.5\n10:00:10,1.5\n09:00:20,1.5\n09:00:30,1.5\n'))).toEqual(['time-restarts:0']);
  });

  it('a time in seconds starts again with every step', () => {
    const file = read('Step,Time (s),Current (A)\n1,0.5,0.5\n1,1.5,0.5\n2,0.5,1.5\n2,1.5,1.5\n');
    expect(file.doubts).toEqual([]);
    expect(file.timeBase).toEqual({ kind: 'column', column: 1, dateColumn: null, restarts: 1 });
  });

  it('words nobody knows beside the clock are asked about', () => {
    expect(codes(read('Time,Voltage (V)\n10:00:00 brunch,1.5\n10:00:01 brunch,1.25\n'))).toEqual(['time-base']);
  });

  it('dates of which no order makes sense of all are asked about, and the impossible ones are left out', () => {
    const text = 'When,Voltage (V)\n13/05/2031 10:00:00,1.5\n05/14/2031 10:00:00,1.25\n';
    expect(codes(read(text))).toContain('date-order:0');
    expect(values(read(text, { 'date-order:0': 'day-month-year', 'untimed-rows': 'readings' }), 0)).toEqual([
      Date.UTC(2031, 4, 13, 10) / 1000,
      Number.NaN,
    ]);
  });

  it('a measured delay is no time base, even in the first column', () => {
    expect(read('Delay (ms),Voltage (V)\n0.5,1.5\n1.5,1.25\n').timeBase).toBeNull();
  });

  it('dates alone tell the time of a daily log', () => {
    expect(read('Date,Voltage (V)\n2031-05-03,1.5\n2031-05-04,1.25\n2031-05-05,1.25\n').timeStepS).toBe(86_400);
  });

  it('written offsets count', () => {
    const file = read('When,Voltage (V)\n2031-05-03T10:00:00+02:00,1.5\n2031-05-03T10:00:10+02:00,1.5\n');
    expect(values(file, 0)[0]).toBe(Date.UTC(2031, 4, 3, 8) / 1000);
  });
});

describe('tables in parts', () => {
  it('group names above equal names tell them apart', () => {
    const file = read(
      ',Input,,Output,\nTime (s),Voltage (V),Current (A),Voltage (V),Current (A)\n0.5,230.5,0.125,5.25,1.5\n1.5,230.25,0.25,5.125,2.5\n',
    );
    expect(file.columns.map((column) => column.name)).toEqual([
      'Time',
      'Input Voltage',
      'Input Current',
      'Output Voltage',
      'Output Current',
    ]);
    expect(file.columns.map((column) => column.unit)).toEqual(['s', 'V', 'A', 'V', 'A']);
    expect(file.doubts).toEqual([]);
  });

  it('another table below is asked about', () => {
    const text = 'Time (s),Voltage (V)\n0.5,1.5\n1.5,1.25\nTime (s),Current (A)\n0.5,8.5\n1.5,8.25\n';
    const file = read(text);
    expect(codes(file)).toEqual(['second-table', 'time-restarts:0']);
    expect(file.columns.some((column) => column.usable)).toBe(false);
    expect(values(read(text, { 'second-table': 'stop' }), 1)).toEqual([1.5, 1.25]);
  });

  it('rows that fit nowhere are asked about', () => {
    expect(codes(read('Time (s),Voltage (V)\n0.5,1.5\nRange changed\n1.5,1.25\n'))).toEqual(['odd-rows']);
    expect(codes(read('Time (s),Voltage (V)\n0.5,1.5\n1.0,1.5,7\n1.5,1.25\n'))).toEqual(['odd-rows']);
  });

  it('fewer names than cells are asked about', () => {
    const text = 'Voltage (V),Current (A)\n0,5.5,1.5\n1,5.25,1.25\n2,5.0,1.0\n';
    expect(codes(read(text))).toContain('names');
    expect(read(text, { names: 'from-right', 'unit:0': '1' }).columns[1]!.name).toBe('Voltage');
  });

  it('a heading may stand in the last comment', () => {
    const file = read('# run: 7\n# time (s), voltage (V)\n0.5, 1.5\n1.5, 1.25\n');
    expect(file.columns.map((column) => [column.name, column.unit])).toEqual([
      ['time', 's'],
      ['voltage', 'V'],
    ]);
    expect(file.preamble).toEqual({ run: '7' });
  });

  it('rows without a heading are asked about column by column', () => {
    const file = read('0.5;1.5\n1.5;1.25\n2.5;1.0\n');
    expect(codes(file)).toEqual(['unit:0', 'unit:1']);
    const settled = read('0.5;1.5\n1.5;1.25\n2.5;1.0\n', { 'unit:0': 'ms', 'unit:1': 'V' });
    expect(settled.timeStepS).toBe(0.001);
  });

  it('blanks may separate', () => {
    const file = read('Time(s)  Voltage(V)\n0.5   1.5\n1.5   1.25\n');
    expect(file.separator).toBe('space');
    expect(values(file, 1)).toEqual([1.5, 1.25]);
  });
});

describe('readings in a form nobody knows', () => {
  it('do not vanish above the table', () => {
    const text = 'Time (s),Voltage (V)\n0.5,1.5~\n1.5,2.5\n2.5,2.25\n';
    expect(codes(read(text))).toContain('rows-above');
    expect(read(text).columns.some((column) => column.usable)).toBe(false);
  });

  it('do not turn a column with a unit into words unasked', () => {
    const text = 'Time (s),Voltage (V)\n0.5,0x1F\n1.5,0x20\n';
    expect(codes(read(text))).toEqual(['text-column:1']);
    expect(read(text, { 'text-column:1': 'words' }).columns[1]!.texts).toEqual(['0x1F', '0x20']);
  });

  it('may need a factor that the file states', () => {
    expect(codes(read('Multiplier,1000\nTime (s),Voltage (V)\n0.5,120.5\n1.5,121.5\n'))).toEqual(['scale']);
    expect(codes(read('Multiplier,1.0\nTime (s),Voltage (V)\n0.5,120.5\n1.5,121.5\n'))).toEqual([]);
  });

  it('tell no time step while the order of their dates is open', () => {
    const file = read('When,Voltage (V)\n03/04/2031,1.5\n04/04/2031,1.25\n05/04/2031,1.0\n');
    expect(codes(file)).toContain('date-order:0');
    expect([file.timeBase, file.timeStepS]).toEqual([null, null]);
  });
});

describe('fields of numbers', () => {
  const field = Array.from({ length: 12 }, (_, r) => Array.from({ length: 16 }, (_, c) => (20 + r / 4 + c / 8).toFixed(3)).join(';')).join(
    '\n',
  );

  it('have one unit, which is asked for once', () => {
    const file = read(field);
    expect([file.shape, file.rows, file.columns.length]).toEqual(['matrix', 12, 16]);
    expect(codes(file)).toEqual(['unit']);
    const settled = read(field, { unit: '°C' });
    expect(settled.columns[15]!.values[11]).toBe(24.625);
    expect(settled.columns.every((column) => column.usable && column.unit === '°C')).toBe(true);
  });

  it('may number their rows and columns', () => {
    const labelled = `${Array.from({ length: 17 }, (_, c) => c).join(';')}\n${field
      .split('\n')
      .map((row, r) => `${r + 1};${row}`)
      .join('\n')}`;
    expect(codes(read(labelled))).toEqual(['unit', 'labels']);
    const file = read(labelled, { unit: '°C', labels: 'numbers' });
    expect([file.rows, file.columns.length, file.columns[0]!.values[0]]).toEqual([12, 16, 20]);
  });
});

describe('answers', () => {
  const text = 'Time (s),Voltage\n0.5,1.5\n1.5,1.25\n';

  it('that are none of the possible ones are refused with those', () => {
    const refused = readInstrumentFile(new TextEncoder().encode(text), { 'unit:1': 'furlong' });
    expect(isRefusal(refused) && refused.code).toBe('settled-answer');
    expect(isRefusal(refused) && refused.expected).toContain('mV');
    const step = readInstrumentFile(new TextEncoder().encode('CH1 (V)\n1.5\n1.25\n'), { 'time-base': '<step> s' });
    expect(isRefusal(step) && step.code).toBe('settled-answer');
  });

  it('to questions the file does not raise are refused', () => {
    const refused = readInstrumentFile(new TextEncoder().encode(text), { 'unit:0': 's' });
    expect(isRefusal(refused) && refused.code).toBe('settled-code');
  });

  it('a step settles a waveform without a time base', () => {
    const file = read('CH1 (V)\n1.5\n1.25\n1.0\n', { 'time-base': '0.5 ms' });
    expect(file.timeStepS).toBe(0.0005);
    expect(file.columns[0]!.usable).toBe(true);
    expect(codes(read('CH1 (V)\n1.5\n1.25\n1.0\n'))).toEqual(['time-base']);
  });
});
