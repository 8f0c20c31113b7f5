import { isRefusal, type Refusal, refuse } from './refusal.ts';

/** A decimal number as written: its value, and the size of one step of its last digit. */
export interface WrittenNumber {
  readonly value: number;
  readonly lastDigit: number;
}

const PLAIN = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;
const GROUPED = /^[+-]?\d{1,3}(?: \d{3})+(?:\.\d+)?$/; // "50 000 838", the SI way
const THOUSANDS_OR_DECIMALS = /^[+-]?[1-9]\d{0,2},\d{3}$/; // "1,250": one thousand or one and a quarter
const EXPECTED = 'a number such as 4.9 or 4,9';

/** Reads "4.9", "4,9", "-0.5", "1e-3", "50 000". A comma that could separate thousands is refused, never guessed. */
export function parseNumber(text: string): WrittenNumber | Refusal {
  const trimmed = text.trim();
  if (THOUSANDS_OR_DECIMALS.test(trimmed))
    return refuse('ambiguous-comma', text, 'a point before decimals, or no separator between thousands');
  const commas = trimmed.split(',').length - 1;
  if (commas > 1 || (commas === 1 && trimmed.includes('.')))
    return refuse('ambiguous-comma', text, 'one decimal mark and no other separator');
  const pointed = trimmed.replace(',', '.');
  if (!PLAIN.test(pointed) && !GROUPED.test(pointed)) return refuse('not-a-number', text, EXPECTED);
  const digits = pointed.replaceAll(' ', '');
  const value = Number(digits);
  if (!Number.isFinite(value)) return refuse('not-a-number', text, 'a number of ordinary size');
  return { value, lastDigit: stepOfLastDigit(digits) };
}

function stepOfLastDigit(digits: string): number {
  const [mantissa = '', exponent = '0'] = digits.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return Number(`1e${Number(exponent) - decimals}`);
}

/** Reads a number that must not be negative. */
export function parsePositive(text: string): WrittenNumber | Refusal {
  const number = parseNumber(text);
  return isRefusal(number) || number.value >= 0 ? number : refuse('negative', text, 'a number that is not negative');
}
