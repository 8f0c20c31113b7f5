import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { Residual } from './residual.tsx';

/** Before live work: how much energy to reckon with, and a measured residual. It can be read and filled in, not closed. */
export function Caution() {
  const { view } = useSnapshot();
  const { store, openOrigin } = useOpenPage();
  const { screen } = useSnapshot();
  const isRead = screen['cautions-read'] !== undefined;
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
      <details
        onToggle={(event) => {
          if (event.currentTarget.open && !isRead) store.setScreen('cautions-read', new Date().toISOString());
        }}
      >
        <summary>{CASE_PAGE.cautionsForThisWork}</summary>
        <ul>
          {view.caution.sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
