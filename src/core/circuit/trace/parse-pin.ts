import { type Refusal, refuse } from '../../quantity/refusal.ts';
import { NAME, REFERENCE } from './parse-line.ts';

/** A pin as somebody says it while tracing: "R7 1", "U1 GND", "T1 P.1", or the part alone where its next pin is meant. */
export interface SaidPin {
  readonly ref: string;
  readonly pin: string | null;
}

export function parsePin(text: string): SaidPin | Refusal {
  const [first = '', pin, more] = text.trim().split(/\s+/);
  if (!REFERENCE.test(first) || more !== undefined || (pin !== undefined && !NAME.test(pin)))
    return refuse('not-a-pin', text.trim(), 'a reference and its pin, such as "R7 1" or "U1 GND"');
  return { ref: first.toUpperCase(), pin: pin ?? null };
}
