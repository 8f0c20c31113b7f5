import { capacitorDigits } from './capacitor-digits.ts';
import { capacitorLetter } from './capacitor-letter.ts';
import { e96Code } from './e96-code.ts';
import { filmMark } from './film-mark.ts';
import { fourDigit } from './four-digit.ts';
import { inductorDigits } from './inductor-digits.ts';
import { inductorLetter } from './inductor-letter.ts';
import { jumper } from './jumper.ts';
import { letterAtPoint } from './letter-at-point.ts';
import { letterFirst } from './letter-first.ts';
import { milliohmLetter } from './milliohm-letter.ts';
import { plainNumber } from './plain-number.ts';
import type { Part, Reading, Scheme } from './reading.ts';
import { threeDigit } from './three-digit.ts';
import { voltageCode } from './voltage-code.ts';
import { readWrittenValue } from './written-value.ts';
import { zenerVoltage } from './zener-voltage.ts';

/** Every rule for a mark without spaces. */
export const MARK_SCHEMES: readonly Scheme[] = [
  jumper,
  threeDigit,
  fourDigit,
  letterAtPoint,
  milliohmLetter,
  e96Code,
  letterFirst,
  capacitorDigits,
  capacitorLetter,
  filmMark,
  plainNumber,
  voltageCode,
  inductorDigits,
  inductorLetter,
  zenerVoltage,
];

/** Every reading of one word: as a code by each rule, or as a value with its unit. `part` leaves out what cannot be that part. */
export function readWord(word: string, part?: Part): Reading[] {
  const coded = MARK_SCHEMES.filter((scheme) => part === undefined || scheme.part === part).flatMap((scheme) => scheme.read(word));
  const written = readWrittenValue(word).filter(
    ({ kind }) => part === undefined || kind === part || (kind === 'jumper' && part === 'resistor'),
  );
  return [...coded, ...written];
}
