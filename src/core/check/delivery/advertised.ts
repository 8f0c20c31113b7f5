import type { Derived } from '../../trace/derived.ts';
import { type AdvertisedLevel, advertisedLevels, type Offer } from '../../working/load/advertised-facts.ts';
import { companyOf } from '../../working/load/other-loads.ts';
import { atLeast, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { heldLine } from '../held-line.ts';
import { worstAnswer } from '../worst-answer.ts';

/** Does the output hold its window up to the current it tells the device it may draw, whatever the label says? */
export const advertised = defineCheck<AdvertisedLevel>({
  id: 'delivery/advertised',
  consequence: 'disappointing',
  needs: ['advertised'],
  subjects: ({ bench, levels }) => {
    if (bench.one.ports.length === 0) return 'notLooked';
    const found = advertisedLevels(bench, levels);
    return found.length > 0 ? found : 'doesNotApply';
  },
  judge: ({ bench, setting }, { level, offers, listRead }) => {
    const [first] = offers;
    if (first === undefined)
      return {
        judgement: listRead
          ? undecided('notApplicable', 'doesNotApply', { notes: [{ key: 'levelNotOffered', args: {} }] })
          : undecided('notAssessed', 'notLooked'),
      };
    if (level === null) return open('notLooked', first, 'offerWithoutLevel');
    const { window } = level;
    if (window === null) return open('limitUnknown', first, 'noWindow');
    const runs = [...level.nearest, ...level.inCompany];
    if (runs.length === 0) return open('notLooked', first, 'offerNotSwept');
    const untried = new Set(offers.map(({ company }) => company));
    for (const { sweep } of runs) untried.delete(companyOf(bench, sweep.exhibit, level.port.id));
    const answers = offers.flatMap((offer) =>
      runs
        .filter(({ sweep }) => companyOf(bench, sweep.exhibit, level.port.id) === offer.company)
        .flatMap(({ sweep, held }): Answer[] => {
          if (held === null) return [];
          const printed = level.claim;
          const columns = [offer.current.step, held.step, ...(printed === null ? [] : [printed.step])];
          return [
            {
              judgement: atLeast(held, heldLine('advertised', offer.current, window), setting.decision),
              beside: columns,
              notes: [
                columnsNote(offer.current, held, printed),
                {
                  key: 'heldAt',
                  args: { exhibit: sweep.exhibit.id, mains: sweep.mains?.value ?? 'notStated', sense: sweep.exhibit.sense },
                },
              ],
            },
          ];
        }),
    );
    if (answers.length === 0) return open('notComparable', first, 'otherCompany');
    const worst = worstAnswer(answers);
    return untried.size === 0 ? worst : { ...worst, notes: [...(worst.notes ?? []), { key: 'otherCompany', args: {} }] };
  },
});

function open(reason: 'notLooked' | 'limitUnknown' | 'notComparable', offer: Offer, key: string): Answer {
  return {
    judgement: undecided('notAssessed', reason, { fields: [offer.field], notes: [{ key, args: { advertised: offer.current.value } }] }),
    beside: [offer.current.step],
  };
}

function columnsNote(offered: Derived, held: Derived, printed: Derived | null): { key: string; args: Record<string, string | number> } {
  const key = held.side === 'above' ? 'advertisedHeldAtLeast' : 'advertisedHeldPrinted';
  return { key, args: { advertised: offered.value, held: held.value, printed: printed?.value ?? 'notStated' } };
}
