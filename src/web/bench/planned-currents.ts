/**
 * Where a sweep is read, as shares of the claim. Quarters are where the average efficiency is taken (Commission Regulation (EU)
 * 2019/1782, annex II); the tenth is the low-load point printed beside it; above the claim steps of a twentieth find the end. The tail
 * is common practice.
 */
const SHARES = [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1, 1.05, 1.1, 1.15, 1.2, 1.25, 1.3];
const STEP_A = 0.005; // what an electronic load on a bench can be set to

/** Currents to set, in ampere, lowest first: none beyond the stop limit, each once. */
export function planCurrents(claimA: number, stopA: number | null): number[] {
  const planned = SHARES.map((share) => Math.round((share * claimA) / STEP_A) * STEP_A);
  const allowed = planned.filter((current) => stopA === null || current <= stopA + STEP_A / 2);
  return [...new Set(allowed.map((current) => current.toFixed(3)))].map(Number);
}

/** "0 0.5 1,0 A" as currents; null when something in it is no number. */
export function readCurrents(text: string): number[] | null {
  const parts = text
    .replaceAll(/\bA\b/g, ' ')
    .split(/[\s;]+/)
    .filter((part) => part !== '');
  const currents = parts.map((part) => Number(part.replace(',', '.')));
  return currents.every((current) => Number.isFinite(current) && current >= 0) ? currents : null;
}

/** Three decimals: a milliampere, as loads show it. */
export function currentText(current: number): string {
  return current.toFixed(3);
}
