import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Where a logged temperature is going: the end of its fitted curve, with a correction of nothing for the fit and one for a room that moved, each with its doubt. */
export const endOfSoak = defineFormula({
  id: 'thermal/end-of-soak',
  tex: String.raw`T_\infty = T_f + \delta_f + \delta_a`,
  text: 'T_∞ = T_f + δ_f + δ_a',
  source: cite('heat-theory', 'a body with one or two time constants: T = T_∞ - Σ ΔT exp(-t/τ)', 'reasoned'),
  inputs: {
    fitted: { symbol: 'T_f', unit: 'K', means: 'end of the fitted curve, with the doubt of the meter', moves: 'up' },
    fit: { symbol: 'δ_f', unit: 'ΔK', means: 'correction of the fit: nothing, with the doubt of its end' },
    room: { symbol: 'δ_a', unit: 'ΔK', means: 'correction for the room: nothing, with the doubt of half its span' },
  },
  output: { symbol: 'T_∞', unit: 'K', means: 'temperature that the log is heading for' },
  validity: 'load, mains, room and cooling stay as they were over the part of the log that was used',
  compute: ({ fitted, fit, room }) => fitted + fit + room,
});
