import { parseQuantity, type Quantity } from './parse-quantity.ts';
import { isRefusal, type Refusal, refuse } from './refusal.ts';
import { KIND_IN_WORDS, type Kind, normaliseSigns } from './unit.ts';

const DASHED = /^\s*([\d.,]+)\s*([^\d\s–—~-]*)\s*(?:-|–|—|~|\.\.|to)\s*([\d.,]+)\s*(\S.*)$/;

/** Reads what labels print: "100-240 V", "50/60 Hz" is two values and refused here, "230 V" is a range of one. */
export function parseRange(text: string, expected: Kind): { from: Quantity; to: Quantity } | Refusal {
  const clean = normaliseSigns(text).replace(/~$/, '').trim();
  const dashed = DASHED.exec(clean);
  if (dashed === null) {
    const one = parseQuantity(clean, expected);
    return isRefusal(one) ? { ...one, got: text } : { from: one, to: one };
  }
  const [, low = '', lowUnit = '', high = '', unit = ''] = dashed;
  const from = parseQuantity(`${low} ${lowUnit === '' ? unit : lowUnit}`, expected);
  const to = parseQuantity(`${high} ${unit}`, expected);
  if (isRefusal(from)) return { ...from, got: text };
  if (isRefusal(to)) return { ...to, got: text };
  if (from.value > to.value) return refuse('range-backwards', text, `${KIND_IN_WORDS[expected]}, the lower end first`);
  return { from, to };
}
