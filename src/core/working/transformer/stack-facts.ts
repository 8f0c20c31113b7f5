import type { ExhibitOf } from '../../evidence/case.ts';
import type { Part, Side } from '../../evidence/sample.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { findRead, type Opened, openValue } from '../bench/open-value.ts';
import { readCount, readStackValue, type StackValue } from './stack-value.ts';

type Stack = ExhibitOf<'stack'>;
type Layer = Stack['outsideIn'][number];
export type WindingEvidence = Extract<Layer, { is: 'winding' }>;
export type TapeEvidence = Extract<Layer, { is: 'insulation' }>;

export interface Winding {
  readonly is: 'winding';
  readonly id: string;
  readonly name: string;
  readonly evidence: WindingEvidence;
  readonly field: string;
  readonly side: Opened<Side>;
  /** Its pins stand on both sides of the barrier, or not on the side it is said to be on. */
  readonly contradicts: boolean;
  readonly role: 'primary' | 'secondary' | 'auxiliary' | 'screen' | null;
  readonly turns: StackValue;
  readonly layers: StackValue;
  readonly wire: StackValue;
  readonly overall: StackValue;
  readonly strands: StackValue;
  readonly wireKind: Opened<'enamelled' | 'fullyInsulated' | 'tripleInsulated' | 'tapeCovered'>;
  /** Null where nobody looked. */
  readonly margins: readonly [StackValue, StackValue] | null;
  readonly toCore: StackValue;
}

export interface Tape {
  readonly is: 'insulation';
  readonly id: string;
  readonly evidence: TapeEvidence;
  readonly field: string;
  readonly layers: StackValue;
  readonly each: StackValue;
  readonly covers: Opened<'whole' | 'stopsShort'>;
  readonly short: StackValue;
  readonly folded: boolean;
}

export interface StackFacts {
  readonly exhibit: Stack;
  readonly part: Part;
  /** Outside in. */
  readonly order: readonly (Winding | Tape)[];
  readonly windings: readonly Winding[];
}

/** Every stack that is not struck, with its values opened. */
export function stackFacts(bench: Bench): StackFacts[] {
  return exhibitsOf(bench, 'stack').flatMap((exhibit) => {
    const part = bench.parts.get(exhibit.part);
    if (exhibit.struck !== undefined || part === undefined) return [];
    const order = exhibit.outsideIn.map((layer) =>
      layer.is === 'winding' ? readWinding(bench, exhibit, part, layer) : readTape(bench, exhibit, layer),
    );
    return [{ exhibit, part, order, windings: order.filter((layer) => layer.is === 'winding') }];
  });
}

function readWinding(bench: Bench, exhibit: Stack, part: Part, evidence: WindingEvidence): Winding {
  const field = `/exhibits/${exhibit.id}/outsideIn/${evidence.id}`;
  const length = (key: 'wire' | 'overall' | 'toCore', symbol: string): StackValue =>
    readStackValue(bench, exhibit, evidence[key], `${field}/${key}`, 'length', symbol);
  const count = (key: 'turns' | 'layers' | 'strands', symbol: string): StackValue =>
    readCount(exhibit, evidence[key], `${field}/${key}`, symbol);
  const { margins } = evidence;
  return {
    is: 'winding',
    id: evidence.id,
    name: evidence.name,
    evidence,
    field,
    ...sideOf(bench, part, evidence),
    role: findRead(evidence.role),
    turns: count('turns', 'N'),
    layers: count('layers', 'm'),
    wire: length('wire', 'd'),
    overall: length('overall', 'd_o'),
    strands: count('strands', 's'),
    wireKind: openValue(evidence.wireKind),
    margins:
      margins === undefined
        ? null
        : [
            readStackValue(bench, exhibit, margins[0], `${field}/margins/0`, 'length', 'm'),
            readStackValue(bench, exhibit, margins[1], `${field}/margins/1`, 'length', 'm'),
          ],
    toCore: length('toCore', 'd'),
  };
}

function readTape(bench: Bench, exhibit: Stack, evidence: TapeEvidence): Tape {
  const field = `/exhibits/${exhibit.id}/outsideIn/${evidence.id}`;
  return {
    is: 'insulation',
    id: evidence.id,
    evidence,
    field,
    layers: readCount(exhibit, evidence.layers, `${field}/layers`, 'n'),
    each: readStackValue(bench, exhibit, evidence.each, `${field}/each`, 'length', 't'),
    covers: openValue(evidence.covers),
    short: readStackValue(bench, exhibit, evidence.short, `${field}/short`, 'length', 's'),
    folded: findRead(evidence.folded) === true,
  };
}

/** As said, else by the nets on which its pins stand, or by the conductors that are named in their place. */
function sideOf(bench: Bench, part: Part, evidence: WindingEvidence): Pick<Winding, 'side' | 'contradicts'> {
  const said = openValue(evidence.side);
  const nets = (evidence.pins ?? []).flatMap((value) => {
    const pin = findRead(value);
    const own = (part.pins ?? []).filter((one) => one.pin === pin).map(({ net }) => findRead(net));
    return own.length > 0 ? own : [pin]; // at the bench a wire end is followed to its conductor
  });
  const sides = [...new Set(nets.flatMap((net) => (net === null ? [] : (findRead(bench.conductors.get(net)?.side) ?? []))))];
  const facing = new Set(sides.map(across));
  if (facing.has('mains') && facing.has('hand')) return { side: BOTH, contradicts: true };
  const [first] = sides;
  if (said.state === 'read') {
    const against = first !== undefined && across(first) !== 'neither' && across(said.v) !== across(first);
    return against ? { side: BOTH, contradicts: true } : { side: said, contradicts: false };
  }
  if (said.state === 'notLooked' && first !== undefined)
    return { side: { state: 'read', v: first, read: { v: first } }, contradicts: false };
  return { side: said, contradicts: false };
}

const BOTH: Opened<Side> = { state: 'unknown', because: 'its pins stand on both sides of the barrier' };

function across(side: Side): 'mains' | 'hand' | 'neither' {
  return side === 'mains' ? 'mains' : side === 'output' || side === 'touchable' ? 'hand' : 'neither';
}
