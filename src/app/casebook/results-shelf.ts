import type { Results } from '../../core/assess/fresh-results.ts';
import type { Case } from '../../core/evidence/case.ts';
import type { CaseSource } from '../case-source.ts';
import { resultFiles, resultsOf } from '../results-of.ts';

const MOST_KEPT = 64; // sets of results, about one a case
const NONE: Results = new Map();

/** What computed exhibits keep, by the hashes of their files: read once, not at every key, and the same object while the files are the same. */
export class ResultsShelf {
  readonly #kept = new Map<string, Results>();

  async resultsOf(one: Case, source: CaseSource): Promise<Results> {
    const files = resultFiles(one);
    if (files.length === 0) return NONE;
    const key = files.map(({ sha256 }) => sha256).join(' ');
    const known = this.#kept.get(key);
    const results = known ?? (await resultsOf(one, source));
    this.#kept.delete(key);
    if (results.size < new Set(files.map(({ sha256 }) => sha256)).size) return results; // a file that is not there yet may come
    this.#kept.set(key, results);
    const oldest = this.#kept.keys().next().value;
    if (this.#kept.size > MOST_KEPT && oldest !== undefined) this.#kept.delete(oldest);
    return results;
  }
}
