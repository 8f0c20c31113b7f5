import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';

const DROP_V = 0.5; // a Schottky diode 0.3 to 0.6 V, a plain one 0.7 to 1.0 V, a switched rectifier next to nothing; common practice
const DROP_HALF_WIDTH_V = 0.45;

/** What a rectifier of a kind that nobody told drops. */
export function estimatedDrop(): Derived {
  return given(
    'constant',
    DROP_V,
    'V',
    {
      id: 'transformer/rectifier-drop',
      name: 'estimate-rectifier-drop',
      symbol: 'V_f',
      source: cite('bench', 'drop of rectifiers, 0.05 to 0.95 V', 'common-practice'),
    },
    { form: doubtOf({ id: 'estimate/rectifier-drop', u: rectangular(DROP_HALF_WIDTH_V), means: 'estimatedDrop' }) },
  );
}
