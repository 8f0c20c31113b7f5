import type { Derived } from '../../trace/derived.ts';

/** A worked number of a transformer, by the key of its words. */
export interface WorkedNumber {
  readonly key: string;
  readonly about?: string;
  readonly at: Derived;
}

/** A number that could not be worked out, with the keys of what is missing for it. */
export interface BlockedNumber {
  readonly key: string;
  readonly missing: readonly string[];
}

/** What was worked out and what was not, in the order in which it is told. */
export class NumberList {
  readonly numbers: WorkedNumber[] = [];
  readonly blocked: BlockedNumber[] = [];

  /** A number joins the list, or what is missing for it does; one that nobody would ask for (nothing missing) leaves no line. */
  tell(key: string, at: Derived | null, missing: readonly string[], about?: string): void {
    if (at !== null) this.numbers.push({ key, at, ...(about === undefined ? {} : { about }) });
    else if (missing.length > 0) this.blocked.push({ key, missing: [...new Set(missing)] });
  }
}

/** Names of those that are not known. */
export function lacking(wanted: Readonly<Record<string, Derived | null>>): string[] {
  return Object.keys(wanted).filter((key) => wanted[key] === null);
}
