import { derive } from '../../formula/derive.ts';
import { shortedOutputCurrent } from '../../formula/magnetics/shorted-output-current.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { ConverterInputs } from './converter-facts.ts';

const ARRIVING = 0.85; // between a plain rectifier, 0.8, and a Schottky one, 0.9
const ARRIVING_HALF_WIDTH = 0.05;

/** Current into a shorted output of a converter that keeps its frequency and its current limit; null for every other law. */
export function shortedOutput({ law, ratio, peak }: ConverterInputs, id: string): Derived | null {
  if (law !== 'fixedFrequency' || ratio === null || peak === null) return null;
  const arriving = given(
    'constant',
    ARRIVING,
    '1',
    {
      id: `${id}/arriving`,
      name: 'estimate-arriving-at-short',
      symbol: 'k',
      source: cite('circuit-theory', 'share of the peak that reaches a short, 0.8 to 0.9', 'secondary', {
        alsoBy: ['a maker’s note on designing flyback supplies, 1999'],
      }),
    },
    { form: doubtOf({ id: 'estimate/arriving-at-short', u: rectangular(ARRIVING_HALF_WIDTH), means: 'estimatedCoupling' }) },
  );
  return derive(shortedOutputCurrent, { arriving, ratio, peak }, `${id}/shorted-output`);
}
