import { mm, stackOf, tape, winding } from '../barrier/hand-solved.ts';
import { electrolytic, MAINS_SIDE, UNIVERSAL } from '../board-pieces.ts';
import type { CasePatch } from '../build-case.ts';
import { board, usbPort } from '../evidence-pieces.ts';

type Stack = ReturnType<typeof stackOf>;

export const PRIMARY = { turns: '100', layers: '2', wire: mm(0.2), overall: mm(0.23), role: 'primary' } as const;
export const SECONDARY = { turns: '10', layers: '1', wire: mm(0.5), overall: mm(0.55), role: 'secondary' } as const;

/** 100 to 10 turns on an EE16, 1 mH, 0.4 A, 100 kHz: exact numbers, so that everything can be done by hand. 5 V 1 A is claimed. */
export const WOUND: Stack = stackOf([winding('s', 'output', SECONDARY), tape('tape', '3'), winding('p', 'mains', PRIMARY)], {
  inductance: '1 mH ± 0 %',
  leakage: '20 µH ± 0 %',
  law: 'fixedFrequency',
  frequency: '100 kHz ± 0 Hz',
  peakCurrent: '0.4 A ± 0 A',
  longestOn: '0.9 ± 0',
  clamp: '150 V ± 0 V',
  meanTurn: '35 mm ± 0 mm',
  switchPart: 'q1',
  rectifierPart: 'd5',
});

export interface Changes {
  readonly stack?: Partial<Stack>;
  readonly switchV?: string | { state: 'unknown'; because: string };
  readonly rectifierV?: string | { state: 'unknown'; because: string };
  readonly printed?: string;
  readonly bulk?: string;
}

/** The same with single things changed or forgotten (undefined). */
export function electrical({
  stack = {},
  switchV = '650 V',
  rectifierV = '60 V',
  printed = '1 A',
  bulk = '22 µF ± 0 %',
}: Changes = {}): CasePatch {
  const rest = Object.fromEntries(Object.entries({ ...WOUND, ...stack }).filter(([, value]) => value !== undefined)) as Stack;
  return {
    conductors: MAINS_SIDE,
    ports: [usbPort(printed)],
    parts: [
      { id: 't1', ref: 'T1', kind: 'transformer' },
      { id: 'q1', ref: 'Q1', kind: 'mosfet', rating: { voltage: switchV } },
      { id: 'd5', ref: 'D5', kind: 'diode', rating: { voltage: rectifierV } },
      electrolytic('c1', 'hv-plus', 'hv-minus', '400 V', { value: bulk, measured: bulk }),
    ],
    exhibits: [UNIVERSAL, board({ rectifier: 'bridge' }), rest],
  };
}
