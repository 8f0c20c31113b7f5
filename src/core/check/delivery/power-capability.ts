import { derive } from '../../formula/derive.ts';
import { powerDelivered } from '../../formula/magnetics/power-delivered.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { nameplateOf } from '../../working/load/power-facts.ts';
import type { Capability } from '../../working/transformer/capability.ts';
import type { TransformerFacts } from '../../working/transformer/transformer-facts.ts';
import { blockedBy } from '../blocked.ts';
import { atLeast, limitLine, undecided } from '../decide.ts';
import type { Subject } from '../define-check.ts';
import { type Answer, defineCheck } from '../define-check.ts';

interface AtMains extends Subject {
  readonly facts: TransformerFacts;
  readonly which: Capability['which'];
}

const ARRIVES = 0.88; // of the power into the core; leakage, copper, core and rectifier take 4 to 20 %, practice of the bench
const ARRIVES_HALF_WIDTH = 0.08;

/** Can the transformer pass the power that is claimed, at its current limit and at the valley of the rail, at the lowest and at nominal mains? */
export const powerCapability = defineCheck<AtMains>({
  id: 'delivery/power-capability',
  consequence: 'disappointing',
  needs: ['stack'],
  subjects: ({ transformers }) =>
    transformers.length === 0
      ? 'notLooked'
      : transformers.flatMap((facts) =>
          (['lowest', 'nominal'] as const).map(
            (which): AtMains => ({ id: `${facts.stack.part.id}~${which}`, about: `${facts.stack.part.ref}, ${which} mains`, facts, which }),
          ),
        ),
  judge: ({ setting }, { facts, which }): Answer => {
    const own = facts.capabilities.find((one) => one.which === which);
    if (own === undefined) return blockedBy(facts, which === 'lowest' ? 'mostAtLowest' : 'mostAtNominal');
    const claimed = facts.level === null ? null : nameplateOf(facts.level);
    if (claimed === null)
      return { judgement: undecided('notAssessed', 'limitUnknown', { measured: own.power }), notes: [{ key: 'noClaim', args: {} }] };
    const delivered = derive(
      powerDelivered,
      { power: own.power, share: arrives() },
      `transformer/${facts.stack.part.id}/${which}/delivered`,
    );
    return {
      judgement: atLeast(delivered, limitLine('powerClaimed', 'atLeast', claimed), setting.decision),
      beside: [own.valley.step],
      notes: [
        {
          key: own.point.cut ? 'capabilityCut' : 'capabilityAt',
          args: { power: own.power.value, valley: own.valley.value, mains: own.mains.value },
        },
      ],
    };
  },
});

function arrives(): Derived {
  return given(
    'constant',
    ARRIVES,
    '1',
    {
      id: 'transformer/share-that-arrives',
      name: 'estimate-share-that-arrives',
      symbol: 'η',
      source: cite('bench', 'share that arrives behind the rectifier, 0.80 to 0.96', 'common-practice'),
    },
    { form: doubtOf({ id: 'estimate/share-that-arrives', u: rectangular(ARRIVES_HALF_WIDTH), means: 'estimatedShareThatArrives' }) },
  );
}
