import type { Refusal } from '../../core/quantity/refusal.ts';
import type { CaseState } from './case-state.ts';
import type { CaseSummary } from './case-summary.ts';
import type { Change } from './change.ts';

/**
 * The port to the database of a casebook. What it acknowledges is on disk. Times are given, never taken. It keeps and finds; what an edit
 * means, how edits merge and what a case is worth is decided in `app` and `core`. Where the disk refuses (full, read-only, damaged) and the
 * result has no room for it, a method throws `CasebookRefused`; nothing of the call is then kept.
 */
export interface CasebookStore {
  readonly cases: CaseStore;
  readonly files: FileStore;
  /** A consistent copy into a new file while the casebook is in use. */
  backup(path: string, progress?: (share: number) => void, signal?: AbortSignal): Promise<{ bytes: number } | Refusal>;
  /** Every hash, every reference and every revision: what is wrong, by place. */
  check(progress?: (share: number) => void, signal?: AbortSignal): Promise<CasebookCheck>;
  close(): Promise<void>;
}

export interface CaseStore {
  /** A new case at revision 1. Refused when the id is taken. */
  create(id: string, first: NewRevision & { readonly state: CaseState }): Promise<CaseHead | Refusal>;
  /** A case from another casebook with everything that was ever saved of it, whole or not at all. Refused when the id is taken. */
  admit(id: string, history: CaseHistory): Promise<CaseHead | Refusal>;
  /** Also of a case that was removed. */
  head(id: string): Promise<CaseHead | null>;
  /** The newest kept state at or below `revision` (the newest of all without it) and the revisions after it, in order. */
  read(id: string, revision?: number): Promise<{ head: CaseHead; from: KeptState; since: readonly Revision[] } | null>;
  /** All kept states, in order. */
  states(id: string): Promise<readonly KeptState[]>;
  /** Adds revision `expected + 1`; 'behind' when the case has moved on meanwhile; refused when there is no such case (any more). `state` now and then, so that reading stays short. */
  append(id: string, expected: number, revision: NewRevision, state?: CaseState): Promise<Revision | 'behind' | Refusal>;
  /** Revisions in order, from `first` on. */
  revisions(id: string, first: number, most?: number): Promise<readonly Revision[]>;
  /** What the list of cases shows; the newest one stays when they arrive out of order. */
  writeSummary(id: string, summary: CaseSummary): Promise<void>;
  find(query: CaseQuery): Promise<CasePage>;
  setArchived(id: string, at: string | null): Promise<CaseHead | null>;
  /** Takes a case out of every list; `restore` brings it back whole. */
  remove(id: string, at: string): Promise<boolean>;
  restore(id: string): Promise<CaseHead | null>;
  /** Positions, open panels, acknowledged cautions: small JSON by key, outside history and hash. */
  readScreen(id: string): Promise<Readonly<Record<string, string>>>;
  writeScreen(id: string, key: string, value: string | null): Promise<void>;
  /** A published Assessment, kept as bytes: never changed, never removed. */
  keepAssessment(id: string, kept: KeptAssessment): Promise<void>;
  assessments(id: string): Promise<readonly KeptAssessment[]>;
}

export interface CaseHead {
  readonly id: string;
  readonly revision: number;
  readonly created: string;
  readonly changed: string;
  readonly archived: string | null;
  readonly removed: string | null;
}

export interface NewRevision {
  /** ISO 8601 with zone, given by the caller. */
  readonly at: string;
  /** The tab, command or phone that wrote it. */
  readonly by: string;
  /** Revisions with the same step are one step of undo. */
  readonly step: string;
  /** What it is, for the words: an entry, a paste, an undo; with the place or number that belongs to it. */
  readonly name: { readonly key: string; readonly args: Readonly<Record<string, string | number>> };
  /** Of an undo or a redo: the step it takes back or brings back. */
  readonly of?: string | undefined;
  readonly changes: readonly Change[];
  /** SHA-256 of the canonical text of the state after it. */
  readonly sha256: string;
}
export interface Revision extends NewRevision {
  readonly revision: number;
}
export interface KeptState {
  readonly revision: number;
  readonly state: CaseState;
}
/** All that is kept of a case but its files. */
export interface CaseHistory {
  readonly archived: string | null;
  /** From 1 on, without gaps. */
  readonly revisions: readonly Revision[];
  /** At least that of revision 1. */
  readonly states: readonly KeptState[];
  readonly assessments: readonly KeptAssessment[];
}
export interface KeptAssessment {
  readonly revision: number;
  readonly at: string;
  readonly sha256: string;
  readonly bytes: Uint8Array;
}

export interface CaseQuery {
  /** Words to be found in id, product, name, sample, claims; every one of them must be. */
  readonly search?: string | undefined;
  readonly failure?: readonly string[] | undefined;
  /** Worse of shock and fire. */
  readonly coverage?: readonly string[] | undefined;
  /** A hazard in which something failed. */
  readonly hazard?: readonly string[] | undefined;
  readonly kind?: readonly string[] | undefined;
  readonly claim?: readonly string[] | undefined;
  /** True: only what is archived. False or left out: only what is not. */
  readonly archived?: boolean | undefined;
  readonly sort?: 'verdict' | 'changed' | 'name' | 'leastExamined' | { readonly margin: string } | undefined;
  readonly from: number;
  readonly count: number;
  /** False: without the counts of hazards, kinds and claims, which take longest. */
  readonly counted?: boolean | undefined;
  /** A check: the answer brings where every case of the casebook stands on it. */
  readonly places?: string | undefined;
}

/** All cases on one check, filters left out. */
export interface CheckPlaces {
  readonly check: string;
  /** Ratios in order, the worst first, three digits; above 1 is beyond the limit. */
  readonly ratios: readonly number[];
  /** Failed without a ratio: worse than every ratio. */
  readonly beyond: number;
}

export interface CasePage {
  readonly total: number;
  /** All cases of the casebook, or of its archive: no search, no filter. */
  readonly of: number;
  readonly places?: CheckPlaces;
  /** How many cases each value of a filter would leave, the other filters kept; empty where they were not asked for. */
  readonly counts: {
    readonly failure: Readonly<Record<string, number>>;
    readonly coverage: Readonly<Record<string, number>>;
    readonly hazard: Readonly<Record<string, number>>;
    readonly kind: Readonly<Record<string, number>>;
    readonly claim: Readonly<Record<string, number>>;
  };
  readonly rows: readonly { readonly head: CaseHead; readonly summary: CaseSummary | null }[];
}

export interface FileStore {
  /** Bytes as they come; nothing is seen of them before `finish`. */
  begin(at: string): Promise<Upload>;
  has(sha256: string): Promise<{ bytes: number } | null>;
  /** In chunks, in order; throws `CasebookRefused` when the casebook does not hold it. */
  read(sha256: string): AsyncIterable<Uint8Array>;
  /** Small pictures made of a file, by name ("thumb-320"). */
  readDerived(sha256: string, name: string): Promise<{ media: string; bytes: Uint8Array } | null>;
  writeDerived(sha256: string, name: string, media: string, bytes: Uint8Array): Promise<void>;
  /** Leftovers of uploads that never ended, begun before a time. */
  sweep(before: string): Promise<number>;
}
export interface Upload {
  /** Throws `CasebookRefused` when the file grows beyond 512 MiB or the disk is full; then `abort`. */
  write(chunk: Uint8Array): Promise<void>;
  /** The file is on disk and can be found by its hash; the same bytes are kept once. */
  finish(): Promise<{ sha256: string; bytes: number }>;
  abort(): Promise<void>;
}

export interface CasebookCheck {
  readonly cases: number;
  readonly revisions: number;
  readonly files: number;
  readonly bytes: number;
  readonly wrong: readonly Refusal[];
}
