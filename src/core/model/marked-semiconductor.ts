/** What the number printed on a semiconductor says about it. Numbers common to many makers, from their sheets; from memory. */
export interface MarkedSemiconductor {
  readonly volts: number | null;
  readonly amps: number | null;
}

/** 1N4001 to 1N4007 and FR101 to FR107, UF4001 to UF4007: by their last digit. */
const SERIES_V = [50, 100, 200, 400, 600, 800, 1000] as const;
/** MB6S, KBP206, DB107: the digit in front of S, or the last. */
const BRIDGE_V = [50, 100, 200, 400, 600, 800, 1000] as const;
const TIMES_TEN = 10;

interface Rule {
  readonly pattern: RegExp;
  readonly read: (match: RegExpExecArray) => MarkedSemiconductor;
}
const RULES: readonly Rule[] = [
  { pattern: /1N4148|LL4148/, read: () => ({ volts: 100, amps: 0.2 }) },
  { pattern: /(?:1N|UF)400([1-7])|FR10([1-7])|[SMR]S?1?([A-M])$/, read: (match) => seriesOf(match) },
  { pattern: /MB(\d+)[SFM]/, read: (match) => ({ volts: Number(match[1]) * 100, amps: 0.5 }) },
  { pattern: /KBP(\d)0(\d)/, read: (match) => ({ volts: Number(match[2]) * 100, amps: Number(match[1]) }) },
  { pattern: /DB10([1-7])/, read: (match) => ({ volts: BRIDGE_V[Number(match[1]) - 1] ?? null, amps: 1 }) },
  { pattern: /S[BR](\d)(\d{2,3})/, read: (match) => ({ volts: Number(match[2]), amps: Number(match[1]) }) },
  { pattern: /(\d{1,2})N(\d{2})(?!\d)/, read: (match) => ({ volts: Number(match[2]) * TIMES_TEN, amps: Number(match[1]) }) },
  { pattern: /13001/, read: () => ({ volts: 600, amps: 0.2 }) },
  { pattern: /13003/, read: () => ({ volts: 700, amps: 1.5 }) },
  { pattern: /8050/, read: () => ({ volts: 40, amps: 0.5 }) },
];

function seriesOf(match: RegExpExecArray): MarkedSemiconductor {
  const digit = match[1] ?? match[2];
  return { volts: digit === undefined ? null : (SERIES_V[Number(digit) - 1] ?? null), amps: digit === undefined ? null : 1 };
}

export function findMarked(marking: string): MarkedSemiconductor | null {
  for (const { pattern, read } of RULES) {
    const match = pattern.exec(marking);
    if (match !== null) return read(match);
  }
  return null;
}
