import type { Generated } from 'kysely';

/** The tables of the newest version as Kysely sees them; what makes them is in `migration/`. Times are ISO 8601 text, bodies are JSON text. */
export interface CasebookTables {
  cases: {
    n: Generated<number>;
    id: string;
    revision: number;
    created: string;
    changed: string;
    archived: string | null;
    removed: string | null;
  };
  summaries: { case_n: number; revision: number; body: string };
  revisions: {
    case_n: number;
    revision: number;
    at: string;
    writer: string;
    step: string;
    name: string;
    /** The step that this one takes back or brings back. */
    of_step: string | null;
    changes: string;
    sha256: string;
  };
  states: { case_n: number; revision: number; body: string };
  assessments: { case_n: number; revision: number; at: string; sha256: string; body: Uint8Array };
  screens: { case_n: number; key: string; value: string };
  /** `sha256` and `bytes` are null until the upload ends: such a file is seen by nobody. */
  files: { n: Generated<number>; begun: string; sha256: string | null; bytes: number | null };
  chunks: { file_n: number; place: number; body: Uint8Array };
  derived: { file_n: number; name: string; media: string; body: Uint8Array };
  /** One row a case, made of its summary, for finding and sorting; columns are null until there is one. */
  overview: {
    case_n: number;
    search: string;
    name: string | null;
    sample: string | null;
    failure: string | null;
    /** 0 is the worst. */
    failure_rank: number | null;
    coverage: string | null;
    /** 0 is the least examined. */
    coverage_rank: number | null;
    /** Share of the cells of shock and fire that apply and are settled, 0 to 1. */
    settled: number | null;
  };
  /** What a case can be filtered by, several of each: kinds of output socket, claims, hazards in which something failed. */
  labels: { field: LabelField; word: string; case_n: number };
  marks: { check_id: string; case_n: number; failed: number; margin: number | null };
}

export type LabelField = 'kind' | 'claim' | 'hazard';
