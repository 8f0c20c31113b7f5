import { useEffect, useState } from 'react';
import { RUN_PAGE } from '../../present/words/run-page-words.ts';
import type { RunView } from '../../present/workspace/run-view.ts';
import { runsOf, startRun, stopRun, type ToldRun } from '../api/casebook.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { FaultGrid } from './fault-grid.tsx';
import { OperatingPoints } from './operating-points.tsx';
import { useRun } from './use-run.ts';

/** The traced circuit run at its operating points and with every fault: started, watched, stopped, shown. */
export function RunsOfCircuit() {
  const { store } = useOpenPage();
  const { id, revision } = useSnapshot();
  const [view, setView] = useState<RunView | null>(null);
  const [level, setLevel] = useState<string | null>(null);
  const [trouble, setTrouble] = useState('');
  const [run, setRun] = useRun(id);
  // biome-ignore lint/correctness/useExhaustiveDependencies: every revision can bring a result or make one stale
  useEffect(() => {
    const stop = new AbortController();
    runsOf(id, stop.signal)
      .then(setView)
      .catch((error: Error) => !stop.signal.aborted && setTrouble(error.message));
    return () => stop.abort();
  }, [id, revision]);
  if (view === null) return <p className="small">{trouble}</p>;
  const busy = run !== null && run.ended === null;
  const begin = (kind: ToldRun['kind']): void => {
    setTrouble('');
    startRun(id, { kind, level, by: store.tab })
      .then(setRun)
      .catch((error: Error) => setTrouble(error.message));
  };
  return (
    <div className="runs">
      <section aria-labelledby="run-title">
        <h3 id="run-title">{RUN_PAGE.run}</h3>
        <p className="said">{view.said}</p>
        {view.needs.length > 0 ? (
          <>
            <p>{RUN_PAGE.needs}</p>
            <ul className="needs">
              {view.needs.map((one) => (
                <li key={one}>{one}</li>
              ))}
            </ul>
          </>
        ) : (
          <div className="run-begin">
            {view.levels.length > 1 && (
              <label>
                {RUN_PAGE.level}{' '}
                <select value={level ?? view.levels[0]?.id} disabled={busy} onChange={(event) => setLevel(event.target.value)}>
                  {view.levels.map((one) => (
                    <option key={one.id} value={one.id}>
                      {one.name}
                    </option>
                  ))}
                </select>
              </label>
            )}
            <div>
              <button type="button" className="btn" disabled={busy} aria-describedby="points-takes" onClick={() => begin('points')}>
                {RUN_PAGE.points}
              </button>
              <span id="points-takes" className="small">
                {RUN_PAGE.pointsTakes}
              </span>
            </div>
            <div>
              <button type="button" className="btn" disabled={busy} aria-describedby="faults-takes" onClick={() => begin('faults')}>
                {RUN_PAGE.faults}
              </button>
              <span id="faults-takes" className="small">
                {RUN_PAGE.faultsTakes}
              </span>
            </div>
          </div>
        )}
        <Watched run={run} onStop={() => void stopRun(id).catch((error: Error) => setTrouble(error.message))} />
        {trouble !== '' && <p role="alert">{trouble}</p>}
        {view.stale.length > 0 && <p className="stale">{RUN_PAGE.stale(view.stale.join(', '))}</p>}
      </section>
      {view.simulations.length + view.campaigns.length === 0 && view.needs.length === 0 && <p className="small">{RUN_PAGE.nothing}</p>}
      {view.simulations.map((one) => (
        <OperatingPoints key={`${one.level} ${revision}`} id={id} view={one} />
      ))}
      {view.campaigns.map((one) => (
        <FaultGrid key={`${one.level} ${revision}`} id={id} view={one} />
      ))}
    </div>
  );
}

/** A bar with words while a run is under way, and how it ended. */
function Watched({ run, onStop }: { run: ToldRun | null; onStop: () => void }) {
  const said =
    run === null || run.ended === null
      ? ''
      : run.ended === 'kept'
        ? RUN_PAGE.kept
        : run.ended === 'stopped'
          ? RUN_PAGE.stopped
          : run.why.join(' ');
  return (
    <>
      {run !== null && run.ended === null && (
        <div className="underway">
          <label>
            {RUN_PAGE.underWay[run.kind]} <progress max={run.of} value={run.done} />
          </label>
          <span className="num">{RUN_PAGE.progress(run.done, run.of)}</span>
          <button type="button" className="btn" onClick={onStop}>
            {RUN_PAGE.stop}
          </button>
        </div>
      )}
      <p role="status" className="small">
        {said}
      </p>
    </>
  );
}
