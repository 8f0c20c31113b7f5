import { BODY_OHMS, bodyOutput } from './body-network.ts';
import type { Circuit } from './circuit.ts';
import { addRow, branchRows, type Network, type Row, voltageRow, windingCurrentRow } from './network.ts';
import type { Plan } from './plan.ts';
import type { Quantity } from './request.ts';

/** The two nets a probe lies between, where it is a voltage. */
function netsOf(circuit: Circuit, of: Quantity): readonly [string, string] | null {
  if ('volts' in of) return of.volts;
  if (!('touchOf' in of)) return null;
  const part = circuit.parts.find(({ ref, kind }) => ref === of.touchOf && kind === 'bodyNetwork');
  return part?.kind === 'bodyNetwork' ? [bodyOutput(part.ref), part.pins[1]] : null;
}

/** A voltage between two islands is not fixed by anything. */
export function floats(circuit: Circuit, plan: Plan, of: Quantity): boolean {
  const nets = netsOf(circuit, of);
  if (nets === null) return false;
  const [one, other] = nets.map((net) => {
    const node = plan.nodeOf.get(net);
    return node === undefined ? null : node < 0 ? 0 : plan.islandOf[node]!;
  });
  return one === null || other === null || one !== other;
}

/** The row of a probe in one topology; current of a part is the sum over its branches, all counted from first pin to second. */
export function probeRow(circuit: Circuit, of: Quantity): (network: Network) => Row {
  const nets = netsOf(circuit, of);
  if (nets !== null) {
    const factor = 'touchOf' in of ? 1 / BODY_OHMS : 1;
    return (network) => voltageRow(network, network.plan.nodeOf.get(nets[0]) ?? -1, network.plan.nodeOf.get(nets[1]) ?? -1, factor);
  }
  if (!('ampsInto' in of)) throw new Error('a probe on a body network that is not there passed validation');
  const part = circuit.parts.find(({ ref }) => ref === of.ampsInto);
  if (part?.kind === 'transformer' || part?.kind === 'inductor') {
    const winding = part.kind === 'inductor' ? 0 : part.windings.findIndex(({ name }) => name === of.winding);
    return (network) =>
      windingCurrentRow(
        network,
        network.plan.cores.findIndex(({ ref }) => ref === part.ref),
        winding,
      );
  }
  return (network) => {
    const row = new Float64Array(network.plan.states.count);
    const sign = part?.kind === 'dcSource' || part?.kind === 'mains' ? -1 : 1;
    for (const { ref, amps } of branchRows(network).lossy) if (ref === of.ampsInto) addRow(row, amps, sign);
    return row;
  };
}
