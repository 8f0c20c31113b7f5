import { useEffect, useState } from 'react';
import { runEventsOf, type ToldRun } from '../api/casebook.ts';

/** The run of a case that is under way or was the last, as the server tells it. */
export function useRun(id: string): readonly [ToldRun | null, (run: ToldRun | null) => void] {
  const [run, setRun] = useState<ToldRun | null>(null);
  useEffect(() => {
    const events = new EventSource(runEventsOf(id));
    events.addEventListener('run', (event) => setRun(JSON.parse((event as MessageEvent<string>).data) as ToldRun));
    return () => events.close();
  }, [id]);
  return [run, setRun];
}
