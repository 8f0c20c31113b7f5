import { readFile } from 'node:fs/promises';
import { isRefusal, refuse } from '../../core/quantity/refusal.ts';
import { type Description, describe } from '../../importer/describe.ts';
import { readInstrumentFile } from '../../importer/read-instrument-file.ts';
import { describeText } from '../describe-text.ts';
import { print, Refused } from '../output.ts';

/** Shows how an instrument file is understood, and what it does not say. */
export async function read(path: string, options: { json?: boolean; settle?: string[] }): Promise<void> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await readFile(path));
  } catch (error) {
    throw new Refused([refuse('file-unreadable', path, `a file that can be read (${(error as { code?: string }).code ?? 'unknown'})`)]);
  }
  const file = readInstrumentFile(bytes, answersOf(options.settle ?? []));
  if (isRefusal(file)) throw new Refused([{ ...file, place: `${path}${file.place === '' ? '' : ` ${file.place}`}` }]);
  const description = describe(file);
  print(options.json === true ? JSON.stringify(toReadJson(description), null, 2) : describeText(description));
}

/** "unit:2=mA" as an answer by its code. */
function answersOf(texts: readonly string[]): Record<string, string> {
  return Object.fromEntries(
    texts.map((text) => {
      const at = text.indexOf('=');
      if (at < 1) throw new Refused([refuse('not-an-answer', text, 'a code and its answer, such as unit:2=mA', { place: '--settle' })]);
      return [text.slice(0, at), text.slice(at + 1)];
    }),
  );
}

/** The documented fields and no others; columns in the order of the file. */
function toReadJson(file: Description): unknown {
  const { encoding, separator, decimalMark, headerRows, unitRow, preamble, rows, timeStepS } = file;
  return {
    encoding,
    separator,
    decimalMark,
    headerRows,
    unitRow,
    preamble,
    rows,
    ...(timeStepS === undefined ? {} : { timeStepS }),
    columns: file.columns.map(({ name, unit, count, missing, first, last, min, max, mean }) => ({
      name,
      unit,
      count,
      missing: missing.count,
      first,
      last,
      min,
      max,
      mean,
    })),
    doubts: file.doubts.map(({ code, question, answers }) => ({ code, question, answers })),
  };
}
