import type { Part } from '../../evidence/sample.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { findRead, openValue } from '../bench/open-value.ts';
import type { BridgingPath } from './bridging-facts.ts';

const CAPACITORS = new Set(['capacitor', 'ceramicCapacitor', 'filmCapacitor', 'electrolyticCapacitor']);
/** A part that conducts adds no insulation to a way, whatever it was meant for. */
const CONDUCTORS = new Set([
  'jumper',
  'inductor',
  'commonModeChoke',
  'fuse',
  'fusibleResistor',
  'diode',
  'zener',
  'led',
  'bridgeRectifier',
  'varistor',
  'ntc',
  'mosfet',
  'bipolarTransistor',
]);
const SAME_VALUE = 0.2; // two capacitors in series count as equal within their usual tolerance; common practice

/** What one part of a way is worth as insulation. */
export type Worth =
  | 'nothing'
  | 'ordinary'
  | 'y1'
  | 'y2'
  | 'notEstablished'
  | 'unknown'
  | 'notLooked'
  | 'cannotNow'
  | 'struck'
  | 'otherRule';

export function worthOf(part: Part): Worth {
  const kind = openValue(part.kind);
  if (kind.state === 'cannotNow' || kind.state === 'notLooked' || kind.state === 'struck') return kind.state;
  if (kind.state !== 'read') return 'unknown';
  if (CONDUCTORS.has(kind.v)) return 'nothing';
  if (!CAPACITORS.has(kind.v)) return 'otherRule'; // resistors and chips may stand there under rules that are not held here
  const safetyClass = openValue(part.safetyClass);
  if (safetyClass.state === 'absent') return 'ordinary';
  if (safetyClass.state === 'cannotNow' || safetyClass.state === 'notLooked' || safetyClass.state === 'struck') return safetyClass.state;
  if (safetyClass.state !== 'read') return 'unknown';
  if (safetyClass.v !== 'Y1' && safetyClass.v !== 'Y2') return 'ordinary';
  if (findRead(part.identity) !== 'established') return 'notEstablished';
  return safetyClass.v === 'Y1' ? 'y1' : 'y2';
}

/** One word for what stands there. */
export function wordOf(part: Part): string {
  const kind = openValue(part.kind);
  if (kind.state !== 'read') return kind.state;
  if (!CAPACITORS.has(kind.v)) return kind.v;
  const safetyClass = openValue(part.safetyClass);
  if (safetyClass.state === 'read') return safetyClass.v;
  if (safetyClass.state !== 'absent') return kind.v;
  return kind.v === 'ceramicCapacitor' ? 'ordinaryCeramic' : kind.v === 'filmCapacitor' ? 'ordinaryFilm' : 'ordinaryCapacitor';
}

/** Null when a value is not known. */
export function equalValues(parts: readonly Part[]): boolean | null {
  const values = parts.map(({ value, measured }) => {
    const text = findRead(measured) ?? findRead(value);
    const read = text === null ? null : parseQuantity(text, 'capacitance');
    return read === null || isRefusal(read) ? null : read.value;
  });
  const known = values.filter((one) => one !== null);
  if (known.length < values.length) return null;
  return Math.max(...known) - Math.min(...known) <= SAME_VALUE * Math.max(...known);
}

const OPEN: ReadonlySet<Worth> = new Set(['cannotNow', 'struck', 'notLooked', 'unknown', 'notEstablished', 'otherRule']);
const DOUBLE = 2;

/** Layers of insulation that a way through parts stands for, at least and at most; the two differ where something is not known. */
export function strengthOfParts(path: BridgingPath): { low: number; high: number; notLooked: boolean } {
  const worths = path.parts.map(worthOf);
  const y2 = path.parts.filter((_, index) => worths[index] === 'y2');
  const equal = y2.length >= DOUBLE ? equalValues(y2) : false;
  const notLooked = worths.includes('notLooked') || worths.includes('struck');
  if (worths.includes('y1') || equal === true) return { low: DOUBLE, high: DOUBLE, notLooked: false };
  const low = y2.length > 0 ? 1 : 0;
  if (equal === null || worths.some((worth) => OPEN.has(worth))) return { low, high: DOUBLE, notLooked };
  return { low, high: low, notLooked };
}
