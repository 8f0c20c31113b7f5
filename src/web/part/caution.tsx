import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { Residual } from './residual.tsx';

/** Before live work: how much energy to reckon with, and a measured residual. It can be read and filled in, not closed. */
export function Caution() {
  const { view } = useSnapshot();
  const { store, openOrigin } = useOpenPage();
  const { screen } = useSnapshot();
  const isRead = screen['cautions-read'] !== undefined;
  return (
    <section className="live" aria-label="Caution">
      <b>Before live work</b>
      <p>{view.caution.energy}</p>
      <p>Unplug, discharge, then measure the residual:</p>
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
        <summary>Cautions for this work</summary>
        <ul>
          {view.caution.sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
