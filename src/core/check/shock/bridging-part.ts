import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { bridging } from '../../table/iec-60384-14/2013/bridging.ts';
import { getCell } from '../../table/look-up.ts';
import { findRead, openValue } from '../../working/bench/open-value.ts';
import { type BridgingPath, suppressionAbsent } from '../../working/board/bridging-facts.ts';
import { limitLine, type LimitLine, oneOf, undecided } from '../decide.ts';
import { type Answer, defineCheck } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

const CAPACITORS = new Set(['capacitor', 'ceramicCapacitor', 'filmCapacitor', 'electrolyticCapacitor']);
/** A wire or a link across the barrier bridges it, whatever it was meant for. */
const CONDUCTORS = new Set(['jumper', 'inductor', 'fuse', 'fusibleResistor', 'diode', 'zener', 'varistor', 'ntc']);
const SAME_VALUE = 0.2; // two capacitors in series count as equal within their usual tolerance; common practice

/** Is every part that stands across the barrier of a kind that may stand there? */
export const bridgingPart = defineCheck<BridgingPath>({
  id: 'shock/bridging-part',
  consequence: 'lethal',
  needs: ['bridgingParts'],
  subjects: ({ bench, bridging: paths }) => (paths.length > 0 ? paths : suppressionAbsent(bench) ? 'doesNotApply' : 'notLooked'),
  judge: (_facts, path) => judgePath(path),
});

function allowed(path: BridgingPath): LimitLine {
  const y1 = limitLine('oneY1', 'oneOf', getCell(bridging, 'Y1', 'inSeries', 'insulation/bridging/y1', 'n'));
  const words = path.towards === 'reinforced' ? ['Y1', 'Y2+Y2'] : ['Y1', 'Y2'];
  return { ...y1, name: path.towards === 'reinforced' ? 'oneY1OrTwoY2' : 'oneY2', at: null, words };
}

function judgePath(path: BridgingPath): Answer {
  const limit = allowed(path);
  const fields = path.parts.flatMap(({ id }) => [`/parts/${id}/kind`, `/parts/${id}/safetyClass`]);
  const kinds = path.parts.map(({ kind }) => findRead(kind));
  const wrong = kinds.find((kind) => kind !== null && CONDUCTORS.has(kind));
  if (wrong !== undefined) return { judgement: oneOf(wrong!, limit, false, fields), rung: 'bridgedOrAbsent' };
  const unclear = path.parts.find(({ kind }) => !CAPACITORS.has(findRead(kind) ?? ''));
  if (unclear !== undefined) {
    const opened = openValue(unclear.kind);
    // resistors and chips may stand there under rules of their own that are not held here
    const reason = opened.state === 'read' ? 'limitUnknown' : 'unknownValue';
    return { judgement: undecided('inconclusive', reason, { measured: { word: opened.state === 'read' ? opened.v : opened.state }, limit, fields }) };
  }
  const classes = path.parts.map(({ safetyClass }) => openValue(safetyClass));
  for (const [index, opened] of classes.entries()) {
    const field = `/parts/${path.parts[index]!.id}/safetyClass`;
    if (opened.state === 'absent') return { judgement: { ...oneOf(ordinary(kinds[index]), limit, false, fields), notes: [{ key: 'because', args: { because: opened.because } }] }, rung: 'bridgedOrAbsent' };
    if (opened.state !== 'read') return { judgement: { ...judgeState(opened, field), limit } };
  }
  const words = classes.map((opened) => (opened.state === 'read' ? opened.v : ''));
  const word = words.join('+');
  const enough =
    path.towards === 'basic'
      ? words.some((own) => own === 'Y1' || own === 'Y2')
      : words.includes('Y1') || (words.length === 2 && words.every((own) => own === 'Y2') && equalValues(path));
  if (!enough) {
    const single = path.towards === 'reinforced' && words.length === 1 && words[0] === 'Y2';
    // one Y2 is basic insulation, well made: not a bridge
    return single
      ? { judgement: oneOf(word, limit, false, fields), rung: 'basicNotReinforced', consequence: 'injurious' }
      : { judgement: oneOf(word, limit, false, fields), rung: 'bridgedOrAbsent' };
  }
  const established = path.parts.every(({ identity }) => findRead(identity) === 'established');
  if (!established) return { judgement: undecided('inconclusive', 'unknownValue', { measured: { word }, limit, fields: path.parts.map(({ id }) => `/parts/${id}/identity`), notes: [{ key: 'identityNotEstablished', args: {} }] }) };
  const notes = word === 'Y1' ? [{ key: 'householdStandardDiffers', args: {} }] : [];
  return { judgement: oneOf(word, limit, true, fields), rung: path.towards === 'reinforced' ? 'reinforcedMet' : 'basicMet', notes };
}

function ordinary(kind: string | null | undefined): string {
  return kind === 'ceramicCapacitor' ? 'ordinaryCeramic' : kind === 'filmCapacitor' ? 'ordinaryFilm' : 'ordinaryCapacitor';
}

function equalValues(path: BridgingPath): boolean {
  const values = path.parts.map(({ value, measured }) => {
    const text = findRead(measured) ?? findRead(value);
    const read = text === null ? null : parseQuantity(text, 'capacitance');
    return read === null || isRefusal(read) ? null : read.value;
  });
  const [one, two] = values;
  return one != null && two != null && Math.abs(one - two) <= SAME_VALUE * Math.max(one, two);
}
