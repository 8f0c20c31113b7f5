import type { Plan } from './plan.ts';
import type { BendRegion } from './regions.ts';

/** Heat of fuses and thermistors, kept beside the equations: it moves slowly, and decides now and then which resistance they have. */
export interface HeatState {
  /** A²s for a fuse, kelvin above 25 °C for a thermistor. */
  readonly amount: number[];
  readonly opened: (number | null)[];
}

export const cold = (plan: Plan): HeatState => ({ amount: plan.heated.map(() => 0), opened: plan.heated.map(() => null) });

/** How far a thermistor must cool below a step before it takes the higher resistance again, kelvin: no chatter. House choice. */
const BACK_K = 1;

/**
 * Adds a step in which the voltage across each part went from v0 to v1 (with the value in the middle by the cubic), and answers the modes
 * that change. A fuse gains i² dt and loses holding² / melting integral of it per second, so that the holding current never melts it.
 */
export function heatUp(
  plan: Plan,
  state: HeatState,
  regions: readonly (readonly BendRegion[])[],
  now: Uint8Array,
  seconds: number,
  ticks: number,
  meanSquareOf: (bend: number) => number,
): { readonly bend: number; readonly mode: number }[] {
  const changes: { bend: number; mode: number }[] = [];
  plan.heated.forEach(({ bend, law }, index) => {
    const { siemens, mode } = regions[bend]![now[bend]!]!;
    const voltsSquared = meanSquareOf(bend);
    const amount = state.amount[index]!;
    if (law.kind === 'melts') {
      if (mode === 1) return;
      const cooling = (law.holdingA * law.holdingA) / law.meltingA2s;
      const next = Math.max(0, amount + (siemens * siemens * voltsSquared - cooling * amount) * seconds);
      state.amount[index] = next;
      if (next < law.meltingA2s) return;
      state.opened[index] = ticks;
      changes.push({ bend, mode: 1 });
      return;
    }
    const next = amount + ((siemens * voltsSquared - law.lossWPerK * amount) / law.heatJPerK) * seconds;
    state.amount[index] = next;
    if (mode + 1 < law.riseK.length && next > law.riseK[mode + 1]!) changes.push({ bend, mode: mode + 1 });
    else if (mode > 0 && next < law.riseK[mode]! - BACK_K) changes.push({ bend, mode: mode - 1 });
  });
  return changes;
}
