import { bulkValley } from '../../formula/board/bulk-valley.ts';
import { intervalBetweenCharges } from '../../formula/board/interval-between-charges.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { bulkCapacitance } from '../board/bulk-capacitance.ts';

const PERIODS = { bridge: 0.5, singleDiode: 1 } as const;

/** How the rail behind the rectifier falls between two charges while a power is drawn. */
export interface Bulk {
  readonly crest: Derived;
  /** Null where capacitance or rectifier is not known, or where a doubler makes the rail: then only the crest is. */
  readonly valleyAt: ((power: Derived, id: string) => Derived) | null;
  /** The same on plain numbers, for the search of a balance. */
  readonly plainValley: (watts: number) => number;
  /** Keys of what is missing for the valley. */
  readonly missing: readonly string[];
}

/** The rail at one mains voltage. */
export function bulkAt(bench: Bench, mains: Derived, frequency: Derived, id: string): Bulk {
  const crest = derive(peakOfMains, { rms: mains }, `${id}/crest`);
  const kinds = new Set(
    exhibitsOf(bench, 'board').flatMap(({ struck, rectifier }) => (struck === undefined ? (findRead(rectifier) ?? []) : [])),
  );
  const [kind] = kinds;
  const capacitance = bulkCapacitance(bench);
  const known = 'because' in capacitance ? null : capacitance;
  const missing = [...(kinds.size === 1 ? [] : ['rectifier']), ...(known === null || known.value <= 0 ? ['bulkCapacitance'] : [])];
  if (missing.length > 0 || known === null || kind === undefined || kind === 'doubler')
    return { crest, valleyAt: null, plainValley: () => 0, missing: kind === 'doubler' ? ['railOfDoubler'] : missing };
  const share = given('constant', PERIODS[kind], '1', {
    id: `board/periods-between-charges/${kind}`,
    name: `rectifier-${kind}`,
    symbol: 's',
    source: cite('circuit-theory', 'rectifiers', 'reasoned'),
  });
  const interval = derive(intervalBetweenCharges, { share, frequency }, `${id}/interval`);
  const plain = { crest: crest.value, capacitance: known.value, interval: interval.value, frequency: frequency.value };
  return {
    crest,
    missing: [],
    valleyAt: (power, at) => derive(bulkValley, { crest, power, capacitance: known, interval, frequency }, at),
    plainValley: (watts) => bulkValley.compute({ ...plain, power: watts }),
  };
}

const HALVINGS = 40;

/**
 * The most power that a converter passes without dips: what it takes at the valley that this power itself makes. `powerAt` must not fall as the
 * rail rises. Found by halving an interval on plain numbers; the two powers around it carry the doubt.
 */
export function balanced(
  bulk: Bulk,
  powerAt: (rail: Derived, id: string) => Derived | null,
  id: string,
): { power: Derived; valley: Derived } | null {
  const { valleyAt, plainValley, crest } = bulk;
  if (valleyAt === null) return null;
  const highest = powerAt(crest, `${id}/at-crest`);
  if (highest === null) return null;
  const asPower = (watts: number): Derived => given('constant', watts, 'W', { id: `${id}/trial`, name: 'trialPower', symbol: 'P' });
  let [low, high] = [0, highest.value];
  for (let step = 0; step < HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    const volts = plainValley(middle);
    const rail = given('constant', volts, 'V', { id: `${id}/trial-rail`, name: 'trialPower', symbol: 'V' });
    const passed = volts <= 0 ? 0 : (powerAt(rail, `${id}/trial-point`)?.value ?? 0);
    if (middle <= passed) low = middle;
    else high = middle;
  }
  const valley = valleyAt(asPower(low), `${id}/valley`);
  if (valley.value <= 0) return null;
  const power = powerAt(valley, `${id}/at-valley`);
  return power === null ? null : { power, valley };
}
