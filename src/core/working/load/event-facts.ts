import type { ExhibitOf } from '../../evidence/case.ts';
import type { Role } from '../../evidence/instrument.ts';
import type { Port } from '../../evidence/sample.ts';
import { parseQuantity, type Quantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Kind } from '../../quantity/unit.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { type Opened, openValue } from '../bench/open-value.ts';
import { otherLoads } from './other-loads.ts';

export type Event = ExhibitOf<'event'>;
export type What = Event['what'];
type Name = Event['readings'][number]['name'];

export interface EventReading {
  readonly event: Event;
  readonly name: Name;
  readonly field: string;
  readonly opened: Opened<string>;
  /** Null where there is no reading, or its text is no quantity of that kind. */
  readonly value: Derived | null;
  /** What one step of the last digit written is worth; null where there is no value. */
  readonly lastDigit: number | null;
}

const KIND: Readonly<Record<Name, Kind>> = {
  peak: 'voltage',
  trough: 'voltage',
  settled: 'voltage',
  seconds: 'time',
  inputPower: 'power',
  current: 'current',
};
/** Peaks and troughs come from a scope, what has settled from a meter. Time has no instrument of its own. */
const ROLE: Readonly<Record<Name, Role | null>> = {
  peak: 'scope',
  trough: 'scope',
  settled: 'outputVoltage',
  seconds: null,
  inputPower: 'inputPower',
  current: 'outputCurrent',
};
const SYMBOL: Readonly<Record<Name, string>> = { peak: 'V_p', trough: 'V_t', settled: 'V', seconds: 't', inputPower: 'P_i', current: 'I' };

/** Kinds of event whose tries count for the unit; whose voltages count at a level; in which the seconds of a drop-out count. */
const TRIED: readonly What[] = ['plugIn', 'start', 'step', 'brownOut', 'negotiation'];
const READ_AT_A_LEVEL: readonly What[] = ['plugIn', 'unplug', 'start', 'step', 'brownOut', 'idle'];
const DROPS_OUT: readonly What[] = ['plugIn', 'negotiation'];
const VOLTAGES: readonly Name[] = ['peak', 'trough', 'settled'];

/** False for an event that no check reads, or whose readings belong to no level that can be told: it is kept and shown as kept. */
export function isEventRead(bench: Bench, event: Event): boolean {
  const { what, readings } = event;
  if (what === 'short' || what === 'overload') return true;
  if (readings.length === 0) return TRIED.includes(what);
  if (readings.some(({ name }) => VOLTAGES.includes(name))) return READ_AT_A_LEVEL.includes(what) && levelOfEvent(bench, event) !== null;
  const dropsOut = DROPS_OUT.includes(what) && readings.some(({ name }) => name === 'seconds');
  const port = portOfEvent(bench, event);
  if (dropsOut) return port !== null && otherLoads(bench, event, port.id).length > 0;
  return what === 'idle' && readings.some(({ name }) => name === 'inputPower');
}

/** Events of the kinds asked for, struck ones among them: their readings open as struck. */
export function eventsOf(bench: Bench, whats: readonly What[]): Event[] {
  return exhibitsOf(bench, 'event').filter(({ what }) => whats.includes(what));
}

/** The port an event is about; where none is named it is the only one there is, else it cannot be told. */
export function portOfEvent(bench: Bench, event: Event): Port | null {
  if (event.port !== undefined) return bench.ports.get(event.port) ?? null;
  return bench.one.ports.length === 1 ? bench.one.ports[0]! : null;
}

/** The level of its port that an event is about. A port with several levels does not tell which one was on: then the event names it, or nobody knows. */
export function levelOfEvent(bench: Bench, event: Event): string | null {
  const port = portOfEvent(bench, event);
  const level = event.level ?? (port?.levels.length === 1 ? port.levels[0]?.id : undefined);
  return port === null || level === undefined ? null : `${port.id}~${level}`;
}

export function readingsOf(bench: Bench, event: Event, names: readonly Name[]): EventReading[] {
  return event.readings
    .filter(({ name }) => names.includes(name))
    .map(({ id, name, value }) => {
      const field = `/exhibits/${event.id}/readings/${id}/value`;
      const opened: Opened<string> = event.struck === undefined ? openValue<string>(value) : { state: 'struck', because: event.struck };
      const quantity = opened.state === 'read' ? parsed(opened.v, name) : null;
      const instrument = opened.state === 'read' ? opened.read.instrument : undefined;
      const derived = quantity === null ? null : deriveOne(bench, event, name, field, quantity, instrument);
      return { event, name, field, opened, value: derived, lastDigit: quantity?.lastDigit ?? null };
    });
}

function parsed(text: string, name: Name): Quantity | null {
  const read = parseQuantity(text, KIND[name]);
  const quantity = isRefusal(read) && name === 'seconds' ? parseQuantity(`${text} s`, 'time') : read;
  return isRefusal(quantity) ? null : quantity;
}

function deriveOne(bench: Bench, event: Event, name: Name, field: string, quantity: Quantity, instrument: string | undefined): Derived {
  const role = ROLE[name];
  if (role !== null) return deriveReading(bench, quantity, { field, role, day: event.day, instrument, symbol: SYMBOL[name] });
  const doubt =
    quantity.side === undefined
      ? { form: doubtOf({ id: `stated/${field}`, u: quantity.u, means: quantity.u === null ? 'notStated' : 'stated' }) }
      : { side: quantity.side };
  return given('reading', quantity.value, quantity.unit, { id: field, name, field, symbol: SYMBOL[name] }, doubt);
}
