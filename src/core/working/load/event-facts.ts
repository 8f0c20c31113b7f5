import type { ExhibitOf } from '../../evidence/case.ts';
import type { Role } from '../../evidence/instrument.ts';
import type { Port } from '../../evidence/sample.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Kind } from '../../quantity/unit.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { type Opened, openValue } from '../bench/open-value.ts';

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

/** Kinds of event whose tries count for the unit, and whose readings count at a port. */
const TRIED: readonly What[] = ['plugIn', 'start', 'step', 'brownOut', 'negotiation'];
const READ_AT_A_PORT: readonly What[] = ['plugIn', 'unplug', 'start', 'step', 'brownOut'];

/** False for an event that no check reads, or whose readings belong to no port that can be told: it is kept and shown as kept. */
export function isEventRead(bench: Bench, event: Event): boolean {
  if (event.what === 'idle' || event.what === 'short' || event.what === 'overload') return true;
  if (event.readings.length === 0) return TRIED.includes(event.what);
  return READ_AT_A_PORT.includes(event.what) && portOfEvent(bench, event) !== null;
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

/** The level of its port that an event is about: the first unless it names another. */
export function levelOfEvent(bench: Bench, event: Event): string | null {
  const port = portOfEvent(bench, event);
  return port === null ? null : `${port.id}~${event.level ?? port.levels[0]?.id ?? 'first'}`;
}

export function readingsOf(bench: Bench, event: Event, names: readonly Name[]): EventReading[] {
  return event.readings
    .filter(({ name }) => names.includes(name))
    .map(({ id, name, value }) => {
      const field = `/exhibits/${event.id}/readings/${id}/value`;
      const opened: Opened<string> = event.struck === undefined ? openValue<string>(value) : { state: 'struck', because: event.struck };
      return {
        event,
        name,
        field,
        opened,
        value: opened.state === 'read' ? derived(bench, event, name, field, opened.v, opened.read.instrument) : null,
      };
    });
}

function derived(bench: Bench, event: Event, name: Name, field: string, text: string, instrument: string | undefined): Derived | null {
  const read = parseQuantity(text, KIND[name]);
  const quantity = isRefusal(read) && name === 'seconds' ? parseQuantity(`${text} s`, 'time') : read;
  if (isRefusal(quantity)) return null;
  const role = ROLE[name];
  if (role !== null) return deriveReading(bench, quantity, { field, role, day: event.day, instrument, symbol: SYMBOL[name] });
  const doubt =
    quantity.side === undefined
      ? { form: doubtOf({ id: `stated/${field}`, u: quantity.u, means: quantity.u === null ? 'notStated' : 'stated' }) }
      : { side: quantity.side };
  return given('reading', quantity.value, quantity.unit, { id: field, name, field, symbol: SYMBOL[name] }, doubt);
}
