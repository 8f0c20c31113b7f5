import { derive } from '../../formula/derive.ts';
import { apparentInput } from '../../formula/label/apparent-input.ts';
import { parseRange } from '../../quantity/parse-range.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { labelledPower } from './promise-facts.ts';

/** Largest output that the label prints, and the most that can go in at the lower end of its input range. */
export interface Balance {
  readonly output: Derived;
  readonly input: Derived;
}

/** Null unless the label prints voltage and current of its input and at least one output. Outputs that share are not added: one of them is enough. */
export function balanceOf(bench: Bench): Balance | null {
  const output = bench.one.ports
    .map((port) => labelledPower(port))
    .reduce((one, two) => (one === null || (two !== null && two.value > one.value) ? two : one), null);
  if (output === null) return null;
  for (const label of exhibitsOf(bench, 'label')) {
    const [volts, amperes] = label.struck === undefined ? [findRead(label.input?.voltage), findRead(label.input?.current)] : [null, null];
    const voltage = volts === null ? null : parseRange(volts, 'voltage');
    const current = amperes === null ? null : parseRange(amperes, 'current');
    if (voltage === null || current === null || isRefusal(voltage) || isRefusal(current)) continue;
    const at = `/exhibits/${label.id}/input`;
    const input = derive(
      apparentInput,
      {
        voltage: given('typed', voltage.from.value, 'V', {
          id: `${at}/voltage`,
          name: 'lowestInput',
          field: `${at}/voltage`,
          symbol: 'V_l',
        }),
        current: given('typed', current.to.value, 'A', { id: `${at}/current`, name: 'inputCurrent', field: `${at}/current`, symbol: 'I' }),
        rounding: given('typed', current.to.lastDigit / 2, 'A', {
          id: `${at}/current/rounding`,
          name: 'lastDigit',
          field: `${at}/current`,
          symbol: 'r',
        }),
      },
      `label/${label.id}/apparent-input`,
    );
    return { output, input };
  }
  return null;
}
