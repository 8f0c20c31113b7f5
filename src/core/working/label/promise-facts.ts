import type { Port } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { leastCurrentMeant } from '../../formula/label/least-current-meant.ts';
import { leastPowerMeant } from '../../formula/label/least-power-meant.ts';
import { power } from '../../formula/load/power.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveTyped } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';

/** A current or a power that box, listing or label promise for one output. */
export interface Promised {
  readonly id: string;
  readonly about: string;
  readonly field: string;
  readonly of: 'current' | 'power';
  readonly from: 'label' | 'listing' | 'box';
  readonly port: Port | null;
  readonly printed: Derived;
  /** Printed figures are rounded: the least that this one can stand for. */
  readonly least: Derived;
  /** What the label itself prints for that output; null where it is silent. */
  readonly onLabel: Derived | null;
}

const SAME_VOLTAGE = 0.02; // share of the voltage within which two levels are the same

/** Promises in words, then levels that stand on the box or in the listing. */
export function promises(bench: Bench): Promised[] {
  return [...inWords(bench), ...asLevels(bench)];
}

function inWords(bench: Bench): Promised[] {
  const { ports } = bench.one;
  const labels = exhibitsOf(bench, 'label').filter(({ struck }) => struck === undefined);
  return labels.flatMap((label) =>
    (label.claims ?? []).flatMap((claim): Promised[] => {
      const text = findRead(claim.value);
      const of = text === null ? null : kindOfPromise(text);
      if (text === null || of === null) return [];
      const field = `/exhibits/${label.id}/claims/${claim.id}/value`;
      const port = ports.find(({ id }) => id === claim.of) ?? (claim.of === undefined && ports.length === 1 ? ports[0]! : null);
      const printed = deriveTyped(text, of, field, of === 'power' ? 'claimedPower' : 'claimedCurrent', of === 'power' ? 'P' : 'I');
      const id = labels.length === 1 ? claim.id : `${label.id}-${claim.id}`;
      return [
        {
          id,
          about: claim.text,
          field,
          of,
          from: claim.from ?? 'label',
          port,
          printed,
          least: leastOf(text, of, printed, field),
          onLabel: port === null ? null : labelled(port, of),
        },
      ];
    }),
  );
}

function asLevels(bench: Bench): Promised[] {
  return bench.one.ports.flatMap((port) =>
    port.levels.flatMap((level): Promised[] => {
      const text = findRead(level.printed);
      if (text === null || level.from === undefined || level.from === 'label') return [];
      const field = `/ports/${port.id}/levels/${level.id}/printed`;
      const printed = deriveTyped(text, 'current', field, 'claimedCurrent', 'I');
      const volts = voltsOf(level.voltage);
      const same = port.levels.filter(
        (other) => onTheLabel(other) && volts !== null && Math.abs((voltsOf(other.voltage) ?? 0) - volts) <= SAME_VOLTAGE * volts,
      );
      return [
        {
          id: `${port.id}-${level.id}`,
          about: `${nameOf(bench, port.id)}, ${level.voltage}`,
          field,
          of: 'current',
          from: level.from,
          port,
          printed,
          least: leastOf(text, 'current', printed, field),
          onLabel: greatest(same.map((other) => currentOf(port, other))),
        },
      ];
    }),
  );
}

function kindOfPromise(text: string): 'current' | 'power' | null {
  for (const kind of ['power', 'current'] as const) {
    const quantity = parseQuantity(text, kind);
    if (!isRefusal(quantity) && quantity.value > 0 && quantity.side === undefined) return kind;
  }
  return null;
}

function leastOf(text: string, of: 'current' | 'power', printed: Derived, field: string): Derived {
  const quantity = parseQuantity(text, of);
  if (isRefusal(quantity)) throw new Error(`${field}: ${text} was accepted as a quantity and is none`);
  const digit = given('typed', quantity.lastDigit, printed.unit, { id: `${field}/last-digit`, name: 'lastDigit', symbol: 'd', field });
  return of === 'power'
    ? derive(leastPowerMeant, { printed, digit }, `${field}/least`)
    : derive(leastCurrentMeant, { printed, digit }, `${field}/least`);
}

/** The greatest that the label prints at any level of the port. */
function labelled(port: Port, of: 'current' | 'power'): Derived | null {
  return of === 'power' ? labelledPower(port) : greatest(port.levels.filter(onTheLabel).map((level) => currentOf(port, level)));
}

/** Volts times amperes that the label prints, at the level where they are most. */
export function labelledPower(port: Port): Derived | null {
  return greatest(
    port.levels.filter(onTheLabel).map((level) => {
      const current = currentOf(port, level);
      if (current === null) return null;
      const voltage = deriveTyped(
        level.range?.to ?? level.voltage,
        'voltage',
        `/ports/${port.id}/levels/${level.id}/${level.range === undefined ? 'voltage' : 'range/to'}`,
        'nominalVoltage',
        'V',
      );
      return derive(power, { voltage, current }, `label/${port.id}/${level.id}/power`);
    }),
  );
}

function onTheLabel(level: Port['levels'][number]): boolean {
  return level.from === undefined || level.from === 'label';
}

function currentOf(port: Port, level: Port['levels'][number]): Derived | null {
  const text = findRead(level.printed);
  return text === null ? null : deriveTyped(text, 'current', `/ports/${port.id}/levels/${level.id}/printed`, 'claimedCurrent', 'I');
}

function voltsOf(text: string): number | null {
  const quantity = parseQuantity(text, 'voltage');
  return isRefusal(quantity) ? null : quantity.value;
}

function greatest(list: readonly (Derived | null)[]): Derived | null {
  return list.reduce((one, two) => (one === null || (two !== null && two.value > one.value) ? two : one), null);
}
