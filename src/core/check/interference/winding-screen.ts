import { cite } from '../../source/source.ts';
import { facesOf } from '../../working/barrier/winding-place.ts';
import { type Wound, woundOf } from '../blocked.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { defineCheck } from '../define-check.ts';

const limit: LimitLine = {
  name: 'screenFitted',
  kind: 'oneOf',
  at: null,
  words: ['present'],
  source: cite('bench', 'a screen between the windings keeps the switching off the output', 'common-practice'),
  grade: 'common-practice',
};

/** Is there a screen between a winding of the mains side and one of the output? As information: many good transformers do without. */
export const windingScreen = defineCheck<Wound>({
  id: 'interference/winding-screen',
  consequence: 'informative',
  needs: ['stack'],
  subjects: ({ transformers }) => woundOf(transformers),
  judge: (_facts, { facts: { stack } }) => {
    const { order, exhibit } = stack;
    const faces = order.map((layer) => (layer.is === 'winding' ? facesOf(layer) : null));
    if (!faces.includes('mains') || !faces.includes('hand')) return { judgement: undecided('notAssessed', 'notLooked') };
    const screens = order.map((layer) => layer.is === 'winding' && layer.role === 'screen');
    // neighbours across the barrier, each pair with or without a screen in between
    const bare = faces.some((here, index) => {
      if (here !== 'mains' && here !== 'hand') return false;
      if (screens[index]) return false;
      const next = faces.findIndex((other, place) => place > index && (other === 'mains' || other === 'hand') && !screens[place]);
      return next > 0 && faces[next] !== here && !screens.slice(index + 1, next).includes(true);
    });
    return { judgement: oneOf(bare ? 'absent' : 'present', limit, !bare, [`/exhibits/${exhibit.id}/outsideIn`]) };
  },
});
