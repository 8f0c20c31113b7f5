import type { UnitModel } from '../unit-model.ts';
import { microhenries, type StackInput, taped, wound } from './layers.ts';

/** Tarn 30 unwound: a secondary of triple-insulated wire between two halves of the primary, a screen on either side. Invented. */
export function tarnStack(model: UnitModel): StackInput {
  const { primaryTurns, secondaryTurns, inductanceH, coreAreaM2, peakA } = model.transformer;
  const half = primaryTurns / 2;
  const primary = (id: string, name: string) =>
    wound(
      model,
      id,
      name,
      { turns: half, rows: 1, bare: 0.32, overall: 0.36, marginsMm: [0.85, 0.9], toCoreMm: 1.6 },
      { side: 'mains', role: 'primary' },
    );
  const screen = (id: string, name: string) =>
    wound(
      model,
      id,
      name,
      { turns: 12, rows: 1, bare: 0.14, overall: 0.17, marginsMm: [0.9, 0.9], toCoreMm: 1.6 },
      { side: 'mains', role: 'screen' },
    );
  return {
    id: 'stack-1',
    kind: 'stack',
    day: 'day-1',
    at: '2026-03-09T18:20:00',
    part: 't1',
    core: 'flat core without a name, measured',
    coreArea: `${(coreAreaM2 * 1e6).toFixed(0)} mm² ± 1 mm²`,
    gap: '0.34 mm ± 0.02 mm',
    gapWhere: 'centreLeg',
    inductance: microhenries(inductanceH),
    leakage: microhenries(5e-6),
    ferrite: { state: 'unknown', because: 'no mark on the core' },
    window: { width: '9.0 mm', height: '3.4 mm' },
    former: { tube: '0.8 mm', wall: '0.7 mm' },
    meanTurn: '41 mm ± 1 mm',
    bath: 'varnish',
    ratioSeen: '5.75 ± 0.1',
    law: 'fixedFrequency',
    frequency: `${model.frequencyHz / 1000} kHz ± 1 kHz`,
    peakCurrent: `${peakA.toFixed(2)} A ± 0.03 A`,
    longestOn: `${model.dutyMost} ± 0.01`,
    clamp: '190 V ± 5 V',
    switchPart: 'q1',
    rectifierPart: 'd5',
    outsideIn: [
      taped('outer', 2),
      primary('p2', 'primary, outer half'),
      taped('tape-p2-e2', 1),
      screen('e2', 'screen, outer'),
      taped('tape-e2-s', 1),
      wound(
        model,
        's',
        'secondary',
        { turns: secondaryTurns, rows: 1, bare: 0.6, overall: 0.8, marginsMm: [1.6, 1.6], toCoreMm: 1.6 },
        { side: 'output', role: 'secondary', wireKind: 'tripleInsulated', leads: [{ id: 'both', crosses: ['p2', 'e2'], sleeved: false }] },
      ),
      taped('tape-s-e1', 1),
      screen('e1', 'screen, inner'),
      taped('tape-e1-p1', 1),
      primary('p1', 'primary, inner half'),
    ],
  };
}
