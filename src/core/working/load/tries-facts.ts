import { combine } from '../../trace/combine.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { type Event, eventsOf, type What } from './event-facts.ts';

/** How often something was tried and how often it did not come off, over all events of its kind. */
export interface Tries {
  readonly made: Derived;
  readonly failed: Derived;
  readonly events: readonly Event[];
  readonly onlyStruck: boolean;
}

/** Null when no event of these kinds stands in the case. */
export function triesOf(bench: Bench, id: string, whats: readonly What[]): Tries | null {
  const all = eventsOf(bench, whats);
  const events = all.filter(({ struck }) => struck === undefined);
  if (all.length === 0) return null;
  return {
    made: total(events, 'made', `load/tries-${id}-made`),
    failed: total(events, 'failed', `load/tries-${id}-failed`),
    events,
    onlyStruck: events.length === 0,
  };
}

const SYMBOL = { made: 'n', failed: 'm' } as const;

function total(events: readonly Event[], which: 'made' | 'failed', id: string): Derived {
  const counts = events.map((event) => {
    const field = `/exhibits/${event.id}/tries/${which}`;
    return given('typed', event.tries[which], '1', { id: field, name: `tries-${which}`, field, symbol: SYMBOL[which] });
  });
  const [first] = counts;
  if (first === undefined) return given('constant', 0, '1', { id, name: `tries-${which}`, symbol: SYMBOL[which] });
  if (counts.length === 1) return first;
  const named = Object.fromEntries(counts.map((count, index) => [`n${index + 1}`, count]));
  const each = <T>(of: (key: string) => T): Record<string, T> => Object.fromEntries(Object.keys(named).map((key) => [key, of(key)]));
  return combine(
    {
      kind: 'reduce',
      unit: '1',
      formula: null,
      symbols: each((key) => key.replace('n', `${SYMBOL[which]}_`)),
      moves: each(() => 'up' as const),
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0),
    },
    named,
    { id, name: `tries-${which}`, symbol: SYMBOL[which] },
  );
}
