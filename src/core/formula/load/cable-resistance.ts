import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** What the cable and its contacts add between socket and end of cable. */
export const cableResistance = defineFormula({
  id: 'load/cable-resistance',
  tex: 'R_c = R_e - R_s',
  text: 'R_c = R_e − R_s',
  source: cite('circuit-theory', 'resistances in series', 'reasoned'),
  inputs: {
    end: { symbol: 'R_e', unit: 'Ω', means: 'output resistance at the end of the cable', moves: 'up' },
    socket: { symbol: 'R_s', unit: 'Ω', means: 'output resistance at the socket', moves: 'down' },
  },
  output: { symbol: 'R_c', unit: 'Ω', means: 'resistance of cable and contacts' },
  validity: 'both at the same level and mains',
  compute: ({ end, socket }) => end - socket,
});
