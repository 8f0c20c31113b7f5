/**
 * One independent source of doubt: the gain of a meter's range on one day, the last digits of one reading, the spread of an estimate.
 * Two values that share a leaf move together; that is all there is to "twenty readings with one meter do not beat that meter".
 */
export interface Leaf {
  /** Unique in an assessment, readable: "gain/m1/outputVoltage/0". */
  readonly id: string;
  /** Standard uncertainty of the leaf in its own measure (a share for a gain, an amount for counts). Null is unknown, never zero. */
  readonly u: number | null;
  /** What a reader of the budget calls it: a key for the words, not a sentence. */
  readonly means: string;
  readonly args?: Readonly<Record<string, string | number>>;
  /** Correlation coefficients with other leaves, by their id; both sides carry it. */
  readonly correlated?: ReadonlyMap<string, number>;
}

export interface Term {
  readonly leaf: Leaf;
  /** How far the value moves when the leaf moves by one: dValue/dLeaf. */
  readonly c: number;
}

/** Sparse linear form over leaves, by leaf id. */
export type Form = ReadonlyMap<string, Term>;

export const NO_DOUBT: Form = new Map();

/** Σ factor × form. */
export function addForms(parts: readonly { form: Form; factor: number }[]): Form {
  const sum = new Map<string, Term>();
  for (const { form, factor } of parts) {
    if (factor === 0) continue;
    for (const [id, { leaf, c }] of form) sum.set(id, { leaf, c: (sum.get(id)?.c ?? 0) + factor * c });
  }
  return sum;
}

/**
 * Combined standard uncertainty of a form; null as soon as one leaf that moves it has an unknown one.
 * Source: JCGM 100:2008, 5.1.2 equation (10) and 5.2.2 equation (13) with declared correlations.
 */
export function uncertaintyOf(form: Form): number | null {
  let variance = 0;
  let anyCorrelated = false;
  for (const { leaf, c } of form.values()) {
    if (c === 0) continue;
    if (leaf.u === null) return null;
    variance += c * c * leaf.u * leaf.u;
    anyCorrelated ||= leaf.correlated !== undefined;
  }
  for (const { leaf, c } of anyCorrelated ? form.values() : []) {
    if (c === 0 || leaf.correlated === undefined) continue;
    for (const [otherId, r] of leaf.correlated) {
      const other = otherId > leaf.id ? form.get(otherId) : undefined; // each pair once
      if (other !== undefined) variance += 2 * c * other.c * (leaf.u ?? 0) * (other.leaf.u ?? 0) * r;
    }
  }
  // a doubt too large to be squared is as good as none known
  return Number.isFinite(variance) ? Math.sqrt(Math.max(0, variance)) : null;
}

/** Covariance of two forms. Null when a shared leaf is unknown. Source: JCGM 100:2008, H.2.3 equation (H.9) in its linear form. */
export function covarianceOf(one: Form, two: Form): number | null {
  let sum = 0;
  for (const a of one.values()) {
    for (const b of two.values()) {
      const r = a.leaf.id === b.leaf.id ? 1 : (a.leaf.correlated?.get(b.leaf.id) ?? 0);
      if (r === 0 || a.c === 0 || b.c === 0) continue;
      if (a.leaf.u === null || b.leaf.u === null) return null;
      sum += a.c * b.c * a.leaf.u * b.leaf.u * r;
    }
  }
  return sum;
}
