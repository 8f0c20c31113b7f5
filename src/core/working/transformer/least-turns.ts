import { derive } from '../../formula/derive.ts';
import { turnsOfFlux } from '../../formula/magnetics/turns-of-flux.ts';
import { wholeTurns } from '../../formula/magnetics/whole-turns.ts';
import type { ConverterInputs } from './converter-facts.ts';
import type { CoreValues } from './core-values.ts';
import { lacking, type NumberList } from './number-list.ts';

/** Fewest primary turns that keep the hot core out of saturation at the current limit: what a transformer that nobody unwound must have. */
export function tellLeastTurns(list: NumberList, { inductance, peak }: ConverterInputs, { area, saturates }: CoreValues, id: string): void {
  if (inductance === null || peak === null || area === null) {
    list.tell('leastTurns', null, lacking({ inductance, peak, coreArea: area }));
    return;
  }
  const turns = derive(turnsOfFlux, { inductance, peak, flux: saturates, area }, `${id}/turns-of-flux`);
  list.tell('leastTurns', derive(wholeTurns, { turns }, `${id}/least-turns`), []);
}
