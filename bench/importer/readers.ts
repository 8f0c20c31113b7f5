import { closeSync, openSync, readFileSync, readSync, statSync } from 'node:fs';
import { readFastColumns } from '../../src/importer/fast-columns.ts';
import { readInstrumentFile } from '../../src/importer/read-instrument-file.ts';

/** A reader under measurement: takes the path of a table, returns the number of rows it read. */
export type Reader = (path: string) => Promise<number>;

const CHUNK = 1_048_576; // bytes read from disk at a time
const MISSING_PACKAGE = 'ERR_MODULE_NOT_FOUND';

function* readChunks(path: string): Generator<Uint8Array> {
  const file = openSync(path, 'r');
  const buffer = new Uint8Array(CHUNK);
  for (let n = readSync(file, buffer); n > 0; n = readSync(file, buffer)) yield buffer.subarray(0, n);
  closeSync(file);
}

/** A package that may not be installed: null then. */
async function findPackage(name: string): Promise<Record<string, never> | null> {
  try {
    return (await import(name)) as Record<string, never>;
  } catch (error) {
    if ((error as { code?: string }).code === MISSING_PACKAGE) return null;
    throw error;
  }
}

function readBySplit(path: string): number {
  const lines = readFileSync(path, 'latin1').split('\n');
  const first: number[] = [];
  const second: number[] = [];
  for (let i = 1; i < lines.length; i++) {
    const cells = lines[i]!.split(',');
    if (cells.length < 2) continue;
    first.push(Number(cells[0]));
    second.push(Number(cells[1]));
  }
  return Math.min(first.length, second.length);
}

function readLogBySplit(path: string): number {
  const lines = readFileSync(path, 'utf8').split('\n');
  const columns: (number | string)[][] = [[], [], [], [], []];
  for (let i = 2; i < lines.length; i++) {
    const cells = lines[i]!.split(';');
    if (cells.length < columns.length) continue;
    columns[0]!.push(Date.parse(cells[0]!));
    for (let p = 1; p < columns.length - 1; p++) columns[p]!.push(Number(cells[p]!.replace(',', '.')));
    columns.at(-1)!.push(cells.at(-1)!);
  }
  return columns[0]!.length;
}

async function makeUdsv(): Promise<Reader | null> {
  const udsv = (await findPackage('udsv')) as {
    inferSchema(text: string): unknown;
    initParser(schema: unknown): { typedCols(text: string): unknown[][] };
  } | null;
  if (udsv === null) return null;
  return async (path) => {
    const text = readFileSync(path, 'utf8');
    return udsv.initParser(udsv.inferSchema(text)).typedCols(text)[0]!.length;
  };
}

interface DuckChunk {
  rowCount: number;
  getColumnVector(index: number): { getItem(row: number): unknown; items?: Float64Array };
}

interface DuckConnection {
  stream(sql: string): Promise<{ fetchChunk(): Promise<DuckChunk | null> }>;
}

/** Streams its own reading of the file, chunk by chunk, into two typed arrays: what the importer's fast path does. */
async function makeDuckDb(): Promise<Reader | null> {
  const duck = (await findPackage('@duckdb/node-api')) as {
    DuckDBInstance: { create(path: string): Promise<{ connect(): Promise<DuckConnection> }> };
  } | null;
  if (duck === null) return null;
  return async (path) => {
    const connection = await (await duck.DuckDBInstance.create(':memory:')).connect();
    const result = await connection.stream(`SELECT * FROM read_csv('${path.replaceAll("'", "''")}')`);
    let columns: Float64Array[] = [new Float64Array(START), new Float64Array(START)];
    let rows = 0;
    for (let chunk = await result.fetchChunk(); chunk !== null && chunk.rowCount > 0; chunk = await result.fetchChunk()) {
      const { rowCount } = chunk;
      if (rows + rowCount > columns[0]!.length) columns = columns.map((column) => grown(column));
      for (const [index, column] of columns.entries()) {
        const vector = chunk.getColumnVector(index);
        if (vector.items instanceof Float64Array) column.set(vector.items.subarray(0, rowCount), rows);
        else for (let row = 0; row < rowCount; row++) column[rows + row] = Number(vector.getItem(row));
      }
      rows += rowCount;
    }
    return rows;
  };
}

const START = 1_048_576; // rows of room to begin with; doubled when full

function grown(column: Float64Array): Float64Array {
  const larger = new Float64Array(column.length * 2);
  larger.set(column);
  return larger;
}

async function readGeneral(path: string): Promise<number> {
  const file = readInstrumentFile(readFileSync(path));
  if ('refused' in file) throw new Error(file.expected);
  return file.rows;
}

/** Readers by name; null where the package they need is absent. The first one of each kind is the reference. */
export const READERS: Readonly<Record<string, () => Promise<Reader | null>>> = {
  'split + Number': async () => async (path) => readBySplit(path),
  'fast columns, in chunks': async () => async (path) => {
    const table = readFastColumns(readChunks(path), { separator: 'comma', columns: 2, skipLines: 1, totalBytes: statSync(path).size });
    if ('refused' in table) throw new Error(table.expected);
    return table.rows;
  },
  'whole file, plain': async () => readGeneral,
  udsv: makeUdsv,
  DuckDB: makeDuckDb,
  'split + Number + Date': async () => async (path) => readLogBySplit(path),
  'whole file, log': async () => readGeneral,
};

export const SUITES = {
  plain: ['split + Number', 'fast columns, in chunks', 'whole file, plain', 'udsv', 'DuckDB'],
  log: ['split + Number + Date', 'whole file, log'],
} as const;
