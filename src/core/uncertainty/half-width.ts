/**
 * Standard uncertainty from a half width a. Source: JCGM 100:2008, 4.3.7 (rectangular), 4.3.9 (triangular), F.2.2.1 (resolution).
 */
export function rectangular(halfWidth: number): number {
  return halfWidth / Math.sqrt(3);
}

export function triangular(halfWidth: number): number {
  return halfWidth / Math.sqrt(6);
}

/** A display that rounds to one step: half a step either way. */
export function resolution(step: number): number {
  return step / Math.sqrt(12);
}
