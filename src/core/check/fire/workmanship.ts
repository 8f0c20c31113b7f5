import type { ExhibitOf } from '../../evidence/case.ts';
import { arcingProduct } from '../../formula/board/arcing-product.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import { ignitionSource } from '../../table/iec-62368-1/2018/ignition-source.ts';
import { getCell } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Note } from '../../trace/step.ts';
import { exhibitsOf, nameOf } from '../../working/bench/bench.ts';
import type { Facts } from '../../working/facts.ts';
import { printedInputCurrent } from '../../working/label/mark-facts.ts';
import { type LimitLine, oneOf, undecided } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';

type Fault = NonNullable<ExhibitOf<'board'>['faults']>[number];

interface Found extends Subject {
  /** Null where somebody looked and found none. */
  readonly fault: Fault | null;
  readonly field: string;
}

/** A joint that carries the mains can arc and glow; a conductor that can move can close a gap. The rest is a sign of care, or of none. */
const DANGEROUS: ReadonlySet<Fault['kind']> = new Set(['mainsJoint', 'looseConductor']);

const limit: LimitLine = {
  name: 'soundWork',
  kind: 'oneOf',
  at: null,
  words: ['noFaults'],
  source: cite('iec-62368-1', 'clause 4.6, conductors held so that no safeguard is lost when one joint lets go', 'memory'),
  grade: 'memory',
};

/** Is the work sound where the mains runs, and is every conductor held? */
export const workmanship = defineCheck<Found>({
  id: 'fire/workmanship',
  consequence: 'injurious',
  needs: ['workmanship'],
  subjects: ({ bench }) => {
    const boards = exhibitsOf(bench, 'board').filter(({ faults }) => faults !== undefined);
    if (boards.length > 0 && boards.every(({ struck }) => struck !== undefined)) return 'struck';
    const found = boards
      .filter(({ struck }) => struck === undefined)
      .flatMap((board) =>
        (board.faults ?? []).map(
          (fault): Found => ({
            id: `${board.id}-${fault.id}`,
            about: about(bench, fault),
            fault,
            field: `/exhibits/${board.id}/faults/${fault.id}`,
          }),
        ),
      );
    if (found.length > 0) return found;
    const [clean] = boards.filter(({ struck }) => struck === undefined);
    return clean === undefined ? 'notLooked' : [{ id: 'board', about: 'the board', fault: null, field: `/exhibits/${clean.id}/faults` }];
  },
  judge: (facts, { fault, field }) => {
    if (fault === null) return { judgement: oneOf('noFaults', limit, true, [field]) };
    const notes = [{ key: 'faultFound', args: { what: fault.what } }];
    if (fault.kind === undefined)
      return {
        judgement: undecided('inconclusive', 'unknownValue', {
          limit,
          fields: [field],
          notes: [...notes, { key: 'faultKindMissing', args: {} }],
        }),
      };
    const arcing = fault.kind === 'mainsJoint' ? arcingAt(facts) : null;
    return {
      judgement: { ...oneOf(fault.kind, limit, false, [field]), notes: [...notes, ...(arcing?.notes ?? [])] },
      ...(arcing === null ? {} : { beside: [arcing.product.step] }),
      consequence: DANGEROUS.has(fault.kind) ? 'injurious' : 'informative',
    };
  },
});

/** Whether a joint that parts there can arc, by the current that the label prints. A product by rule; shown, not deciding. */
function arcingAt({ bench, setting }: Facts): { product: Derived; notes: Note[] } | null {
  const current = printedInputCurrent(bench);
  if (current === null) return null;
  const peak = derive(peakOfMains, { rms: setting.high }, 'board/crest-at-joint');
  const product = derive(arcingProduct, { peak, current }, 'board/arcing-product');
  const line = getCell(ignitionSource, 'arcing', 'power', 'board/arcing-limit', 'P').value;
  const from = getCell(ignitionSource, 'arcing', 'peakVoltage', 'board/arcing-from', 'V').value;
  const key = peak.value > from && product.value > line ? 'arcingSource' : 'noArcingSource';
  return { product, notes: [{ key, args: { product: product.value, line } }] };
}

function about(bench: Parameters<typeof nameOf>[0], fault: Fault): string {
  return fault.at === undefined ? fault.what : `${fault.what}, ${nameOf(bench, fault.at)}`;
}
