import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const MICRO = 1e-6;

/** Bulk capacitance that makers would put in for so much output. */
export const usualCapacitance = defineFormula({
  id: 'board/usual-capacitance',
  tex: String.raw`C_u = 10^{-6}\,k\,P`,
  text: 'C_u = 10⁻⁶ · k · P',
  source: cite('bench', 'microfarads for each watt of output', 'common-practice'),
  inputs: {
    perWatt: { symbol: 'k', unit: '1', means: 'microfarads for each watt', moves: 'up' },
    power: { symbol: 'P', unit: 'W', means: 'output power printed', moves: 'up' },
  },
  output: { symbol: 'C_u', unit: 'F', means: 'usual bulk capacitance' },
  validity: 'a bridge; a single diode and a doubler ask for more',
  compute: ({ perWatt, power }) => MICRO * perWatt * power,
});
