import type { UnitModel } from '../unit-model.ts';
import { microhenries, type StackInput, taped, wound } from './layers.ts';

/** Beck 5 unwound: an ordinary enamelled secondary under one tape that stops short of the cheek of the former. Invented. */
export function beckStack(model: UnitModel): StackInput {
  const { primaryTurns, secondaryTurns, inductanceH } = model.transformer;
  return {
    id: 'stack-1',
    kind: 'stack',
    day: 'day-1',
    at: '2026-03-05T16:40:00',
    part: 't1',
    core: 'EE13',
    inductance: microhenries(inductanceH),
    leakage: microhenries(12e-6),
    ferrite: { state: 'unknown', because: 'no mark on the core' },
    window: { width: '7.6 mm', height: '2.4 mm' },
    former: { tube: '0.6 mm', wall: '0.5 mm' },
    meanTurn: '27 mm ± 1 mm',
    bath: { state: 'absent', because: 'turns slide on each other' },
    law: { state: 'unknown', because: 'two transistors and no chip; not traced yet' },
    switchPart: 'q1',
    rectifierPart: 'd5',
    outsideIn: [
      taped('outer', 1),
      wound(
        model,
        's',
        'secondary',
        { turns: secondaryTurns, rows: 1, bare: 0.5, overall: 0.54, marginsMm: [0.4, 0.6], toCoreMm: 1.1 },
        {
          side: 'output',
          role: 'secondary',
          leads: [
            {
              id: 'start',
              end: 'start',
              crosses: ['p'],
              sleeved: { state: 'absent', because: 'bare enamel, flattened where it is crossed' },
            },
          ],
        },
      ),
      taped('tape-s-p', 1, { covers: 'stopsShort', short: '1.0 mm ± 0.1 mm' }),
      wound(
        model,
        'p',
        'primary',
        { turns: primaryTurns, rows: 2, bare: 0.11, overall: 0.13, marginsMm: [0.2, 0.3], toCoreMm: 0.7 },
        { side: 'mains', role: 'primary', leads: [] },
      ),
      taped('tape-p-a', 1),
      wound(
        model,
        'a',
        'auxiliary',
        { turns: 12, rows: 1, bare: 0.12, overall: 0.14, marginsMm: [1.8, 1.8], toCoreMm: 0.6 },
        { side: 'mains', role: 'auxiliary' },
      ),
    ],
  };
}
