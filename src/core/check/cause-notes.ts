import { recall } from '../recall/recall.ts';
import { given } from '../trace/derived.ts';
import type { Note } from '../trace/step.ts';
import type { Bench } from '../working/bench/bench.ts';
import { evidenceFor } from '../working/cause/cause-evidence.ts';
import { decideCause } from '../working/cause/decide-cause.ts';
import type { Facts } from '../working/facts.ts';
import type { Sweep } from '../working/load/read-sweep.ts';
import type { LevelFacts } from '../working/load/sweep-facts.ts';
import { capabilityAt } from '../working/transformer/capability.ts';
import type { TransformerFacts } from '../working/transformer/transformer-facts.ts';
import { setPointFor } from './judge-set-points.ts';

const SOME_CYCLES = 50; // Hz, where a sweep does not state the frequency of its mains
const MOST_NAMED = 4;
const FEWEST_NAMED = 2;

/** Why a claim is missed at one mains voltage: named only where the evidence names it, else what it can be. None where it is held. */
export function causeNotes(facts: Facts, level: LevelFacts, sweep: Sweep): Note[] {
  const { bench, transformers, spots } = facts;
  const set = setPointFor(facts, level);
  const unit = { bench, transformers, spots, setPoint: 'point' in set ? set.point.value : null };
  const evidence = evidenceFor(unit, level, sweep, (own) => recall(capabilityOf, bench, sweep, own));
  if (evidence === null) return [];
  const verdict = decideCause(evidence);
  const mains = evidence.atMains;
  if (verdict.named !== null) {
    const args = { mains, cause: verdict.named, settle: `settle-${verdict.named}` };
    return [verdict.how === 'shown' ? { key: 'causeShown', args } : { key: 'causeConsistent', args }];
  }
  // a unit of which nothing is known has every cause open, and a list of all says nothing
  if (transformers.length === 0 && evidence.other === null) return [];
  const [one = '', two = '', three = '', four = ''] = verdict.possible.slice(0, MOST_NAMED);
  if (verdict.possible.length < FEWEST_NAMED) return one === '' ? [] : [{ key: 'causePossible', args: { mains, one } }];
  const args = { mains, one, two, three, four };
  if (four !== '') return [{ key: 'causeOneOfFour', args }];
  return [three !== '' ? { key: 'causeOneOfThree', args } : { key: 'causeOneOfTwo', args }];
}

function capabilityOf(bench: Bench, { mains, frequency, exhibit }: Sweep, own: TransformerFacts): ReturnType<typeof capabilityAt> {
  if (mains === null) return null;
  const id = `cause/${exhibit.id}`;
  const volts = given('constant', mains.value, 'V', { id: `${id}/mains`, name: 'mains', symbol: 'V' });
  const cycles = given('constant', frequency?.value ?? SOME_CYCLES, 'Hz', { id: `${id}/frequency`, name: 'frequency', symbol: 'f' });
  return capabilityAt(bench, own.inputs, volts, cycles, id);
}
