import type { Case, Exhibit } from '../../core/evidence/case.ts';
import { isRefusal, type Refusal } from '../../core/quantity/refusal.ts';
import type { ReadTable } from '../../core/working/bench/bench.ts';
import { readInstrumentFile } from '../../importer/read-instrument-file.ts';
import type { CaseSource } from '../case-source.ts';
import { toReadTable } from '../to-read-table.ts';

/** Tables read from attached files, kept by the file's hash and what was settled about it: a file is read once, not at every key. */
export class TableShelf {
  readonly #kept = new Map<string, ReadTable | Refusal>();
  readonly #most: number;

  constructor(most = MOST_KEPT) {
    this.#most = most;
  }

  /** The tables that this case takes numbers from, and what could not be read, at the place of its file. */
  async tablesOf(one: Case, source: CaseSource): Promise<{ tables: ReadonlyMap<string, ReadTable>; refusals: readonly Refusal[] }> {
    const wanted = new Set(one.exhibits.flatMap(fileOf));
    const tables = new Map<string, ReadTable>();
    const refusals: Refusal[] = [];
    for (const file of one.files) {
      if (!wanted.has(file.id) || !file.media.startsWith('text/')) continue;
      const key = `${file.sha256} ${JSON.stringify(file.settled ?? {})}`;
      const table = this.#kept.get(key) ?? (await readTable(source, file));
      this.#keep(key, table);
      if (isRefusal(table)) refusals.push({ ...table, place: `/files/${file.id}` });
      else tables.set(file.sha256, table);
    }
    return { tables, refusals };
  }

  #keep(key: string, table: ReadTable | Refusal): void {
    this.#kept.delete(key);
    this.#kept.set(key, table);
    const oldest = this.#kept.keys().next().value;
    if (this.#kept.size > this.#most && oldest !== undefined) this.#kept.delete(oldest);
  }
}

const MOST_KEPT = 64; // tables of at most 2,000 rows

async function readTable(source: CaseSource, file: Case['files'][number]): Promise<ReadTable | Refusal> {
  const content = await source.readFile(file.path);
  if (isRefusal(content)) return content;
  const read = readInstrumentFile(content, file.settled ?? {});
  return isRefusal(read) ? read : toReadTable(read);
}

/** The file that an exhibit takes numbers from. */
function fileOf(exhibit: Exhibit): string[] {
  if ('table' in exhibit) return exhibit.table.file === undefined ? [] : [exhibit.table.file];
  return exhibit.kind === 'capture' || exhibit.kind === 'thermalPicture' ? [exhibit.file] : [];
}
