import { PAPER_FONTS } from './fonts/font-data.ts';

export type Face = keyof typeof PAPER_FONTS;

/** A stretch of text that one face can show whole. */
export interface Run {
  readonly face: Face;
  readonly text: string;
}

/** Stands for a sign that no face has a form for. */
export const NO_FORM = '?';
const STRONG = 600; // CSS weight of the strong face; nothing between it and the regular one is kept

/** Text in stretches by the face that shows it: the one asked for, else Greek or the wider Latin in the regular one, else a mark in its place. */
export function toRuns(text: string, weight: number, italic: boolean): readonly Run[] {
  const wanted: Face = weight >= STRONG ? 'strong' : italic ? 'italic' : 'regular';
  const runs: { face: Face; text: string }[] = [];
  // composed as Unicode says: the ohm sign becomes an omega, letters and their accents one sign
  for (const sign of text.normalize('NFC')) {
    const face = ([wanted, 'regular', 'greek', 'extended'] as const).find((one) => holds(one, sign));
    const last = runs.at(-1);
    const next = { face: face ?? wanted, text: face === undefined ? NO_FORM : sign };
    if (last?.face === next.face) last.text += next.text;
    else runs.push(next);
  }
  return runs;
}

/** Whether every sign of a text has a form. */
export function isWhole(text: string): boolean {
  return [...text.normalize('NFC')].every((sign) => (['regular', 'greek', 'extended'] as const).some((face) => holds(face, sign)));
}

function holds(face: Face, sign: string): boolean {
  const point = sign.codePointAt(0) ?? 0;
  return PAPER_FONTS[face].holds.some(([first, last]) => first <= point && point <= last);
}
