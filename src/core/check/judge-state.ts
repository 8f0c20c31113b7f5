import type { Opened } from '../working/bench/open-value.ts';
import { type Judgement, undecided } from './decide.ts';

/** What a value that is no reading means to a check: unknown is inconclusive, everything else not assessed; absence is the check's own business. */
export function judgeState(opened: Opened<unknown>, field: string): Judgement {
  const fields = [field];
  switch (opened.state) {
    case 'unknown':
      return undecided('inconclusive', 'unknownValue', { fields, notes: [{ key: 'because', args: { because: opened.because } }] });
    case 'cannotNow':
      return undecided('notAssessed', 'cannotNow', { fields });
    case 'struck':
      return undecided('notAssessed', 'struck', { fields, notes: [{ key: 'because', args: { because: opened.because } }] });
    case 'absent':
      return undecided('inconclusive', 'unknownValue', { fields, notes: [{ key: 'because', args: { because: opened.because } }] });
    case 'notLooked':
      return undecided('notAssessed', 'notLooked', { fields });
    case 'read':
      return undecided('inconclusive', 'unknownValue', { fields });
  }
}
