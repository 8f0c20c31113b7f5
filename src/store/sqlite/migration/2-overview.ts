import type { Migration } from './migration.ts';

/** What finding among many cases needs. All of it is made of the summaries, so it is filled by indexing every case again. */
export const overview: Migration = {
  version: 2,
  statements: `
    CREATE TABLE overview (
      case_n INTEGER PRIMARY KEY REFERENCES cases (n),
      search TEXT NOT NULL,
      name TEXT,
      sample TEXT,
      failure TEXT,
      failure_rank INTEGER,
      coverage TEXT,
      coverage_rank INTEGER,
      settled REAL
    ) STRICT;
    CREATE TABLE labels (
      field TEXT NOT NULL,
      word TEXT NOT NULL,
      case_n INTEGER NOT NULL REFERENCES cases (n),
      PRIMARY KEY (field, word, case_n)
    ) STRICT, WITHOUT ROWID;
    CREATE INDEX labels_of_case ON labels (case_n);
    -- by case first: its forty or so margins are then written into one page, and not into forty
    CREATE TABLE marks (
      case_n INTEGER NOT NULL REFERENCES cases (n),
      check_id TEXT NOT NULL,
      failed INTEGER NOT NULL,
      margin REAL,
      PRIMARY KEY (case_n, check_id)
    ) STRICT, WITHOUT ROWID;
  `,
  indexAgain: true,
};
