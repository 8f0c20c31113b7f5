import { useEffect, useState } from 'react';
import { RUN_PAGE } from '../../present/words/run-page-words.ts';
import type { LinesView, SimulationView } from '../../present/workspace/run-view.ts';
import { runLines } from '../api/casebook.ts';
import { Assumed } from './assumed.tsx';
import { Lines } from './lines.tsx';

/** Simulated points beside measured ones; the chosen one with its stresses and its lines. */
export function OperatingPoints({ id, view }: { id: string; view: SimulationView }) {
  const FULL = 'nominal-full';
  const [chosen, setChosen] = useState(view.points.some((point) => point.id === FULL) ? FULL : (view.points[0]?.id ?? ''));
  const [lines, setLines] = useState<LinesView | null>(null);
  useEffect(() => {
    const stop = new AbortController();
    setLines(null);
    runLines(id, { level: view.level, point: chosen }, stop.signal)
      .then(setLines)
      .catch(() => undefined);
    return () => stop.abort();
  }, [id, view.level, chosen]);
  const point = view.points.find((one) => one.id === chosen);
  const title = `points-${view.level}`;
  return (
    <section aria-labelledby={title}>
      <h3 id={title}>
        {RUN_PAGE.operating}, {view.title}
      </h3>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that can be scrolled must be reachable by keyboard (WCAG 2.1.1) */}
      <section className="wide" tabIndex={0} aria-label={RUN_PAGE.operating}>
        <table className="points">
          <thead>
            <tr>
              {RUN_PAGE.pointColumns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {view.points.map((one) => (
              <tr key={one.id} className={one.id === chosen ? 'chosen' : ''}>
                <th scope="row">
                  <button type="button" className="from" aria-pressed={one.id === chosen} onClick={() => setChosen(one.id)}>
                    {one.at}
                  </button>
                </th>
                <td className="num">{one.outputText}</td>
                <td className="num">{one.inputText}</td>
                <td className="num">{one.measuredText}</td>
                <td className="num">{one.differenceText}</td>
                <td>{one.remarks}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {point !== undefined && (
        <div className="beside">
          <table className="stresses">
            <caption>
              {RUN_PAGE.stresses}: {point.at}
            </caption>
            <thead>
              <tr>
                {RUN_PAGE.stressColumns.map((column) => (
                  <th key={column} scope="col">
                    {column}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {point.stresses.map((one) => (
                <tr key={one.part} className={one.beyond ? 'beyond' : ''}>
                  <th scope="row">{one.part}</th>
                  <td className="num">{one.valueText}</td>
                  <td className="num">{one.limitText}</td>
                  <td className="num">{one.shareText}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="small">
            {RUN_PAGE.losses} {point.losses}.
          </p>
        </div>
      )}
      {lines !== null && <Lines view={lines} title={`${RUN_PAGE.lines} ${point?.at ?? ''}`} />}
      <Assumed assumptions={view.assumptions} leftOut={view.leftOut} />
    </section>
  );
}
