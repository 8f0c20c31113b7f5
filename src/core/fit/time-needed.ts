import { student95 } from '../uncertainty/student.ts';
import type { Readings } from './bin-readings.ts';
import { type Fitted, inverseOfInformation } from './fit-shape.ts';

const POINTS = 400; // stand for all readings there would be, each with its weight
const LONGEST = 12; // time constants after which more log tells nothing new
const HALVINGS = 18;

/**
 * Seconds of log still needed, at the pace of the readings so far, until half of the 95 % interval of the end is `withinK`; 0 when it is
 * already, null when twelve time constants would not do. The scatter is taken to stay what it is.
 */
export function timeNeeded(fit: Fitted, readings: Readings, withinK: number): number | null {
  const endWithin = (toS: number): number => halfInterval(fit, readings, toS);
  if (endWithin(fit.toS) <= withinK) return 0;
  let enough = fit.fromS + LONGEST * Math.max(...fit.values.filter((_, k) => k > 0 && k % 2 === 0));
  if (enough <= fit.toS || endWithin(enough) > withinK) return null;
  let short = fit.toS;
  for (let k = 0; k < HALVINGS; k += 1) {
    const middle = (short + enough) / 2;
    if (endWithin(middle) <= withinK) enough = middle;
    else short = middle;
  }
  return enough - fit.toS;
}

/** Half of the 95 % interval of the end if the log went on to `toS`. */
function halfInterval(fit: Fitted, { t }: Readings, toS: number): number {
  const span = fit.toS - fit.fromS;
  const pace = fit.readings / span; // readings per second
  const length = toS - fit.fromS;
  const x = Float64Array.from({ length: POINTS }, (_, k) => ((k + 0.5) / POINTS) * (length / span));
  const each = (pace * length) / POINTS;
  const scaled = fit.values.map((value, k) => (k > 0 && k % 2 === 0 ? Math.log(value / span) : value));
  const inverse = inverseOfInformation({ t: x, count: new Float64Array(POINTS).fill(each) }, scaled);
  if (inverse === null) return Number.POSITIVE_INFINITY;
  const now = inverseOfInformation(
    { t: t.map((one) => (one - fit.fromS) / span), count: new Float64Array(t.length).fill(fit.readings / t.length) },
    scaled,
  );
  const ownVariance = fit.covariance[0]![0]!;
  // the same scatter and correlation that the covariance of today holds
  const variance = now === null ? Number.POSITIVE_INFINITY : (ownVariance / now[0]![0]!) * inverse[0]![0]!;
  const freedom = fit.freedom * (length / span);
  return variance > 0 ? student95(freedom) * Math.sqrt(variance) : Number.POSITIVE_INFINITY;
}
