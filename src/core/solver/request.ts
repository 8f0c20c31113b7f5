import type { Circuit, Pins } from './circuit.ts';
import type { ControlCounts, ControlState } from './controller/control-unit.ts';

/** What to look at. A current is counted into the part's first pin; of a transformer, into a winding's first pin. */
export type Quantity =
  | { readonly volts: Pins }
  | { readonly ampsInto: string; readonly winding?: string }
  /** Weighted touch current of a body network: U2 over 500 ohm, ampere; bandwidth in body-network.ts. */
  | { readonly touchOf: string };
export interface Probe {
  readonly id: string;
  readonly of: Quantity;
}
export interface ProbeResult {
  readonly mean: number;
  readonly rms: number;
  readonly least: number;
  readonly most: number;
}
export interface ProbeRefused {
  /** No number: between two islands nothing fixes the voltage. */
  readonly because: 'floating';
}

/** Everything needed to go on, by the names of parts: also after a fault was put in, when some are no longer where they were. */
export interface Snapshot {
  readonly ticks: number;
  readonly states: Readonly<Record<string, number>>;
  readonly regions: Readonly<Record<string, number>>;
  readonly heat: Readonly<Record<string, number>>;
  readonly controllers: Readonly<Record<string, ControlState>>;
}

export interface Effort {
  readonly steps: number;
  readonly rejected: number;
  readonly events: number;
  readonly topologies: number;
}
export interface SolverRequest {
  readonly circuit: Circuit;
  readonly stopS: number;
  /** Given: as the parts' initial values say. */
  readonly start: 'discharged' | 'given' | Snapshot;
  readonly probes: readonly Probe[];
  /** Means, extremes, losses and the energy balance count from here on. */
  readonly fromS: number;
  readonly waveform?: { readonly spacingS: number; readonly fromS: number };
  /** How finely event functions are followed: screening for campaigns, report for what is shown. */
  readonly accuracy: 'screening' | 'report';
  readonly most: { readonly steps: number; readonly topologies: number };
  /** End at the first rating exceeded. */
  readonly endAtRating: boolean;
  /** Time is counted that a probe spends above a level (to the length of a step). */
  readonly above?: { readonly probe: string; readonly level: number };
  readonly cancelled?: () => boolean;
  /** Share of the time that has been simulated. */
  readonly progress?: (share: number) => void;
}

export type Outcome = 'completed' | 'cancelled' | 'budgetSpent' | 'noConsistentState' | 'ratingExceeded';
export interface RunFinding {
  readonly code: 'ratingExceeded' | 'breakdown' | 'fuseOpened' | 'saturated';
  readonly ref: string;
  readonly atS: number;
  /** Volts, or ampere for saturation; null for a fuse. */
  readonly value: number | null;
  readonly limit: number | null;
}
export interface EnergyAccount {
  readonly deliveredJ: number;
  readonly dissipatedJ: number;
  readonly storedJ: number;
  /** (delivered - dissipated - stored) over the largest of them. */
  readonly imbalance: number;
  /** Within one part in a hundred. */
  readonly balanced: boolean;
}
export interface SolverResult {
  readonly outcome: Outcome;
  readonly reachedS: number;
  readonly probes: Readonly<Record<string, ProbeResult | ProbeRefused>>;
  /** Mean heat of each part, and mean power of each source, watt, over the counted time. */
  readonly lossW: Readonly<Record<string, number>>;
  readonly sourceW: Readonly<Record<string, number>>;
  readonly findings: readonly RunFinding[];
  readonly energy: EnergyAccount;
  readonly controllers: Readonly<Record<string, ControlCounts & { running: boolean }>>;
  readonly waveform: { readonly timeS: number[]; readonly values: number[][] } | null;
  readonly end: Snapshot;
  readonly effort: Effort;
}
