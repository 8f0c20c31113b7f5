import type { Limit, Outcome, Reason } from '../result/assessment.ts';
import { type Grade, weakestGrade } from '../source/grade.ts';
import { cite, type Source } from '../source/source.ts';
import type { Derived } from '../trace/derived.ts';
import { addForms, uncertaintyOf } from '../trace/leaf.ts';
import type { Note, StepNode } from '../trace/step.ts';
import { normalBelow } from '../uncertainty/normal.ts';

/** A comparison, decided: what the check then dresses with its rung, its subject and its remarks. */
export interface Judgement {
  readonly outcome: Outcome;
  readonly reason: Reason;
  readonly measured: Derived | { readonly word: string } | null;
  readonly limit: LimitLine | null;
  readonly others: readonly LimitLine[];
  readonly margin: number | null;
  readonly marginBand: readonly [number, number] | null;
  /** Of temperatures only: kelvin above the ambient given with them. */
  readonly rise?: { readonly found: number; readonly permitted: number; readonly ambient: number };
  readonly probability: number | null;
  /** False for a failure against a memory-grade limit that is not beyond it by 1.3. */
  readonly headline: boolean;
  readonly notes: readonly Note[];
  readonly fields: readonly string[];
}

/** A limit with its name and what its figures are worth. */
export interface LimitLine {
  readonly name: string;
  readonly kind: Limit['kind'];
  readonly at: Derived | null;
  readonly to?: Derived;
  readonly words?: readonly string[];
  readonly source: Source;
  readonly grade: Grade;
}

export interface DecisionRule {
  readonly passAt: number;
  readonly failAt: number;
}

export const BEYOND = 1.3; // a failure on a memory-grade limit needs this ratio to set the headline (docs/decisions/0003-verdict.md)
const BLIND_BAND = 0.1; // with unknown uncertainty a value within a tenth of the limit is inconclusive
const BAND = 2; // the band drawn is two standard uncertainties either way
const SURE = 0.95;

/** At most this much is allowed. */
export function atMost(value: Derived, limit: LimitLine, rule: DecisionRule, ratio: Ratio = plainAtMost): Judgement {
  return compare(value, limit, 1, rule, ratio);
}

/** At least this much is needed. */
export function atLeast(value: Derived, limit: LimitLine, rule: DecisionRule, ratio: Ratio = plainAtLeast): Judgement {
  return compare(value, limit, -1, rule, ratio);
}

/** Ratio to the limit: 1 at it, above 1 beyond it; null where there is none. */
export type Ratio = (value: number, limit: number) => number | null;
const plainAtMost: Ratio = (value, limit) => (limit === 0 ? null : value / limit);
const plainAtLeast: Ratio = (value, limit) => (value <= 0 ? null : limit / value);

/** Temperatures compare by rise over permitted rise above the same ambient (K). */
export function atMostRise(value: Derived, limit: LimitLine, rule: DecisionRule, ambient: number): Judgement {
  const judgement = atMost(value, limit, rule, (own, at) => (at === ambient ? null : (own - ambient) / (at - ambient)));
  return limit.at === null
    ? judgement
    : { ...judgement, rise: { found: value.value - ambient, permitted: limit.at.value - ambient, ambient } };
}

/** Inside a window: 0 in the middle, 1 at an edge. Decided at the edge that is nearer. */
export function within(value: Derived, limit: LimitLine, rule: DecisionRule): Judgement {
  const { at: least, to: most } = limit;
  if (least === null || most === undefined) throw new Error('a window has two edges');
  const middle = (least.value + most.value) / 2;
  const half = (most.value - least.value) / 2;
  const ratio: Ratio = (one) => Math.abs(one - middle) / half;
  const low = compare(value, { ...limit, at: least }, -1, rule, ratio);
  const high = compare(value, { ...limit, at: most }, 1, rule, ratio);
  const nearer = value.value < middle ? low : high;
  const farther = nearer === low ? high : low;
  // a bound may settle the farther edge alone: above 5.3 V is above 5.25 V whatever the lower edge says
  const [first, second] = farther.outcome === 'fail' ? [farther, nearer] : [nearer, farther];
  const deciding = first.outcome === 'pass' ? second : first;
  const both = low.probability === null || high.probability === null ? null : Math.max(0, low.probability + high.probability - 1);
  const joint = both !== null && deciding.outcome === 'pass' && both < rule.passAt;
  return {
    ...nearer,
    outcome: joint ? 'inconclusive' : deciding.outcome,
    reason: joint ? 'withinUncertainty' : deciding.reason,
    headline: deciding.headline,
    probability: both,
    limit,
  };
}

/** `sign` 1: at most; -1: at least. Slack = sign × (limit - value), conform when it is not negative. */
function compare(value: Derived, limit: LimitLine, sign: 1 | -1, rule: DecisionRule, ratio: Ratio): Judgement {
  const line = limit.at;
  if (line === null) throw new Error(`${limit.name} has no value to compare with`);
  const slack = (own: number, at: number): number => sign * (at - own);
  const u = uncertaintyOf(
    addForms([
      { form: line.form, factor: 1 },
      { form: value.form, factor: -1 },
    ]),
  );
  // with unknown uncertainty nothing is said within a tenth of the limit (of the permitted rise, for temperatures)
  const blind = (own: number, at: number): number => BLIND_BAND * Math.abs(ratio(own, at) === null ? at : at - offsetOf(ratio, at));
  const decide = (own: number, at: number): { outcome: Outcome; reason: Reason; probability: number | null } => {
    const sided = slackSide(value.side, line.side, sign);
    const p = u === null ? null : u === 0 ? (slack(own, at) >= 0 ? 1 : 0) : normalBelow(slack(own, at) / u);
    if (sided === 'cannotTell') return { outcome: 'inconclusive', reason: 'oneSided', probability: null };
    if (sided === 'canOnlyPass') {
      const surely = p === null ? slack(own, at) > blind(own, at) : p >= rule.passAt;
      return surely
        ? { outcome: 'pass', reason: 'met', probability: p }
        : { outcome: 'inconclusive', reason: 'oneSided', probability: null };
    }
    if (sided === 'canOnlyFail') {
      const surely = p === null ? slack(own, at) < -blind(own, at) : p <= rule.failAt;
      // a bound that just touches the limit is beyond it only when the limit itself may not be reached: then it cannot tell
      return surely
        ? { outcome: 'fail', reason: 'notMet', probability: p }
        : { outcome: 'inconclusive', reason: 'oneSided', probability: null };
    }
    if (p === null) {
      if (Math.abs(slack(own, at)) <= blind(own, at)) return { outcome: 'inconclusive', reason: 'uncertaintyUnknown', probability: null };
      return slack(own, at) >= 0
        ? { outcome: 'pass', reason: 'met', probability: null }
        : { outcome: 'fail', reason: 'notMet', probability: null };
    }
    if (p >= rule.passAt) return { outcome: 'pass', reason: 'met', probability: p };
    if (p <= rule.failAt) return { outcome: 'fail', reason: 'notMet', probability: p };
    return { outcome: 'inconclusive', reason: 'withinUncertainty', probability: p };
  };
  let decided = decide(value.value, line.value);
  const branches = [...line.alternatives.map((at) => decide(value.value, at)), ...value.alternatives.map((own) => decide(own, line.value))];
  if (decided.outcome !== 'inconclusive' && branches.some(({ outcome }) => outcome !== decided.outcome))
    decided = { outcome: 'inconclusive', reason: 'branchesDisagree', probability: decided.probability };
  if (decided.outcome === 'pass' && (outOfRange(value.step) || outOfRange(line.step)))
    decided = { ...decided, outcome: 'inconclusive', reason: 'outOfRange' };

  const margin = ratio(value.value, line.value);
  const uValue = value.side === undefined ? u : null;
  const ends = uValue === null ? null : [ratio(value.value - BAND * uValue, line.value), ratio(value.value + BAND * uValue, line.value)];
  const band =
    ends === null || ends[0] == null || ends[1] == null
      ? null
      : ([Math.min(ends[0], ends[1], margin ?? ends[0]), Math.max(ends[0], ends[1])] as const);
  return {
    ...decided,
    measured: value,
    limit,
    others: [],
    margin,
    marginBand: band,
    headline: decided.outcome === 'fail' && (limit.grade !== 'memory' || surelyBeyond(value, line, sign, ratio)),
    notes: [],
    fields: fieldsOf(value.step),
  };
}

type Sided = 'canOnlyPass' | 'canOnlyFail' | 'cannotTell';

/** What bounds on value and limit leave of the comparison: slack is sign × (limit - value), and a bound moves it one way only. */
function slackSide(value: Derived['side'], limit: Derived['side'], sign: 1 | -1): Sided | null {
  const one = (side: Derived['side'], raises: boolean): Sided | null =>
    side === undefined ? null : side === 'anywhere' ? 'cannotTell' : (side === 'above') === raises ? 'canOnlyPass' : 'canOnlyFail';
  const byValue = one(value, sign === -1);
  const byLimit = one(limit, sign === 1);
  if (byValue === null || byLimit === null) return byValue ?? byLimit;
  return byValue === byLimit ? byValue : 'cannotTell';
}

/** Where a ratio has its zero: 0 for plain quantities, the ambient for temperatures. */
function offsetOf(ratio: Ratio, limit: number): number {
  const zero = ratio(0, limit);
  if (zero === null || !Number.isFinite(zero)) return 0;
  return zero < 0 ? (zero * limit) / (zero - 1) : 0; // (0 - a)/(L - a) = zero
}

/** Beyond 1.3 times the limit with probability 0.95: value and limit move by their own doubt. */
function surelyBeyond(value: Derived, line: Derived, sign: 1 | -1, ratio: Ratio): boolean {
  const margin = ratio(value.value, line.value);
  if (margin === null) return true; // zero against an at-least limit: infinitely far
  if (margin < BEYOND) return false;
  const u = uncertaintyOf(
    addForms([
      { form: line.form, factor: BEYOND },
      { form: value.form, factor: -1 },
    ]),
  );
  if (u === null) return false;
  if (u === 0) return true;
  // distance of the value from the place where the ratio is 1.3, in standard uncertainties
  const offset = offsetOf(ratio, line.value);
  const at = sign === 1 ? offset + BEYOND * (line.value - offset) : line.value / BEYOND;
  return normalBelow((sign * (value.value - at)) / u) >= SURE;
}

/** A limit that stands in words: the part is of a kind that is allowed, or it is not. Rule limits have no ratio and count as beyond 1.3. */
export function oneOf(word: string, limit: LimitLine, ok: boolean, fields: readonly string[]): Judgement {
  return {
    outcome: ok ? 'pass' : 'fail',
    reason: ok ? 'met' : 'notMet',
    measured: { word },
    limit,
    others: [],
    margin: null,
    marginBand: null,
    probability: null,
    headline: !ok,
    notes: [],
    fields,
  };
}

/** No comparison was made, for a reason. */
export function undecided(
  outcome: 'notAssessed' | 'notApplicable' | 'inconclusive',
  reason: Reason,
  more: Partial<Judgement> = {},
): Judgement {
  return {
    outcome,
    reason,
    measured: null,
    limit: null,
    others: [],
    margin: null,
    marginBand: null,
    probability: null,
    headline: false,
    notes: [],
    fields: [],
    ...more,
  };
}

/** A limit from a derived value. Its grade is the weakest of the table cells it rests on; readings and formulas do not lower it. */
export function limitLine(name: string, kind: Limit['kind'], at: Derived, to?: Derived): LimitLine {
  const cells = [...cellsOf(at.step), ...(to === undefined ? [] : cellsOf(to.step))];
  const sources = cells.map(({ source }) => source).filter((source) => source !== null);
  const grade = sources.length === 0 ? 'official-text' : weakestGrade(sources.map((source) => source.grade));
  // nothing but what the label prints: the label is as good a source as there is
  const source = sources.find((one) => one.grade === grade) ?? cite('house', 'what the label or the seller prints', 'official-text');
  return { name, kind, at, ...(to === undefined ? {} : { to }), source, grade };
}

/** Table cells and cited constants below a step; estimates of what nobody measured are evidence, not limit. */
function cellsOf(step: StepNode, found: StepNode[] = [], seen = new Set<string>()): StepNode[] {
  if (seen.has(step.id)) return found;
  seen.add(step.id);
  const isCell =
    step.kind === 'lookUp' ||
    (step.kind === 'constant' && step.source !== null && !step.name.startsWith('estimate-') && !step.name.startsWith('setting-'));
  const isMains = step.name.startsWith('iec-60038/'); // the voltage at which a table is entered is a setting, not part of the limit
  if (isCell && !isMains) found.push(step);
  for (const use of step.uses) cellsOf(use.node, found, seen);
  return found;
}

function outOfRange(step: StepNode, seen = new Set<string>()): boolean {
  if (seen.has(step.id)) return false;
  seen.add(step.id);
  return step.notes.some(({ key }) => key === 'outOfRange') || step.uses.some(({ node }) => outOfRange(node, seen));
}

const MOST_FIELDS = 12; // a list longer than this helps nobody; the derivation has all

export function fieldsOf(step: StepNode): string[] {
  const fields = new Set<string>();
  const visit = (node: StepNode): void => {
    if (node.field !== undefined) fields.add(node.field);
    for (const use of node.uses) visit(use.node);
  };
  visit(step);
  return [...fields].slice(0, MOST_FIELDS);
}
