import { useRef } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { localTime } from '../bench/local-time.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { Residual } from './residual.tsx';

/** Before live work: how much energy to reckon with, and a measured residual. It can be read and filled in, not closed. */
export function Caution() {
  const { view } = useSnapshot();
  const { store, openOrigin } = useOpenPage();
  const { screen } = useSnapshot();
  const readAt = screen['cautions-read'];
  const sheet = useRef<HTMLDetailsElement>(null);
  const acknowledge = (): void => {
    store.setScreen('cautions-read', localTime(new Date()));
    if (sheet.current !== null) sheet.current.open = false;
    sheet.current?.querySelector('summary')?.focus();
  };
  return (
    <section className="live" aria-label={CASE_PAGE.caution}>
      <b>{CASE_PAGE.beforeLiveWork}</b>
      <p>{view.caution.energy}</p>
      <p>{CASE_PAGE.unplugDischargeThenMeasureResidual}</p>
      <Residual />
      {view.caution.left.map(({ text, step }) => (
        <p key={step} className="small">
          <button type="button" className="quiet" onClick={(event) => openOrigin(step, event.currentTarget)}>
            {text}
          </button>
        </p>
      ))}
      <details ref={sheet}>
        <summary>
          {CASE_PAGE.cautionsForThisWork}
          <small>{readAt === undefined ? CASE_PAGE.cautionsNotRead : CASE_PAGE.cautionsReadAt(minuteOf(readAt))}</small>
        </summary>
        <ul>
          {view.caution.sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        <button type="button" className="btn" onClick={acknowledge}>
          {CASE_PAGE.cautionsAcknowledge}
        </button>
      </details>
    </section>
  );
}

/** "2026-03-04 14:05". */
function minuteOf(local: string): string {
  const MINUTE = 16; // characters up to the minute in ISO 8601
  return local.replace('T', ' ').slice(0, MINUTE);
}
