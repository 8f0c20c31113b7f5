import type { Refusal } from '../core/quantity/refusal.ts';

/** Where a case comes from: a folder today. Everything that touches a disk stands behind this port. */
export interface CaseSource {
  /** The bytes of the case document. */
  readCase(): Promise<Uint8Array | Refusal>;
  /** The bytes of an attached file, by its path as the case names it. Refuses what is missing or lies outside the case. */
  readFile(path: string): Promise<Uint8Array | Refusal>;
}

export const MOST_CASE_BYTES = 2 * 1024 * 1024; // 2 MB of case.json
export const MOST_FILE_BYTES = 512 * 1024 * 1024; // 512 MiB of one attached file
