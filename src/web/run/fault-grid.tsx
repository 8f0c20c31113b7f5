import { useEffect, useRef, useState } from 'react';
import { RUN_PAGE } from '../../present/words/run-page-words.ts';
import type { CampaignView, CellView, LinesView } from '../../present/workspace/run-view.ts';
import { runLines } from '../api/casebook.ts';
import { Assumed } from './assumed.tsx';
import { Lines } from './lines.tsx';

interface Chosen {
  readonly fault: string;
  readonly name: string;
  readonly cell: CellView;
}

/** Faults by load: a sign, a word and a colour in each cell; a cell opens what it does to output, person, fuse and fire, and its lines. */
export function FaultGrid({ id, view }: { id: string; view: CampaignView }) {
  const [telling, setTelling] = useState(true);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const rows = telling ? view.rows.filter(({ same }) => !same) : view.rows;
  const title = `faults-${view.level}`;
  return (
    <section aria-labelledby={title}>
      <h3 id={title}>
        {RUN_PAGE.singleFaults}, {view.title}
      </h3>
      <ul className="summary">
        {view.summary.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      <label>
        <input type="checkbox" checked={telling} onChange={(event) => setTelling(event.target.checked)} /> {RUN_PAGE.onlyTelling}
      </label>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table that can be scrolled must be reachable by keyboard (WCAG 2.1.1) */}
      <section className="wide" tabIndex={0} aria-label={RUN_PAGE.singleFaults}>
        <table className="faultgrid">
          <thead>
            <tr>
              <th scope="col">{RUN_PAGE.fault}</th>
              {view.loads.map((load) => (
                <th key={load} scope="col">
                  {load}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.fault}>
                <th scope="row">{row.name}</th>
                {row.cells.map((cell, index) => (
                  <td key={cell.load} className={`tone-${cell.tone}`}>
                    <button
                      type="button"
                      aria-pressed={chosen?.fault === row.fault && chosen.cell.load === cell.load}
                      aria-label={RUN_PAGE.cellOf(row.name, view.loads[index] ?? '', cell.word)}
                      onClick={() => setChosen({ fault: row.fault, name: row.name, cell })}
                    >
                      <span className="sign" aria-hidden="true">
                        {cell.sign}
                      </span>{' '}
                      {cell.word}
                    </button>
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {chosen !== null && (
        <Opened key={`${chosen.fault} ${chosen.cell.load}`} id={id} level={view.level} chosen={chosen} onClose={() => setChosen(null)} />
      )}
      <Assumed assumptions={view.assumptions} leftOut={view.leftOut} />
    </section>
  );
}

/** One cell laid open. */
function Opened({ id, level, chosen, onClose }: { id: string; level: string; chosen: Chosen; onClose: () => void }) {
  const { fault, name, cell } = chosen;
  const [lines, setLines] = useState<LinesView | null>(null);
  const [trouble, setTrouble] = useState('');
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    const stop = new AbortController();
    runLines(id, { level, fault, load: cell.load }, stop.signal)
      .then(setLines)
      .catch((error: Error) => !stop.signal.aborted && setTrouble(error.message));
    return () => stop.abort();
  }, [id, level, fault, cell.load]);
  return (
    <div className="opened-fault">
      <h4 ref={heading} tabIndex={-1}>
        {lines?.title ?? name}: {cell.word}
      </h4>
      <dl>
        <div>
          <dt>{RUN_PAGE.output}</dt>
          <dd>{cell.output}</dd>
        </div>
        <div>
          <dt>{RUN_PAGE.person}</dt>
          <dd>{cell.person}</dd>
        </div>
        <div>
          <dt>{RUN_PAGE.fuse}</dt>
          <dd>{cell.fuse}</dd>
        </div>
        <div>
          <dt>{RUN_PAGE.fire}</dt>
          <dd>{cell.fire === '' ? RUN_PAGE.fireNothing : cell.fire}</dd>
        </div>
      </dl>
      {lines === null && <p className="small">{trouble === '' ? RUN_PAGE.drawing : trouble}</p>}
      {lines !== null && <Lines view={lines} title={lines.title} />}
      <button type="button" className="quiet" onClick={onClose}>
        {RUN_PAGE.close}
      </button>
    </div>
  );
}
