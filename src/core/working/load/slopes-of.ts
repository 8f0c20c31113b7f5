import { derive } from '../../formula/derive.ts';
import { cableResistance } from '../../formula/load/cable-resistance.ts';
import { type Derived, uncertainty } from '../../trace/derived.ts';
import type { Note, StepNode } from '../../trace/step.ts';
import { outputResistance } from './output-resistance.ts';
import type { LevelFacts } from './sweep-facts.ts';

const SURE = 2; // standard uncertainties by which a slope must differ from none

/** Output resistance of each run, and what cable and contacts add where there is a run at each end. */
export function slopesOf(level: LevelFacts, runs: LevelFacts['nearest']): { steps: StepNode[]; notes: Note[] } {
  const found = runs.flatMap(({ sweep, held }) => {
    const resistance = held === null ? null : outputResistance(sweep, held);
    return resistance === null ? [] : [{ sense: sweep.exhibit.sense, resistance, exhibit: sweep.exhibit.id }];
  });
  const at = (sense: 'socket' | 'cableEnd'): Derived | undefined => found.find((one) => one.sense === sense)?.resistance;
  const [socket, end] = [at('socket'), at('cableEnd')];
  const cable =
    socket === undefined || end === undefined
      ? null
      : derive(cableResistance, { end, socket }, `load/${level.port.id}/${level.level.id}/cable-resistance`);
  const notes = found.map(({ resistance, exhibit }): Note => {
    const u = uncertainty(resistance);
    const rises = resistance.value < 0 && u !== null && -resistance.value > SURE * u;
    return rises
      ? { key: 'cableCompensation', args: { exhibit, rise: -resistance.value } }
      : { key: 'outputResistance', args: { exhibit, resistance: resistance.value } };
  });
  return {
    steps: [...found.map(({ resistance }) => resistance.step), ...(cable === null ? [] : [cable.step])],
    notes: cable === null ? notes : [...notes, { key: 'cableAndContacts', args: { resistance: cable.value } }],
  };
}
