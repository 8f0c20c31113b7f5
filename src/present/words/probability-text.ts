const PERCENT = 100;
const SURE = 0.999;
const RARE = 0.001;
const NEAR_THE_END = 0.01; // closer to 0 or 1 than this, one decimal is shown

/** A probability the way the report says it. Never "0 %" and never "100 %": neither was measured. */
export function probabilityText(probability: number): string {
  if (probability > SURE) return 'over 99.9\u00a0%';
  if (probability < RARE) return 'under 0.1\u00a0%';
  const fine = probability < NEAR_THE_END || probability > 1 - NEAR_THE_END;
  return `${(probability * PERCENT).toFixed(fine ? 1 : 0)}\u00a0%`;
}
