import type { ExhibitOf } from '../../evidence/case.ts';
import { derive } from '../../formula/derive.ts';
import { bridgingCurrent } from '../../formula/insulation/bridging-current.ts';
import { currentAtHighestMains } from '../../formula/insulation/current-at-highest-mains.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import { type Bench, exhibitsOf, nameOf } from '../bench/bench.ts';
import { conditionsOf, fieldOfCondition, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { withMainsDoubt } from '../bench/mains-frequency-doubt.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';
import { bridgingPaths } from '../board/bridging-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { currentOfVoltage } from './voltage-to-earth.ts';

export interface TouchReading {
  /** Conductor and plug way: "out-plus~A". */
  readonly id: string;
  readonly about: string;
  readonly orientation: 'A' | 'B' | null;
  readonly peak: boolean;
  /** Read as a voltage to earth. Through a meter it is a bound from below: it can fail and never pass. */
  readonly asVoltage: boolean;
  readonly field: string;
  readonly opened: Opened<string>;
  /** Why the reading is no evidence, or null. */
  readonly refused: 'supplyNotDirect' | 'supplyNotStated' | 'orientationNotStated' | 'mainsNotStated' | null;
  readonly supply: string | null;
  readonly method: string | null;
  /** At the highest mains; null when it is no evidence. */
  readonly current: Derived | null;
}

/** Every reading of touch current, or of the voltage to earth that stands for one, with the reason when it cannot count. */
export function touchReadings(bench: Bench, setting: SettingFacts): TouchReading[] {
  return exhibitsOf(bench, 'touch')
    .filter((exhibit) => exhibit.quantity !== 'pinsAfterUnplugging')
    .map((exhibit) => readTouch(bench, setting, exhibit));
}

function readTouch(bench: Bench, setting: SettingFacts, exhibit: ExhibitOf<'touch'>): TouchReading {
  const opened: Opened<string> =
    exhibit.struck === undefined ? openValue<string>(exhibit.value) : { state: 'struck', because: exhibit.struck };
  const own = opened.state === 'read' ? opened.read.under : undefined;
  const under = conditionsOf(bench, exhibit, [own]);
  const supply = findCondition(under.supply);
  const orientation = findCondition(under.orientation);
  const mains = findCondition(under.mains);
  const frequency = findCondition(under.frequency);
  const refused =
    supply === null
      ? 'supplyNotStated'
      : supply !== 'direct'
        ? 'supplyNotDirect'
        : orientation === null
          ? 'orientationNotStated'
          : mains === null || frequency === null
            ? 'mainsNotStated'
            : null;
  const field = `/exhibits/${exhibit.id}/value`;
  const common = {
    id: `${exhibit.from}~${orientation ?? 'way-not-stated'}`,
    about: `${nameOf(bench, exhibit.from)}, plug way ${orientation ?? 'not stated'}`,
    orientation,
    peak: exhibit.quantity === 'touchCurrentPeak',
    asVoltage: exhibit.quantity === 'voltageToEarth',
    field,
    opened,
    refused,
    supply,
    method: findRead(exhibit.method),
  } as const;
  if (opened.state !== 'read' || refused !== null || mains === null || frequency === null) return { ...common, current: null };
  const voltage = parseQuantity(mains, 'voltage');
  const hertz = parseQuantity(frequency, 'frequency');
  if (isRefusal(voltage) || isRefusal(hertz) || voltage.value <= 0 || hertz.value <= 0) return { ...common, current: null };
  const current =
    exhibit.quantity === 'voltageToEarth'
      ? currentOfVoltage(bench, exhibit, opened.v, opened.read.instrument)
      : currentAsRead(bench, exhibit, opened.v, opened.read.instrument);
  if (current === null) return { ...common, current: null };
  const scaled = derive(
    currentAtHighestMains,
    {
      current,
      voltage: deriveReading(bench, voltage, {
        field: fieldOfCondition(exhibit, 'mains', field, own),
        role: 'mains',
        day: exhibit.day,
        symbol: 'V',
      }),
      frequency: deriveReading(bench, withMainsDoubt(hertz), {
        field: fieldOfCondition(exhibit, 'frequency', field, own),
        role: 'frequency',
        day: exhibit.day,
        symbol: 'f',
      }),
      highestVoltage: setting.high,
      highestFrequency: setting.highFrequency,
    },
    `touch/${exhibit.id}/at-highest-mains`,
  );
  return { ...common, current: scaled };
}

function currentAsRead(bench: Bench, exhibit: ExhibitOf<'touch'>, text: string, instrument: string | undefined): Derived | null {
  const quantity = parseQuantity(text, 'current');
  if (isRefusal(quantity)) return null;
  const field = `/exhibits/${exhibit.id}/value`;
  return deriveReading(bench, quantity, { field, role: 'touchCurrent', day: exhibit.day, instrument, symbol: 'I', show: 'milliamperes' });
}

/** Upper bound of the touch current by the capacitance recorded across the barrier, with the parts it comes from. Null when none is known. */
export function computedBound(bench: Bench, setting: SettingFacts): { current: Derived; parts: string[] }[] {
  return bridgingPaths(bench).flatMap((path) => {
    const [part, second] = path.parts;
    if (part === undefined || second !== undefined) return [];
    const measured = openValue(part.measured);
    const marked = openValue(part.value);
    const [text, field] =
      measured.state === 'read'
        ? [measured.v, `/parts/${part.id}/measured`]
        : marked.state === 'read'
          ? [marked.v, `/parts/${part.id}/value`]
          : [null, ''];
    const quantity = text === null ? null : parseQuantity(text, 'capacitance');
    if (quantity === null || isRefusal(quantity)) return [];
    const capacitance = deriveReading(bench, quantity, { field, role: 'capacitance', day: bench.one.days[0]?.id, symbol: 'C' });
    const current = derive(
      bridgingCurrent,
      { frequency: setting.highFrequency, capacitance, voltage: setting.high },
      `touch/${part.id}/bound`,
    );
    return [{ current, parts: [part.ref] }];
  });
}
