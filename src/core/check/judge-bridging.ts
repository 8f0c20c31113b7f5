import type { Part } from '../evidence/sample.ts';
import { bridging } from '../table/iec-60384-14/2013/bridging.ts';
import { getCell } from '../table/look-up.ts';
import { openValue } from '../working/bench/open-value.ts';
import type { BridgingPath } from '../working/board/bridging-facts.ts';
import { equalValues, type Worth, wordOf, worthOf } from '../working/board/bridging-worth.ts';
import { type Judgement, type LimitLine, limitLine, oneOf, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';

/** A way through parts; where it ends is of no matter here. */
type Way = Omit<BridgingPath, 'ends'>;

/** What the parts of a way are worth as insulation, against what may stand there. */
export function judgeBridging(path: Way): Answer {
  const limit = allowed(path);
  const worths = path.parts.map(worthOf);
  const fields = path.parts.flatMap(({ id }) => [`/parts/${id}/kind`, `/parts/${id}/safetyClass`]);
  const word = path.parts.map(wordOf).join('+');
  const answer = decideChain(path, worths, word, limit, fields);
  if (path.farEnd === 'known' || answer.judgement.outcome === 'pass') return answer;
  // the far foot may lead anywhere: what would fail towards a hand stays open
  const judgement =
    path.farEnd === 'unknown'
      ? undecided('inconclusive', 'unknownValue', { measured: { word }, limit, fields, notes: [{ key: 'farFootUnknown', args: {} }] })
      : undecided('notAssessed', 'notLooked', { measured: { word }, limit, fields, notes: [{ key: 'farFootUnknown', args: {} }] });
  return { judgement };
}

function decideChain(path: Way, worths: readonly Worth[], word: string, limit: LimitLine, fields: readonly string[]): Answer {
  const because = path.parts.flatMap(({ safetyClass }) => {
    const opened = openValue(safetyClass);
    return opened.state === 'absent' ? [{ key: 'because', args: { because: opened.because } }] : [];
  });
  const fail = (more: Omit<Answer, 'judgement'>): Answer => ({
    judgement: { ...oneOf(word, limit, false, fields), notes: because },
    ...more,
  });
  const has = (worth: Worth): boolean => worths.includes(worth);
  const y2 = path.parts.filter((_, index) => worths[index] === 'y2');
  const enoughTowardsEarth = path.towards === 'basic' && (has('y1') || has('y2'));
  if (has('y1') || enoughTowardsEarth || (y2.length >= 2 && equalValues(y2) === true)) {
    // 60335-1 asks for two parts in series even where one Y1 stands
    const notes = path.towards === 'reinforced' && y2.length < 2 ? [{ key: 'householdStandardDiffers', args: {} }] : [];
    return { judgement: oneOf(word, limit, true, fields), rung: path.towards === 'reinforced' ? 'reinforcedMet' : 'basicMet', notes };
  }
  const open = openReason(path, worths, y2);
  if (open !== null) return { judgement: { ...open, measured: { word }, limit, fields } };
  if (y2.length > 0) return fail({ rung: 'basicNotReinforced', consequence: 'injurious' });
  return fail({ rung: 'bridgedOrAbsent' });
}

/** Why nothing is decided yet: something in the way could still be what makes it good. */
function openReason(path: Way, worths: readonly Worth[], y2: readonly Part[]): Judgement | null {
  if (worths.includes('cannotNow')) return undecided('notAssessed', 'cannotNow');
  if (worths.includes('struck')) return undecided('notAssessed', 'struck');
  if (worths.includes('notLooked')) return undecided('notAssessed', 'notLooked');
  if (worths.includes('unknown')) return undecided('inconclusive', 'unknownValue', { notes: statesOf(path) });
  if (worths.includes('notEstablished'))
    return undecided('inconclusive', 'unknownValue', { notes: [{ key: 'identityNotEstablished', args: {} }] });
  if (worths.includes('otherRule')) return undecided('inconclusive', 'limitUnknown');
  return y2.length >= 2 && equalValues(y2) === null
    ? undecided('inconclusive', 'unknownValue', { notes: [{ key: 'valuesNotKnown', args: {} }] })
    : null;
}

function statesOf(path: Way): Judgement['notes'] {
  return path.parts.flatMap(({ kind, safetyClass }) =>
    [openValue<unknown>(kind), openValue<unknown>(safetyClass)].flatMap((opened) =>
      opened.state === 'unknown' ? [{ key: 'because', args: { because: opened.because } }] : [],
    ),
  );
}

function allowed(path: Way): LimitLine {
  const cell =
    path.towards === 'reinforced'
      ? getCell(bridging, 'Y1', 'inSeries', 'insulation/bridging/y1', 'n')
      : getCell(bridging, 'Y2', 'acrossBasic', 'insulation/bridging/y2-basic', 'n');
  const y1 = limitLine('oneY1', 'oneOf', cell);
  const words = path.towards === 'reinforced' ? ['Y1', 'Y2+Y2'] : ['Y1', 'Y2'];
  return { ...y1, name: path.towards === 'reinforced' ? 'oneY1OrTwoY2' : 'oneY2', at: null, words };
}
