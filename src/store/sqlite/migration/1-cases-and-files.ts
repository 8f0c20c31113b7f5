import type { Migration } from './migration.ts';

/** Everything that cannot be made again: cases with every revision, kept states, published Assessments, files. */
export const casesAndFiles: Migration = {
  version: 1,
  statements: `
    CREATE TABLE cases (
      n INTEGER PRIMARY KEY,
      id TEXT NOT NULL UNIQUE,
      revision INTEGER NOT NULL CHECK (revision >= 1),
      created TEXT NOT NULL,
      changed TEXT NOT NULL,
      archived TEXT,
      removed TEXT
    ) STRICT;
    -- apart from the cases, which are gone through at every search and must stay narrow
    CREATE TABLE summaries (
      case_n INTEGER PRIMARY KEY REFERENCES cases (n),
      revision INTEGER NOT NULL,
      body TEXT NOT NULL
    ) STRICT;
    CREATE TABLE revisions (
      case_n INTEGER NOT NULL REFERENCES cases (n),
      revision INTEGER NOT NULL CHECK (revision >= 1),
      at TEXT NOT NULL,
      writer TEXT NOT NULL,
      step TEXT NOT NULL,
      name TEXT NOT NULL,
      of_step TEXT,
      changes TEXT NOT NULL,
      sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
      PRIMARY KEY (case_n, revision)
    ) STRICT;
    CREATE TABLE states (
      case_n INTEGER NOT NULL,
      revision INTEGER NOT NULL,
      body TEXT NOT NULL,
      PRIMARY KEY (case_n, revision),
      FOREIGN KEY (case_n, revision) REFERENCES revisions (case_n, revision)
    ) STRICT;
    CREATE TABLE assessments (
      case_n INTEGER NOT NULL,
      revision INTEGER NOT NULL,
      at TEXT NOT NULL,
      sha256 TEXT NOT NULL,
      body BLOB NOT NULL,
      PRIMARY KEY (case_n, revision, sha256),
      FOREIGN KEY (case_n, revision) REFERENCES revisions (case_n, revision)
    ) STRICT;
    CREATE TABLE screens (
      case_n INTEGER NOT NULL REFERENCES cases (n),
      key TEXT NOT NULL,
      value TEXT NOT NULL,
      PRIMARY KEY (case_n, key)
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE files (
      n INTEGER PRIMARY KEY,
      begun TEXT NOT NULL,
      sha256 TEXT UNIQUE CHECK (length(sha256) = 64),
      bytes INTEGER
    ) STRICT;
    CREATE TABLE chunks (
      file_n INTEGER NOT NULL REFERENCES files (n) ON DELETE CASCADE,
      place INTEGER NOT NULL,
      body BLOB NOT NULL,
      PRIMARY KEY (file_n, place)
    ) STRICT;
    CREATE TABLE derived (
      file_n INTEGER NOT NULL REFERENCES files (n) ON DELETE CASCADE,
      name TEXT NOT NULL,
      media TEXT NOT NULL,
      body BLOB NOT NULL,
      PRIMARY KEY (file_n, name)
    ) STRICT;
  `,
  indexAgain: false,
};
