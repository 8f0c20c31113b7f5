import { spreadSides } from '../../circuit/path/spread-sides.ts';
import { toCircuit } from '../../circuit/trace/to-circuit.ts';
import type { Trace, TracedPart } from '../../circuit/trace/traced.ts';
import type { CaseInput } from '../../evidence/case.ts';

type PartInput = NonNullable<CaseInput['parts']>[number];
type ConductorInput = NonNullable<CaseInput['conductors']>[number];
type Ids = ReadonlyMap<string, string>;

const NOT_READ = { state: 'unknown', because: 'not read' } as const;
const NOT_FOLLOWED = { state: 'unknown', because: 'not followed' } as const;
const NOT_KNOWN = { state: 'unknown', because: 'not known what it is' } as const;

/**
 * Parts and conductors of a case from circuit lines. The side of a net that nobody stated is put in as it follows from the parts; a net that
 * nothing leads to stays not looked at. A class typed in a line is what the part prints: its identity is not established by that.
 */
export function toEvidence(trace: Trace): { parts: PartInput[]; conductors: ConductorInput[] } {
  const { circuit, crossing } = toCircuit(trace);
  const { of } = spreadSides(circuit, crossing);
  const nets: Ids = new Map(circuit.nets.map(({ id, name }) => [name, id]));
  return {
    parts: trace.parts.map((part, index) => toPart(part, circuit.parts[index]!.id, nets)),
    conductors: circuit.nets.map(({ id, name }) => {
      const side = of.get(id);
      return { id, name, side: side ?? { state: 'notLooked' } };
    }),
  };
}

function toPart(part: TracedPart, id: string, nets: Ids): PartInput {
  const rating = {
    ...(part.voltage === null ? {} : { voltage: part.voltage }),
    ...(part.current === null ? {} : { current: part.current }),
    ...(part.power === null ? {} : { power: part.power }),
    ...(part.tolerance === null ? {} : { tolerance: part.tolerance.replace('±', '') }),
  };
  return {
    id,
    ref: part.ref,
    kind: part.kind ?? NOT_KNOWN,
    ...(part.value === null ? {} : { value: part.value === '?' ? NOT_READ : part.value }),
    ...(part.marking === null ? {} : { marking: part.marking }),
    ...(Object.keys(rating).length === 0 ? {} : { rating }),
    ...(part.safetyClass === null ? {} : { safetyClass: part.safetyClass as 'Y1' }),
    pins: part.pins.map(({ pin, net }) => ({ pin, net: net === null ? NOT_FOLLOWED : nets.get(net)! })),
    ...(part.crosses ? { crosses: true } : {}),
    ...(part.windings.length === 0
      ? {}
      : {
          windings: part.windings.map(({ name, turns }) => ({
            name,
            ...(turns === null ? {} : { turns: turns === '?' ? NOT_READ : turns }),
          })),
        }),
  };
}
