import { ZERO_CELSIUS_K } from '../../quantity/unit.ts';
import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const INCH_M = 0.0254; // exact
const MIL_M = INCH_M / 1000;
const CIRCULAR_MIL_M2 = (Math.PI / 4) * MIL_M * MIL_M; // a circle of one mil
const COPPER_MELTS_C = 1083; // as the equation is printed
const COPPER_OFFSET_C = 234; // below zero, where the resistance of copper would vanish; as the equation is printed
const FACTOR = 33; // A in circular mils, t in seconds; as the equation is printed
const LONGEST_S = 1;

/** Current that melts a copper track in a given time when no heat leaves it. An estimate of the trade, never a limit. */
export const meltingCurrent = defineFormula({
  id: 'board/melting-current',
  tex: String.raw`I = A \sqrt{\frac{1}{33\,t} \log_{10}\!\left(1 + \frac{1083 - T_a}{234 + T_a}\right)},\quad A = w h\ \text{in circular mils}`,
  text: 'I = A · sqrt( log10( 1 + ( 1083 − T_a ) / ( 234 + T_a ) ) / ( 33 · t ) ) with A = w · h in circular mils',
  source: cite('fusing', 'equation named after Onderdonk; no original paper is known', 'secondary'),
  inputs: {
    width: { symbol: 'w', unit: 'm', means: 'width of the track', moves: 'up' },
    thickness: { symbol: 'h', unit: 'm', means: 'thickness of its copper', moves: 'up' },
    ambient: { symbol: 'T_a', unit: 'K', means: 'temperature before', moves: 'down' },
    time: { symbol: 't', unit: 's', means: 'how long', moves: 'down', to: LONGEST_S },
  },
  output: { symbol: 'I', unit: 'A', means: 'current that melts the track' },
  validity: 'adiabatic: a second or less; longer, the board takes heat away and more is needed',
  compute: ({ width, thickness, ambient, time }) => {
    const celsius = ambient - ZERO_CELSIUS_K;
    // no rise is left, and no current needed, where the copper is molten already
    const rise =
      celsius < COPPER_MELTS_C ? Math.log(1 + (COPPER_MELTS_C - celsius) / Math.max(1, COPPER_OFFSET_C + celsius)) / Math.LN10 : 0;
    return ((width * thickness) / CIRCULAR_MIL_M2) * Math.sqrt(Math.max(0, rise) / (FACTOR * time));
  },
});
