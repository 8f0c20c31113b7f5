import type { Next } from '../../core/result/assessment.ts';
import { amountText } from './amount-text.ts';
import { sentenceFor } from './fill-template.ts';
import { STOPS } from './next-words.ts';

/** "14.4 V output voltage, rising (USB socket, 5 V)": the value at which the test is stopped, and of what. */
export function stopText({ of, about, at }: Next['stop'][number]): string {
  const what = sentenceFor(STOPS, of);
  return `${amountText(at)} ${what}${about === '' || what.startsWith(about) ? '' : ` (${about})`}`;
}
