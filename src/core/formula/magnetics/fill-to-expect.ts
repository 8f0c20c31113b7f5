import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

/** Share of a window that copper can be expected to fill at most: what is left of it after cover of the wire, gaps between turns, former and tape. */
export const fillToExpect = defineFormula({
  id: 'magnetics/fill-to-expect',
  tex: String.raw`K_u = S_1 S_2 S_3 S_4`,
  text: 'K_u = S_1 · S_2 · S_3 · S_4',
  source: cite('wire-handbook', 'chapter 4, window utilization factor', 'secondary'),
  inputs: {
    bare: { symbol: 'S_1', unit: '1', means: 'bare copper over the wire with its cover, by area', from: 0, to: 1, moves: 'up' },
    laid: { symbol: 'S_2', unit: '1', means: 'wire over the room that its turns take', from: 0, to: 1, moves: 'up' },
    usable: { symbol: 'S_3', unit: '1', means: 'room inside the former over the window', from: 0, to: 1, moves: 'up' },
    untaped: { symbol: 'S_4', unit: '1', means: 'room without tape over the room inside the former', from: 0, to: 1, moves: 'up' },
  },
  output: { symbol: 'K_u', unit: '1', means: 'share of the window', show: 'percent' },
  validity: 'round wire',
  compute: ({ bare, laid, usable, untaped }) => bare * laid * usable * untaped,
});
