import { runFaults } from '../../app/circuit/run-faults.ts';
import { faultsText } from '../../present/text/run-text.ts';
import { print } from '../output.ts';
import { type CircuitOptions, runCircuit } from '../run-circuit.ts';

/** Runs every single fault of the traced circuit of a case, prints what becomes of it, and keeps it in the case. */
export async function faults(which: string, options: CircuitOptions): Promise<void> {
  const { kept } = await runCircuit(which, options, runFaults);
  print(options.json === true ? JSON.stringify(kept.result, null, 2) : faultsText(kept.result));
}
