import type { Simulation } from '../../evidence/computed/simulation.ts';
import { refsWithJob } from '../../working/simulated/refs-with-job.ts';
import { type RunSubject, subjectsOf } from '../../working/simulated/run-facts.ts';
import { defineCheck } from '../define-check.ts';
import { judgeSimulatedStress } from '../judge-simulated-stress.ts';

/** Does the switch stay within its rating at every simulated load and mains, with its ringing? */
export const switchStress = defineCheck<RunSubject<Simulation>>({
  id: 'fire/switch-stress',
  consequence: 'injurious',
  needs: ['circuitRun'],
  subjects: ({ runs }) => (runs.simulations.length === 0 ? 'notLooked' : subjectsOf(runs.simulations)),
  judge: (facts, subject) => judgeSimulatedStress(facts, subject, refsWithJob(facts, 'switch')),
});
