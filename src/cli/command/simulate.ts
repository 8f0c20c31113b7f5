import { measuredPoints } from '../../app/circuit/measured-points.ts';
import { simulateCircuit } from '../../app/circuit/simulate-circuit.ts';
import { simulationText } from '../../present/text/run-text.ts';
import { print } from '../output.ts';
import { type CircuitOptions, runCircuit } from '../run-circuit.ts';

/** Runs the traced circuit of a case at its operating points, prints them beside what was measured, and keeps them in the case. */
export async function simulate(which: string, options: CircuitOptions): Promise<void> {
  const { open, kept } = await runCircuit(which, options, simulateCircuit);
  print(options.json === true ? JSON.stringify(kept.result, null, 2) : simulationText(kept.result, measuredPoints(open, kept.result)));
}
