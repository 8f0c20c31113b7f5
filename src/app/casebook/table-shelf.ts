import type { Case } from '../../core/evidence/case.ts';
import { isRefusal, type Refusal } from '../../core/quantity/refusal.ts';
import type { ReadTable } from '../../core/working/bench/bench.ts';
import type { CaseSource } from '../case-source.ts';
import { readKeptTable, tableFiles } from '../kept-table.ts';

/** Tables read from attached files, kept by the file's hash and what was settled about it: a file is read once, not at every key. */
export class TableShelf {
  readonly #kept = new Map<string, ReadTable | Refusal>();
  readonly #most: number;

  constructor(most = MOST_KEPT) {
    this.#most = most;
  }

  /** The tables that this case takes numbers from, and what could not be read, at the place of its file. */
  async tablesOf(one: Case, source: CaseSource): Promise<{ tables: ReadonlyMap<string, ReadTable>; refusals: readonly Refusal[] }> {
    const tables = new Map<string, ReadTable>();
    const refusals: Refusal[] = [];
    for (const file of tableFiles(one)) {
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
  return isRefusal(content) ? content : readKeptTable(content, file);
}
