import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { deriveTyped } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';
import { companyOf } from './other-loads.ts';
import type { LevelFacts } from './sweep-facts.ts';

export interface Offer {
  readonly exhibit: string;
  readonly field: string;
  readonly current: Derived;
  /** Ports that were loaded beside this one when the offer was read. */
  readonly company: string;
}

/** What a port offers at one voltage, beside what it was swept at. */
export interface AdvertisedLevel {
  /** "out-1~5v", or "out-1~pd-9v" for an offer that no level of the port stands for. */
  readonly id: string;
  readonly about: string;
  /** Null when nothing was swept at that voltage because the case has no level for it. */
  readonly level: LevelFacts | null;
  readonly offers: readonly Offer[];
  /** A list of voltages was read at this port, so that a level that is not on it is known not to be offered. */
  readonly listRead: boolean;
}

const SAME_VOLTAGE = 0.02; // share of the voltage within which an offer and a level are the same; offers step by far more
const FIVE_V = 5; // an offer without a voltage (a pull-up, data lines) is one of current at 5 V
const NEGOTIATES: readonly string[] = ['usbA', 'usbC', 'microB'];

type OneOffer = { readonly id: string; readonly voltage?: string | undefined; readonly upTo?: string | undefined };

/** Every level of every port that could advertise, and every offer that has no level. */
export function advertisedLevels(bench: Bench, levels: readonly LevelFacts[]): AdvertisedLevel[] {
  const exhibits = exhibitsOf(bench, 'advertised').filter(({ struck }) => struck === undefined);
  return bench.one.ports.flatMap((port) => {
    const own = exhibits.filter((exhibit) => exhibit.port === port.id);
    const kind = findRead(port.kind);
    if (own.length === 0 && kind !== null && !NEGOTIATES.includes(kind)) return [];
    const listRead = own.some((exhibit) => exhibit.offers.some(({ voltage }) => voltage !== undefined));
    const levelsOfPort = levels.filter((level) => level.port.id === port.id);
    const offers = own.flatMap((exhibit) =>
      exhibit.offers.map((offer) => {
        const field = `/exhibits/${exhibit.id}/offers/${offer.id}/current`;
        return {
          voltage: offer.voltage ?? `${FIVE_V} V`,
          id: offer.id,
          level: levelsOfPort.find((level) => stands(level, offer, levelsOfPort.length)) ?? null,
          offer: {
            exhibit: exhibit.id,
            field,
            current: deriveTyped(offer.current, 'current', field, 'advertisedCurrent', 'I_a'),
            company: companyOf(bench, exhibit, port.id),
          },
        };
      }),
    );
    const known = levelsOfPort.map((level): AdvertisedLevel => {
      return {
        id: level.id,
        about: level.about,
        level,
        offers: offers.filter((one) => one.level === level).map(({ offer }) => offer),
        listRead,
      };
    });
    const without = offers.filter((one) => one.level === null);
    const rest = [...new Set(without.map(({ id }) => id))].map((id): AdvertisedLevel => {
      const same = without.filter((one) => one.id === id);
      return {
        id: `${port.id}~offer-${id}`,
        about: `${nameOf(bench, port.id)}, ${same[0]!.voltage}`,
        level: null,
        offers: same.map(({ offer }) => offer),
        listRead,
      };
    });
    return [...known, ...rest];
  });
}

/** A fixed offer stands for the level of its voltage; a range for a level that has a range; one without a voltage for 5 V, or for the only level. */
function stands({ level }: LevelFacts, offer: OneOffer, levels: number): boolean {
  if ((offer.upTo !== undefined) !== (level.range !== undefined)) return false;
  const own = volts(level.range?.from ?? level.voltage);
  if (offer.voltage === undefined) return near(own, FIVE_V) || (levels === 1 && level.range === undefined);
  const asked = volts(offer.voltage);
  return near(own, asked) && (offer.upTo === undefined || level.range === undefined || near(volts(level.range.to), volts(offer.upTo)));
}

function near(one: number, two: number): boolean {
  return Math.abs(one - two) <= SAME_VOLTAGE * Math.abs(two);
}

function volts(text: string): number {
  const read = parseQuantity(text, 'voltage');
  return isRefusal(read) ? Number.NaN : read.value;
}
