import { decodeMarking } from '../../src/core/marking/decode-marking.ts';
import type { Part, Reading, SettleKey } from '../../src/core/marking/reading.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';

/** The readings of a mark that must be understood. */
export function readingsOf(text: string, part?: Part): readonly Reading[] {
  const decoded = decodeMarking(text, part);
  if (isRefusal(decoded)) throw new Error(sentence(decoded));
  return decoded.readings;
}

export function settledBy(text: string, part?: Part): readonly SettleKey[] {
  const decoded = decodeMarking(text, part);
  if (isRefusal(decoded)) throw new Error(sentence(decoded));
  return decoded.settledBy;
}

/** Kind and value of each reading, such as "resistor 4700". */
export function meaningsOf(text: string, part?: Part): string[] {
  return readingsOf(text, part).map(({ kind, value }) => `${kind} ${value}`);
}
