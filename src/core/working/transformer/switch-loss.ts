import { derive } from '../../formula/derive.ts';
import { clampedPeak } from '../../formula/magnetics/clamped-peak.ts';
import { crossingLoss } from '../../formula/magnetics/crossing-loss.ts';
import { heatInResistance } from '../../formula/magnetics/heat-in-resistance.ts';
import { switchPlateau } from '../../formula/magnetics/switch-plateau.ts';
import { combine } from '../../trace/combine.ts';
import type { Derived } from '../../trace/derived.ts';
import type { OperatingPoint } from './converter-facts.ts';
import { lacking, type NumberList } from './number-list.ts';

interface SwitchInputs {
  /** Resistance while it is closed, hot. */
  readonly resistance: Derived | null;
  /** Times in which its current falls and rises. */
  readonly fall: Derived | null;
  readonly rise: Derived | null;
  readonly clamp: Derived | null;
  readonly reflected: Derived | null;
  readonly rms: Derived | null;
}

/** What the switch turns into heat at an operating point: while closed, while it opens, and while it closes where the current does not start from nothing. */
export function tellSwitchLoss(list: NumberList, at: OperatingPoint, inputs: SwitchInputs, id: string): void {
  const { resistance, fall, rise, clamp, reflected, rms } = inputs;
  const { frequency, peak, rail } = at;
  const closed = resistance === null || rms === null ? null : derive(heatInResistance, { rms, resistance }, `${id}/switch-closed`);
  list.tell('switchClosed', closed, lacking({ switchResistance: resistance }));
  const plateau = reflected === null ? null : derive(switchPlateau, { rail, reflected }, `${id}/plateau-at-point`);
  const opensTo = clamp === null ? plateau : derive(clampedPeak, { rail, clamp }, `${id}/peak-at-point`);
  const opening =
    fall === null || opensTo === null
      ? null
      : derive(crossingLoss, { current: peak, voltage: opensTo, time: fall, frequency }, `${id}/switch-opening`);
  list.tell('switchOpening', opening, lacking({ fallTime: fall }));
  // a discontinuous stroke starts without current, and at a boundary too: nothing crosses
  const starts = at.rise === null ? null : startOf(peak, at.rise, `${id}/stroke-start`);
  const closing =
    starts === null || rise === null || plateau === null
      ? null
      : derive(crossingLoss, { current: starts, voltage: plateau, time: rise, frequency }, `${id}/switch-closing`);
  list.tell('switchClosing', closing, starts === null ? [] : lacking({ riseTime: rise }));
  const parts = { closed, opening, ...(starts === null ? {} : { closing }) };
  const known = Object.entries(parts).flatMap(([key, part]) => (part === null ? [] : [[key, part] as const]));
  if (known.length === Object.keys(parts).length) list.tell('switchLoss', sumOf(Object.fromEntries(known), `${id}/switch-loss`), []);
}

function startOf(peak: Derived, rise: Derived, id: string): Derived {
  return combine(
    {
      kind: 'reduce',
      unit: 'A',
      formula: null,
      symbols: { peak: 'I_pk', rise: 'dI' },
      moves: { peak: 'up', rise: 'down' },
      compute: (plain) => plain.peak - plain.rise,
    },
    { peak, rise },
    { id, name: 'startOfStroke', symbol: 'I_0' },
  );
}

function sumOf(parts: Readonly<Record<string, Derived>>, id: string): Derived {
  const keys = Object.keys(parts);
  return combine(
    {
      kind: 'reduce',
      unit: 'W',
      formula: null,
      symbols: Object.fromEntries(keys.map((key) => [key, `P_${key}`])),
      moves: Object.fromEntries(keys.map((key) => [key, 'up' as const])),
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0),
    },
    parts,
    { id, name: 'lossesOfSwitch', symbol: 'P' },
  );
}
