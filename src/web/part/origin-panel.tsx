import { useEffect, useRef, useState } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import type { Origin } from '../../present/workspace/origin.ts';
import { findOrigin } from '../api/casebook.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { RawHtml } from './raw-html.tsx';

/** Where a number comes from, opened in place; every number in it leads further down, to the reading and its instrument. */
export function OriginPanel({ step, onClose, onOpen }: { step: string; onClose: () => void; onOpen: (step: string) => void }) {
  const { goToField } = useOpenPage();
  const { id, revision } = useSnapshot();
  const [origin, setOrigin] = useState<Origin | null>(null);
  const [trouble, setTrouble] = useState('');
  const head = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision can move the number
  useEffect(() => {
    const stop = new AbortController();
    findOrigin(id, step, stop.signal)
      .then((found) => {
        setTrouble('');
        setOrigin(found);
      })
      .catch((error: Error) => !stop.signal.aborted && setTrouble(error.message));
    return () => stop.abort();
  }, [id, step, revision]);
  const shown = origin?.step ?? '';
  useEffect(() => {
    if (shown !== '') head.current?.focus();
  }, [shown]);
  if (trouble !== '') return <p className="trouble">{trouble}</p>;
  if (origin === null) return <section className="origin" aria-busy="true" />;
  return (
    <section
      className="origin"
      aria-label={CASE_PAGE.whereComesFrom(origin.name)}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onClose();
      }}
    >
      <header>
        <h3 ref={head} tabIndex={-1}>
          {CASE_PAGE.where} {origin.result} {CASE_PAGE.comesFrom}
        </h3>
        <span className="small">
          {origin.name}, {origin.kind}
          {origin.doubt === '' ? '' : `, ${origin.doubt}`}
        </span>
        <button type="button" className="quiet" onClick={onClose}>
          {CASE_PAGE.close}
        </button>
      </header>
      <div className="cols">
        <Equation origin={origin} />
        <Inputs origin={origin} onOpen={onOpen} goToField={goToField} />
        <Budget origin={origin} />
      </div>
      {origin.notes.length > 0 && (
        <ul className="remarks">
          {origin.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {origin.usedBy.length > 0 && (
        <p className="small">
          {CASE_PAGE.usedFor}{' '}
          {origin.usedBy.map((one, index) => (
            <span key={one.step}>
              {index > 0 && ', '}
              <button type="button" className="from" onClick={() => onOpen(one.step)}>
                {one.name}
              </button>
            </span>
          ))}
          .
        </p>
      )}
    </section>
  );
}

function Equation({ origin }: { origin: Origin }) {
  const lines = [
    origin.formulaHtml === null ? null : <RawHtml key="formula" html={origin.formulaHtml} />,
    origin.numbers === null ? null : <span key="numbers">{origin.numbers}</span>,
    <span key="result" className="res">
      {origin.result}
    </span>,
  ].filter((line) => line !== null);
  return (
    <div className="col">
      <b className="label">{origin.formulaHtml === null ? CASE_PAGE.asRead : CASE_PAGE.formulaNumbersResult}</b>
      <div className="eq">
        {lines.map((line, index) => (
          <div key={line.key}>
            {index === 0 && origin.symbolHtml !== '' ? <RawHtml html={origin.symbolHtml} className="left" /> : <span className="left" />}
            <span>=</span>
            {line}
          </div>
        ))}
      </div>
      {origin.validity !== '' && (
        <p className="small">
          {CASE_PAGE.holds} {origin.validity}
        </p>
      )}
      {origin.source !== null && (
        <p className="small">
          {origin.source.place} <span className={`grade ${origin.source.stroke}`}>{origin.source.grade}</span>
          {origin.source.alsoBy.length > 0 && CASE_PAGE.also(origin.source.alsoBy.join('; '))}
          {origin.source.disagrees.length > 0 && CASE_PAGE.disagrees(origin.source.disagrees.join('; '))}
        </p>
      )}
    </div>
  );
}

function Inputs({ origin, onOpen, goToField }: { origin: Origin; onOpen: (step: string) => void; goToField: (place: string) => void }) {
  return (
    <div className="col">
      <b className="label">{CASE_PAGE.whatWentIn}</b>
      <table className="inputs">
        <tbody>
          {origin.inputs.map((input) => (
            <tr key={input.step}>
              <td>
                <RawHtml html={input.symbolHtml} />
              </td>
              <td className="num">
                <button type="button" className="from" onClick={() => onOpen(input.step)}>
                  {input.result}
                </button>
              </td>
              <td>{input.name}</td>
              <td>{input.grade !== '' && <span className={`grade ${input.stroke}`}>{input.grade}</span>}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {origin.field !== null && (
        <p className="small">
          {CASE_PAGE.readFrom}{' '}
          <button type="button" className="from" onClick={() => goToField(origin.field ?? '')}>
            {origin.fieldWords}
          </button>
        </p>
      )}
      {origin.weakest !== null && (
        <p className="small">
          {CASE_PAGE.weakestInTheChain} <span className={`grade ${origin.weakest.stroke}`}>{origin.weakest.grade}</span> (
          {origin.weakest.name})
        </p>
      )}
    </div>
  );
}

const WHOLE = 100;

function Budget({ origin }: { origin: Origin }) {
  if (origin.budget.length === 0) return <div className="col" />;
  return (
    <div className="col budget">
      <b className="label">{CASE_PAGE.uncertainty}</b>
      {origin.budget.map(({ words, amount, share, shareText }) => (
        <div key={words + amount}>
          <span>{words}</span>
          <span className="num">
            {amount} · {shareText}
          </span>
          <svg viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
            <rect width={Math.max(1, Math.min(1, share ?? 0) * WHOLE)} height="6" />
          </svg>
        </div>
      ))}
      {origin.smaller > 0 && (
        <p className="small">
          {CASE_PAGE.and} {origin.smaller} {CASE_PAGE.smaller}
        </p>
      )}
    </div>
  );
}
