/** What the list of cases needs of one case: small, made of its Assessment, and made again when the case or the rules moved. */
export interface CaseSummary {
  /** Revision of the case and hash of the rules that it was made of. */
  readonly revision: number;
  readonly rules: string;
  readonly product: string;
  readonly name: string;
  readonly sample: string;
  readonly invented: boolean;
  readonly failure: string;
  readonly doubtful: string | null;
  readonly coverage: { readonly shock: string; readonly fire: string };
  /** Cells of the coverage, a letter each: s settled, i inconclusive, n not assessed, a not applicable. */
  readonly cells: { readonly shock: string; readonly fire: string };
  /** What decided, in words ready to print. */
  readonly because: string;
  /** Kinds of output socket ("usbC") and the claims ("12 V 2 A") a person may look for. */
  readonly kinds: readonly string[];
  readonly claims: readonly string[];
  /** The worst finding of each check that was judged. */
  readonly marks: readonly CheckMark[];
}

export interface CheckMark {
  readonly check: string;
  readonly hazard: string;
  readonly outcome: string;
  /** Ratio to the limit, above 1 beyond it; null when there is none. */
  readonly margin: number | null;
  readonly band: readonly [number, number] | null;
  readonly value: string;
  readonly rung: string | null;
  readonly finding: string;
}
