/**
 * The input is wrong: data, never an exception. (A defect, where *we* are wrong, throws; a unit that is wrong is a finding.)
 * One refusal is one sentence to the person: where, what was got, what was expected.
 */
export interface Refusal {
  readonly refused: true;
  /** Stable, kebab-case: what kind of wrong ("unknown-unit"). */
  readonly code: string;
  /** Where: a field of the case ("/exhibits/sweep-1/rows/3/V"), a file with line and column, or "" when the caller knows. */
  readonly place: string;
  /** What stood there, as typed, shortened. */
  readonly got: string;
  /** What would have been understood, as the end of a sentence: "a voltage such as 5.1 V". */
  readonly expected: string;
  /** The nearest thing that exists ("did you mean ..."), when there is one. */
  readonly suggestion?: string;
}

const LONGEST_QUOTE = 160; // characters of the person's text repeated in a message; house choice

export function refuse(code: string, got: string, expected: string, more: { place?: string; suggestion?: string } = {}): Refusal {
  const shown = got.length > LONGEST_QUOTE ? `${got.slice(0, LONGEST_QUOTE)}…` : got;
  const base = { refused: true, code, place: more.place ?? '', got: shown, expected } as const;
  return more.suggestion === undefined ? base : { ...base, suggestion: more.suggestion };
}

export function isRefusal(value: unknown): value is Refusal {
  return typeof value === 'object' && value !== null && (value as { refused?: unknown }).refused === true;
}

/** One sentence for a person. */
export function sentence(refusal: Refusal): string {
  const where = refusal.place === '' ? '' : `${refusal.place}: `;
  const hint = refusal.suggestion === undefined ? '' : `; did you mean "${refusal.suggestion}"?`;
  return `${where}got "${refusal.got}", expected ${refusal.expected}${hint}`;
}
