import type { Lockout } from '../circuit.ts';
import { above, below, type ControlWatch } from './control-unit.ts';

/** Awake or asleep by the supply pin: start and stop voltages, over-voltage trip, latch, and hiccup through the supply's own fall. */
export interface LockoutState {
  running: boolean;
  latched: boolean;
  /** Stopped by a trip: the supply must first fall below the stop voltage. */
  mustFall: boolean;
  starts: number;
}

export const asleep = (): LockoutState => ({ running: false, latched: false, mustFall: false, starts: 0 });

export function lockoutWatches({ startV, stopV, overvoltage }: Lockout, state: LockoutState, supply: number): ControlWatch[] {
  if (state.latched) return [];
  if (state.mustFall) return [below(supply, stopV)];
  if (!state.running) return [above(supply, startV)];
  return [below(supply, stopV), ...(overvoltage === undefined ? [] : [above(supply, overvoltage.volts)])];
}

/** Follows the supply voltage; answers whether the unit has just started or stopped. */
export function followSupply({ startV, stopV, overvoltage }: Lockout, state: LockoutState, volts: number): 'started' | 'stopped' | null {
  if (state.latched) return null;
  if (state.mustFall) {
    if (volts <= stopV) state.mustFall = false;
    return null;
  }
  if (!state.running) {
    if (volts < startV) return null;
    state.running = true;
    state.starts += 1;
    return 'started';
  }
  if (volts <= stopV) {
    state.running = false;
    return 'stopped';
  }
  if (overvoltage === undefined || volts < overvoltage.volts) return null;
  trip(state, overvoltage.after);
  return 'stopped';
}

/** Stops for good, or until the supply has been down. */
export function trip(state: LockoutState, after: 'latch' | 'hiccup'): void {
  state.running = false;
  state.latched = after === 'latch';
  state.mustFall = after === 'hiccup';
}
