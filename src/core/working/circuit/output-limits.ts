import { derive } from '../../formula/derive.ts';
import { setPointAtLimits } from '../../formula/feedback/set-point-at-limits.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { NO_DOUBT } from '../../trace/leaf.ts';
import { drawsFor } from '../../uncertainty/draws.ts';
import type { SetPoint } from './set-points.ts';

/** Where the output can lie over all samples with these parts. */
export interface OutputLimits {
  readonly least: Derived;
  readonly most: Derived;
  /** Of the seeded draws, V: the ends between which 95 of 100 lie, and the outermost. */
  readonly drawn: { readonly draws: number; readonly least: number; readonly low: number; readonly high: number; readonly most: number };
}

const DRAWS = 4000; // enough for the 2.5 % ends to settle within a few millivolts of a 12 V output
const LOW_END = 0.025;

/** Every part at the edge of its tolerance at once, and drawn at random inside it. Null where a tolerance is not known. */
export function outputLimits({ id, divider }: SetPoint): OutputLimits | null {
  const share = divider?.reference.share ?? null;
  if (divider === null || share === null) return null;
  const { reference, upper, lower } = divider;
  if (upper.share >= 1 || lower.share >= 1) return null; // a part that may be nothing at all bounds nothing
  const plain = (derived: Derived): Derived => ({ ...derived, form: NO_DOUBT });
  const tolerance = (which: string, value: number, symbol: string): Derived =>
    given('constant', value, '1', { id: `circuit/limits/${id}/${which}`, name: `tolerance`, symbol });
  const edge = (which: 'least' | 'most', sign: 1 | -1): Derived => {
    const most = which === 'most' ? reference.pinCurrentMost : null;
    const current = most ?? given('constant', 0, 'A', { id: 'circuit/limits/no-current', name: 'estimate-no-pin-current', symbol: 'I_r' });
    return derive(
      setPointAtLimits,
      {
        reference: plain(reference.voltage),
        referenceShare: share,
        upper: upper.nominal,
        upperShare: tolerance('upper', upper.share, 'b'),
        lower: lower.nominal,
        lowerShare: tolerance('lower', lower.share, 'c'),
        current,
        sign: given('constant', sign, '1', { id: `circuit/sign-${which}`, name: `edge-${which}`, symbol: 's' }),
      },
      `circuit/limits/${id}/${which}`,
    );
  };
  return {
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
  return { draws: DRAWS, least: outputs[0]!, low: at(LOW_END), high: at(1 - LOW_END), most: outputs[DRAWS - 1]! };
}
