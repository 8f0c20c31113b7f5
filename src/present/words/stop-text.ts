import type { Next } from '../../core/result/assessment.ts';
import { amountText } from './amount-text.ts';
import { sentenceFor } from './fill-template.ts';
import { STOPS } from './next-words.ts';

/** "output current of USB socket, 5 V: 2.6 A": what to watch, and the value at which the test is stopped. */
export function stopText({ of, about, at }: Next['stop'][number]): string {
  const what = sentenceFor(STOPS, of);
  const whose = about === '' || what.startsWith(about) ? '' : ` of ${about}`;
  return `${what}${whose} ${amountText(at)}`;
}
