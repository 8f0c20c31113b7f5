import { combine } from '../trace/combine.ts';
import type { Chosen, Derived } from '../trace/derived.ts';
import type { Note } from '../trace/step.ts';
import type { Formula } from './define-formula.ts';

/**
 * Applies a formula to derived values. Wrong units and missing inputs are defects and throw; a value outside the stated range leaves a
 * note ("outOfRange") and the check decides what that means.
 */
export function derive<Name extends string>(
  formula: Formula<Name>,
  inputs: Readonly<Record<NoInfer<Name>, Derived>>,
  id: string,
  choices: Readonly<Record<string, Chosen>> = {},
): Derived {
  const names = Object.keys(formula.inputs) as Name[];
  const notes: Note[] = [];
  const symbols = {} as Record<Name, string>;
  const moves: Partial<Record<Name, 'up' | 'down'>> = {};
  const ordered = {} as Record<Name, Derived>;
  for (const name of names) {
    const declared = formula.inputs[name];
    const given: Derived | undefined = inputs[name];
    if (given === undefined) throw new Error(`${formula.id}: input ${name} is missing`);
    if (given.unit !== declared.unit) throw new Error(`${formula.id}: ${name} is in ${given.unit}, wanted ${declared.unit}`);
    symbols[name] = declared.symbol;
    ordered[name] = given;
    if (declared.moves !== undefined) moves[name] = declared.moves;
    if ((declared.from !== undefined && given.value < declared.from) || (declared.to !== undefined && given.value > declared.to))
      notes.push({ key: 'outOfRange', args: { input: name, value: given.value, from: declared.from ?? '', to: declared.to ?? '' } });
  }
  return combine(
    {
      kind: 'formula',
      unit: formula.output.unit,
      formula: formula.id,
      symbols,
      moves,
      compute: formula.compute,
      ...(formula.sensitivity === undefined ? {} : { sensitivity: formula.sensitivity }),
      ...(formula.branch === undefined ? {} : { branch: formula.branch }),
    },
    ordered,
    {
      id,
      name: formula.id,
      symbol: formula.output.symbol,
      source: formula.source,
      notes,
      ...(formula.output.show === undefined ? {} : { show: formula.output.show }),
    },
    choices,
  );
}
