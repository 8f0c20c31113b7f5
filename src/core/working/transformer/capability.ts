import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { balanced, bulkAt } from './bulk-at.ts';
import { type ConverterInputs, type OperatingPoint, operatingPoint } from './converter-facts.ts';
import type { NumberList } from './number-list.ts';

/** The most that a transformer passes at one mains voltage. */
export interface Capability {
  readonly which: 'nominal' | 'lowest';
  readonly mains: Derived;
  readonly valley: Derived;
  readonly power: Derived;
  readonly point: OperatingPoint;
}

const MAINS = { lowest: 'low', nominal: 'nominal' } as const;

/** The most that a transformer passes at one mains voltage, read or set. */
export function capabilityAt(
  bench: Bench,
  inputs: ConverterInputs,
  mains: Derived,
  frequency: Derived,
  id: string,
): Pick<Capability, 'power' | 'valley' | 'point'> | null {
  const bulk = bulkAt(bench, mains, frequency, id);
  const found = balanced(bulk, (rail, at) => operatingPoint(inputs, rail, at)?.power ?? null, id);
  const point = found === null ? null : operatingPoint(inputs, found.valley, `${id}/point`);
  return found === null || point === null ? null : { ...found, point };
}

/** At the lowest and at nominal mains, told with what is missing where it cannot be had; `missing` is what the law lacks. */
export function capabilitiesOf(
  bench: Bench,
  setting: SettingFacts,
  inputs: ConverterInputs,
  { id, list, missing }: { readonly id: string; readonly list: NumberList; readonly missing: readonly string[] },
): Capability[] {
  return (['lowest', 'nominal'] as const).flatMap((which): Capability[] => {
    const mains = setting[MAINS[which]];
    const found = capabilityAt(bench, inputs, mains, setting.frequency, `${id}/${which}`);
    const rail = bulkAt(bench, mains, setting.frequency, `${id}/${which}`);
    list.tell(which === 'lowest' ? 'mostAtLowest' : 'mostAtNominal', found?.power ?? null, [...missing, ...rail.missing]);
    if (found === null) return [];
    list.tell(which === 'lowest' ? 'valleyAtLowest' : 'valleyAtNominal', found.valley, []);
    return [{ which, mains, ...found }];
  });
}
