import { inverse, Matrix } from 'ml-matrix';
import type { Core } from './plan.ts';

/** Regions of a core: 0 unsaturated, 1 and 2 beyond its limit with positive or negative magnetising current. */
export interface CoilLaw {
  /** Winding currents = gamma (fluxes - offset). */
  readonly gamma: readonly (readonly number[])[];
  readonly offset: readonly number[];
}

/** Currents of the windings by their fluxes: L = M n nᵀ + leakages, where M falls beyond saturation. Flux in volt-seconds. */
export function coilLaw(core: Core, region: number): CoilLaw {
  const { magnetisingH, windings, saturation } = core;
  const share = region === 0 || saturation === null ? 1 : saturation.share;
  const beyond = region === 0 || saturation === null ? 0 : (region === 1 ? 1 : -1) * (1 - share) * magnetisingH * saturation.amps;
  const l = new Matrix(
    windings.map((one, i) => windings.map((other, j) => share * magnetisingH * one.ratio * other.ratio + (i === j ? one.leakageH : 0))),
  );
  return { gamma: inverse(l).to2DArray(), offset: windings.map(({ ratio }) => beyond * ratio) };
}

/** Energy in a core at given fluxes and currents, joule: ½ λ i, less what the bend of a saturated core cuts off. */
export function coreEnergy(core: Core, region: number, fluxes: readonly number[], currents: readonly number[]): number {
  const half = fluxes.reduce((sum, flux, index) => sum + (flux * currents[index]!) / 2, 0);
  if (region === 0 || core.saturation === null) return half;
  // ∫ i dλ along the two straight pieces is less than ½ λ i by ½ offset (i_m - i_s) of the magnetising branch
  const magnetising = currents.reduce((sum, amps, index) => sum + amps * core.windings[index]!.ratio, 0);
  const { amps, share } = core.saturation;
  const beyond = (1 - share) * core.magnetisingH * amps;
  return half - (beyond * (Math.abs(magnetising) - amps)) / 2;
}
