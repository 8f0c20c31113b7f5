import { shiftDecimal } from '../quantity/shift-decimal.ts';

const FORM = /^(~|AC|DC)?(\d{1,5}(?:[.,]\d{1,2})?)(k)?(?:V(~|⎓|=|-|AC|DC|A\.C\.|D\.C\.)?|(~))$/i;
const KILO_EXPONENT = 3; // SI brochure, prefix k; prints have K

export interface PrintedVoltage {
  readonly volts: number;
  readonly nature: 'alternating' | 'direct' | null;
}

/** A voltage printed in figures, in V: 400V, 1KV, 275V~, 250VAC, 275~. Null when it is none, or 0. */
export function parsePrintedVoltage(text: string): PrintedVoltage | null {
  const match = FORM.exec(text);
  if (match === null) return null;
  const [, before = '', digits = '', kilo, behind = '', bare = ''] = match;
  const volts = shiftDecimal(Number(digits.replace(',', '.')), kilo === undefined ? 0 : KILO_EXPONENT);
  if (volts === 0) return null;
  const sign = (before + behind + bare).toUpperCase();
  const nature = sign === '' ? null : /^(?:~|A)/.test(sign) ? 'alternating' : 'direct';
  return { volts, nature };
}
