/** One step from a version of the casebook file to the next. A released one is never edited. */
export interface Migration {
  readonly version: number;
  /** SQL, run in one transaction with whatever follows it. */
  readonly statements: string;
  /** Whether the tables for finding are made again from the summaries afterwards. */
  readonly indexAgain: boolean;
}
