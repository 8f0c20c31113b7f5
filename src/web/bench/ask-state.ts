import type { CaseReader } from '../part/new-exhibit.ts';
import type { Ask, Option } from './task/task.ts';

type Chosen = Readonly<Record<string, string>>;

/** What there is to choose, without what another ask has taken. */
export function optionsOf(ask: Ask, chosen: Chosen, reader: CaseReader): readonly Option[] {
  const options = ask.options(reader);
  return ask.not === undefined ? options : options.filter(({ value }) => value !== chosen[ask.not ?? '']);
}

/** Asks that have something to choose from and of which nothing is chosen yet, or what was chosen is gone. */
export function openAsks(asks: readonly Ask[], chosen: Chosen, reader: CaseReader): readonly Ask[] {
  return asks.filter((ask) => {
    const options = optionsOf(ask, chosen, reader);
    if (options.length === 0) return ask.needsName === true;
    return options.length > 1 && !options.some(({ value }) => value === chosen[ask.key]);
  });
}

/** What was chosen, with the one option where there is no choice. */
export function chosenFor(asks: readonly Ask[], chosen: Chosen, reader: CaseReader): Record<string, string> {
  const settled: Record<string, string> = {};
  for (const ask of asks) {
    const options = optionsOf(ask, settled, reader);
    const found = options.find(({ value }) => value === chosen[ask.key]) ?? (options.length === 1 ? options[0] : undefined);
    if (found !== undefined) settled[ask.key] = found.value;
  }
  return settled;
}
