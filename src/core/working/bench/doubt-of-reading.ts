import type { Instrument, InstrumentRange, Role } from '../../evidence/instrument.ts';
import { ROLES } from '../../evidence/instrument.ts';
import { type Accuracy, parseAccuracy } from '../../quantity/accuracy.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal, type Refusal } from '../../quantity/refusal.ts';
import { ZERO_CELSIUS_K } from '../../quantity/unit.ts';
import { doubtOf } from '../../trace/derived.ts';
import { addForms, type Form, type Leaf } from '../../trace/leaf.ts';
import { rectangular, resolution } from '../../uncertainty/half-width.ts';

const EXPANDED = 2; // k of a data sheet that states an expanded uncertainty

/** What a channel of an instrument does to one reading. `value` is SI; `field` names the reading. */
export interface ReadingOf {
  readonly instrument: Instrument;
  readonly role: Role;
  readonly day: string;
  readonly field: string;
  readonly value: number;
  /** One step of the last digit as typed, in SI; used when the range states no resolution. */
  readonly lastDigit: number;
}

/**
 * The doubt of one reading by the instrument's statement. The percent part is one leaf per range and day, so that readings taken with one
 * meter move together; the digits are a leaf of their own for each reading; a fixed amount is shared like the percent part.
 * Null when the instrument says nothing about this role or this size.
 */
export function doubtOfReading(reading: ReadingOf): Form | null {
  const range = rangeFor(reading);
  if (range === null) return null;
  const { accuracy, index } = range;
  if (isRefusal(accuracy)) return null; // refused when the case was read
  const step = range.resolution ?? reading.lastDigit;
  const shared = `${reading.instrument.id}/${reading.role}/${index}/${reading.day}`;
  const shown = ROLES[reading.role] === 'temperature' ? reading.value - ZERO_CELSIUS_K : reading.value; // "% of reading" is of the degrees shown
  const parts = partsThatCount(accuracy, shown, step);
  const halves = {
    gain: parts.ofReading ? accuracy.ofReading * Math.abs(shown) : 0,
    offset: parts.fixed ? accuracy.fixed : 0,
    digits: parts.digits ? accuracy.digits * step : 0,
  };
  const forms: { form: Form; factor: number }[] = [];
  const args = { instrument: reading.instrument.name };
  const u = (halfWidth: number): number => uOf(halfWidth, range.basis);
  if (parts.ofReading)
    forms.push({ form: doubtOf({ id: `gain/${shared}`, u: u(accuracy.ofReading), means: 'gain', args }), factor: shown });
  const offset = parts.digits ? halves.offset : remainder(halves.offset, halves.gain);
  if (parts.fixed) forms.push({ form: doubtOf({ id: `offset/${shared}`, u: u(offset), means: 'offset', args }), factor: 1 });
  if (parts.digits) {
    const digits = remainder(halves.digits, halves.gain, halves.offset);
    forms.push({ form: doubtOf({ id: `digits/${reading.field}`, u: u(digits), means: 'digits', args }), factor: 1 });
  } else forms.push({ form: doubtOf(resolutionLeaf(reading.field, step)), factor: 1 });
  return addForms(forms);
}

/**
 * What the last part must be so that all together make one rectangle as wide as the sheet's whole bound: sheets add their parts, and two
 * rectangles side by side would promise more than the sheet does. The shared parts keep their own size, so that readings of one meter stay tied.
 */
function remainder(own: number, ...shared: readonly number[]): number {
  const whole = shared.reduce((sum, half) => sum + half, own);
  const together = Math.hypot(...shared);
  // as a product, so that an absurd accuracy overflows nothing
  return Math.sqrt(Math.max(0, whole - together)) * Math.sqrt(whole + together);
}

/** The last digit alone, for a reading whose meter does not count it among its digits. */
function resolutionLeaf(field: string, step: number): Leaf {
  return { id: `resolution/${field}`, u: resolution(step), means: 'resolution' };
}

function partsThatCount(accuracy: Accuracy, shown: number, step: number): { ofReading: boolean; fixed: boolean; digits: boolean } {
  const has = { ofReading: accuracy.ofReading > 0, fixed: accuracy.fixed > 0, digits: accuracy.digits > 0 };
  if (!accuracy.greater) return has;
  const sizes = { ofReading: accuracy.ofReading * Math.abs(shown), fixed: accuracy.fixed, digits: accuracy.digits * step };
  const most = Math.max(sizes.ofReading, sizes.fixed, sizes.digits);
  return {
    ofReading: sizes.ofReading === most,
    fixed: sizes.fixed === most && sizes.ofReading !== most,
    digits: sizes.digits === most && most !== sizes.fixed && most !== sizes.ofReading,
  };
}

function uOf(halfWidth: number, basis: InstrumentRange['basis']): number {
  if (basis === 'standard') return halfWidth;
  return basis === 'expanded2' ? halfWidth / EXPANDED : rectangular(halfWidth);
}

/** A range with its texts read once. */
interface ReadRange {
  readonly index: number;
  readonly basis: InstrumentRange['basis'];
  readonly accuracy: Accuracy | Refusal;
  readonly upTo: number;
  readonly resolution: number | null;
}

const READ = new WeakMap<Instrument, Map<Role, readonly ReadRange[]>>();

/** The ranges of an instrument for a role, smallest first. */
function rangesOf(instrument: Instrument, role: Role): readonly ReadRange[] {
  const byRole = READ.get(instrument) ?? new Map<Role, readonly ReadRange[]>();
  READ.set(instrument, byRole);
  const known = byRole.get(role);
  if (known !== undefined) return known;
  const ranges = instrument.ranges
    .map((range, index) => ({ range, index }))
    .filter(({ range }) => range.of === role)
    .map(({ range, index }) => ({
      index,
      basis: range.basis,
      accuracy: parseAccuracy(range.accuracy, ROLES[role]),
      upTo: inSi(range.upTo, role) ?? Number.POSITIVE_INFINITY,
      resolution: inSi(range.resolution, role),
    }))
    .sort((a, b) => a.upTo - b.upTo);
  byRole.set(role, ranges);
  return ranges;
}

/** The smallest range that holds the reading; an unlimited one counts as the largest. */
function rangeFor(reading: ReadingOf): ReadRange | null {
  return rangesOf(reading.instrument, reading.role).find(({ upTo }) => Math.abs(reading.value) <= upTo) ?? null;
}

function inSi(text: string | undefined, role: Role): number | null {
  if (text === undefined) return null;
  const kind = ROLES[role];
  const read = parseQuantity(text, kind === 'temperature' && !/°|C$/.test(text) ? 'temperatureDifference' : kind);
  return isRefusal(read) ? null : read.value;
}
