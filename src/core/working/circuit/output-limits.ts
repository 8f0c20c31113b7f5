import { derive } from '../../formula/derive.ts';
import { setPointAtLimits } from '../../formula/feedback/set-point-at-limits.ts';
import { setPointSpread } from '../../formula/feedback/set-point-spread.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { NO_DOUBT } from '../../trace/leaf.ts';
import { drawsFor } from '../../uncertainty/draws.ts';
import type { SetPoint } from './set-points.ts';

/** Where the output can lie over all samples with these parts. */
export interface OutputLimits {
  readonly least: Derived;
  readonly most: Derived;
  /** Half width when each part strays by itself, as a root of the sum of squares. */
  readonly spread: Derived;
  /** Of the seeded draws, V: the ends between which 95 of 100 lie, the outermost, and how many fell into each of equal steps between those. */
  readonly drawn: {
    readonly draws: number;
    readonly least: number;
    readonly low: number;
    readonly high: number;
    readonly most: number;
    readonly counts: readonly number[];
  };
}

const DRAWS = 4000; // enough for the 2.5 % ends to settle within a few millivolts of a 12 V output
const LOW_END = 0.025;
const BINS = 25; // steps of the picture: with 4000 draws the fullest holds some hundreds

const KNOWN = new WeakMap<SetPoint, OutputLimits | null>();

/** Every part at the edge of its tolerance at once, and drawn at random inside it. Null where a tolerance is not known. Worked out once for a set point. */
export function outputLimits(point: SetPoint): OutputLimits | null {
  const known = KNOWN.get(point);
  if (known !== undefined) return known;
  const found = workOut(point);
  KNOWN.set(point, found);
  return found;
}

function workOut({ id, divider }: SetPoint): OutputLimits | null {
  const share = divider?.reference.share ?? null;
  if (divider === null || share === null) return null;
  const { reference, upper, lower } = divider;
  if (upper.share >= 1 || lower.share >= 1) return null; // a part that may be nothing at all bounds nothing
  const plain = (derived: Derived): Derived => ({ ...derived, form: NO_DOUBT });
  const tolerance = (which: string, value: number, symbol: string): Derived =>
    given('constant', value, '1', { id: `circuit/limits/${id}/${which}`, name: `tolerance`, symbol });
  const none = given('constant', 0, 'A', { id: 'circuit/limits/no-current', name: 'estimate-no-pin-current', symbol: 'I_r' });
  const parts = {
    reference: plain(reference.voltage),
    referenceShare: share,
    upper: upper.nominal,
    upperShare: tolerance('upper', upper.share, 'b'),
    lower: lower.nominal,
    lowerShare: tolerance('lower', lower.share, 'c'),
  };
  const most = reference.pinCurrentMost ?? none;
  const edge = (which: 'least' | 'most', sign: 1 | -1): Derived =>
    derive(
      setPointAtLimits,
      {
        ...parts,
        current: which === 'most' ? most : none,
        sign: given('constant', sign, '1', { id: `circuit/sign-${which}`, name: `edge-${which}`, symbol: 's' }),
      },
      `circuit/limits/${id}/${which}`,
    );
  return {
    spread: derive(setPointSpread, { ...parts, current: most }, `circuit/spread/${id}`),
    least: edge('least', -1),
    most: edge('most', 1),
    drawn: drawOutputs(id, reference.voltage.value, share.value, upper, lower, reference.pinCurrentMost?.value ?? 0),
  };
}

/** Uniform inside each tolerance; the pin current anywhere from nothing to its most. Seeded by the figures themselves. */
function drawOutputs(
  id: string,
  voltage: number,
  share: number,
  upper: { nominal: Derived; share: number },
  lower: { nominal: Derived; share: number },
  pinCurrent: number,
): OutputLimits['drawn'] {
  const draw = drawsFor(
    `set-point/${id}/${voltage}/${share}/${upper.nominal.value}/${upper.share}/${lower.nominal.value}/${lower.share}/${pinCurrent}`,
  );
  const around = (value: number, width: number): number => value * (1 + width * (2 * draw() - 1));
  const outputs = Array.from({ length: DRAWS }, () => {
    const r1 = around(upper.nominal.value, upper.share);
    return around(voltage, share) * (1 + r1 / around(lower.nominal.value, lower.share)) + pinCurrent * draw() * r1;
  }).sort((a, b) => a - b);
  const at = (part: number): number => outputs[Math.min(DRAWS - 1, Math.floor(part * DRAWS))]!;
  const [least, most] = [outputs[0]!, outputs[DRAWS - 1]!];
  const counts = new Array<number>(BINS).fill(0);
  for (const output of outputs) counts[Math.min(BINS - 1, Math.floor(((output - least) / (most - least || 1)) * BINS))]! += 1;
  return { draws: DRAWS, least, low: at(LOW_END), high: at(1 - LOW_END), most, counts };
}
