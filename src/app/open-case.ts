import { type ParseError, parse } from 'jsonc-parser';
import type { Results } from '../core/assess/fresh-results.ts';
import type { Attachment, Case } from '../core/evidence/case.ts';
import { parseCase } from '../core/evidence/parse-case.ts';
import { isRefusal, type Refusal, refuse } from '../core/quantity/refusal.ts';
import { digestOfBytes } from '../core/result/digest.ts';
import type { ReadTable } from '../core/working/bench/bench.ts';
import type { CaseSource } from './case-source.ts';
import { readKeptTable, tableFiles } from './kept-table.ts';
import { resultsOf } from './results-of.ts';

export interface OpenCase {
  readonly one: Case;
  readonly tables: ReadonlyMap<string, ReadTable>;
  /** What computed exhibits keep, by the hash of the file. */
  readonly results: Results;
}

/** Reads a case with its files. Everything wrong comes back at once, as refusals; nothing is judged before all of it is in order. */
export async function openCase(source: CaseSource): Promise<OpenCase | Refusal[]> {
  const bytes = await source.readCase();
  if (isRefusal(bytes)) return [bytes];
  const json = parseJson(bytes);
  if (isRefusal(json)) return [json];
  const one = parseCase(json);
  if (Array.isArray(one)) return one;
  const refusals: Refusal[] = [];
  const tables = new Map<string, ReadTable>();
  const wanted = new Set(tableFiles(one));
  for (const file of one.files) {
    const content = await readAttachment(source, file);
    if (isRefusal(content)) refusals.push(content);
    else if (wanted.has(file)) {
      const read = readKeptTable(content, file);
      if (isRefusal(read))
        refusals.push({ ...read, place: `/files/${file.id} (${file.path})${read.place === '' ? '' : ` ${read.place}`}` });
      else tables.set(file.sha256, read);
    }
  }
  return refusals.length > 0 ? refusals : { one, tables, results: await resultsOf(one, source) };
}

function parseJson(bytes: Uint8Array): unknown {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse('not-utf-8', 'bytes that are no text', 'a case document in UTF-8', { place: 'case.json' });
  }
  const errors: ParseError[] = [];
  const json: unknown = parse(text, errors, { allowTrailingComma: false, disallowComments: true });
  const [first] = errors;
  if (first === undefined) return json;
  const line = text.slice(0, first.offset).split('\n').length;
  return refuse('not-json', text.split('\n')[line - 1]?.trim() ?? '', 'a JSON document', { place: `case.json line ${line}` });
}

async function readAttachment(source: CaseSource, file: Attachment): Promise<Uint8Array | Refusal> {
  const content = await source.readFile(file.path);
  if (isRefusal(content)) return { ...content, place: `/files/${file.id}${content.place}` };
  const digest = digestOfBytes(content);
  if (digest !== file.sha256 || content.length !== file.bytes)
    return refuse(
      'file-changed',
      `${file.path} with ${content.length} bytes and SHA-256 ${digest}`,
      `the file as it was recorded: ${file.bytes} bytes, SHA-256 ${file.sha256}`,
      {
        place: `/files/${file.id}`,
      },
    );
  return content;
}
