import { parseQuantity } from '../quantity/parse-quantity.ts';
import { isRefusal, type Refusal, refuse } from '../quantity/refusal.ts';
import { findRead } from '../working/bench/open-value.ts';
import type { Facts } from '../working/facts.ts';
import type { Level, MainsChoice } from './model.ts';

/** Levels that can be run: of each port the ones with a voltage and a promised current. */
export function levelsOf({ bench }: Facts): Level[] {
  return bench.one.ports.flatMap((port) =>
    port.levels.flatMap((level): Level[] => {
      const volts = parseQuantity(level.voltage, 'voltage');
      const text = findRead<string>(level.printed);
      const amps = text === null ? null : parseQuantity(text, 'current');
      if (isRefusal(volts) || amps === null || isRefusal(amps) || amps.value <= 0) return [];
      return [{ port: port.id, id: level.id, name: `${port.name ?? port.id}, ${level.voltage}`, volts: volts.value, amps: amps.value }];
    }),
  );
}

/** The level asked for by its id or "port~level"; the first where none is asked for. */
export function findLevel(facts: Facts, asked: string | null): Level | Refusal {
  const levels = levelsOf(facts);
  const [first] = levels;
  if (first === undefined)
    return refuse('no-level', 'no level with voltage and current', 'a port with a level and its printed current', { place: '/ports' });
  if (asked === null) return first;
  const found = levels.find(({ port, id }) => asked === id || asked === `${port}~${id}`);
  return found ?? refuse('no-such-level', asked, `one of ${levels.map(({ id }) => id).join(', ')}`, { place: '/ports' });
}

/** Mains at which a unit is run: as sold, at the most and at the least that the market has. */
export function mainsOf({ setting }: Facts): Readonly<Record<'nominal' | 'high' | 'low', MainsChoice>> {
  const at = (rmsV: number, hertz: number): MainsChoice => ({ rmsV, hertz });
  return {
    nominal: at(setting.nominal.value, setting.frequency.value),
    high: at(setting.high.value, setting.highFrequency.value),
    low: at(setting.low.value, setting.frequency.value),
  };
}

/** The output above which time is counted: what a device must stand, else the upper edge of the window, else a tenth above the level. */
export function harmOf({ levels }: Facts, level: Level): number {
  const window = levels.find((one) => one.port.id === level.port && one.level.id === level.id)?.window ?? null;
  return window?.harmful?.value ?? window?.most.value ?? BEYOND * level.volts;
}
const BEYOND = 1.1;
