import type { Finding } from '../../core/result/assessment.ts';

const WHOLE_FROM_K = 10; // below it a kelvin is too coarse to tell two rises apart

/** "rise 91 of 70 K": what was found over what is permitted, above the same ambient. Empty for what is no temperature. */
export function riseText({ rise, measured }: Pick<Finding, 'rise' | 'measured'>): string {
  if (rise === undefined) return '';
  const side = measured !== null && 'side' in measured && measured.side !== undefined ? `${measured.side} ` : '';
  const coarse = [rise.found, rise.permitted].map((kelvin) => kelvin.toFixed(0));
  const isClose = coarse[0] === coarse[1] || Math.abs(rise.found) < WHOLE_FROM_K;
  const [found, permitted] = (isClose ? [rise.found, rise.permitted].map((kelvin) => kelvin.toFixed(1)) : coarse).map((text) =>
    text.replace(/^-/, '\u2212'),
  );
  return `rise ${side}${found} of ${permitted}\u00a0K`;
}
