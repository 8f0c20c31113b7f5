import type { UnitModel } from '../unit-model.ts';
import { microhenries, type StackInput, taped, wound } from './layers.ts';

/** Fell 12 unwound: three tapes everywhere, but the turns come too near to the wall of the former. Invented. */
export function fellStack(model: UnitModel): StackInput {
  const { primaryTurns, secondaryTurns, inductanceH, peakA } = model.transformer;
  const half = primaryTurns / 2;
  const primary = (id: string, name: string, marginsMm: [number, number], toCoreMm: number) =>
    wound(
      model,
      id,
      name,
      { turns: half, rows: 1, bare: 0.25, overall: 0.28, marginsMm, toCoreMm },
      { side: 'mains', role: 'primary', leads: [{ id: 'ends', crosses: [] }] },
    );
  return {
    id: 'stack-1',
    kind: 'stack',
    day: 'day-1',
    at: '2026-03-04T17:30:00',
    part: 't1',
    core: 'EF20',
    gap: '0.40 mm ± 0.02 mm',
    gapWhere: 'centreLeg',
    inductance: microhenries(inductanceH),
    leakage: microhenries(12e-6),
    ferrite: { state: 'unknown', because: 'no mark on the core' },
    window: { width: '13.8 mm', height: '3.6 mm' },
    former: { tube: '0.8 mm', wall: '0.7 mm' },
    meanTurn: '39 mm ± 1 mm',
    bath: 'varnish',
    ratioSeen: '6.02 ± 0.12',
    law: 'fixedFrequency',
    frequency: `${model.frequencyHz / 1000} kHz ± 1 kHz`,
    peakCurrent: `${peakA.toFixed(3)} A ± 0.02 A`,
    longestOn: `${model.dutyMost} ± 0.01`,
    clamp: '150 V ± 5 V',
    switchResistance: '2.4 Ω ± 0.4 Ω',
    fallTime: '60 ns ± 20 ns',
    switchPart: 'q1',
    rectifierPart: 'd5',
    outsideIn: [
      taped('outer', 3),
      primary('p2', 'primary, outer half', [1.85, 1.82], 2.2),
      taped('tape-p2-s', 3),
      wound(
        model,
        's',
        'secondary',
        { turns: secondaryTurns, rows: 1, bare: 0.4, overall: 0.44, marginsMm: [1.6, 1.64], toCoreMm: 2.5 },
        {
          side: 'output',
          role: 'secondary',
          strands: '2',
          leads: [{ id: 'start', end: 'start', crosses: ['p2'], sleeved: true, wall: '0.45 mm ± 0.02 mm' }],
        },
      ),
      taped('tape-s-a', 3),
      wound(
        model,
        'a',
        'auxiliary',
        { turns: 13, rows: 1, bare: 0.18, overall: 0.21, marginsMm: [2.4, 2.5], toCoreMm: 2.1 },
        { side: 'mains', role: 'auxiliary' },
      ),
      taped('tape-a-p1', 1),
      primary('p1', 'primary, inner half', [1.84, 1.86], 2.1),
    ],
  };
}
