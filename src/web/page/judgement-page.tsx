import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import type { NextView } from '../../present/workspace/next-view.ts';
import { addExhibit } from '../part/new-exhibit.ts';
import { OriginPanel } from '../part/origin-panel.tsx';
import { residualState } from '../part/residual.tsx';
import { go, toCasePath } from '../state/route.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { ENTRY_OF } from './entry-of.ts';

/** What can only be measured now, what to measure next with what it may change, and remarks on the case. */
export function JudgementPage({ origin, setOrigin }: { origin: string | null; setOrigin: (step: string | null) => void }) {
  const { view } = useSnapshot();
  const { goToField } = useOpenPage();
  return (
    <article className="chapter" aria-labelledby="chapter-title">
      <header>
        <h2 id="chapter-title">{CASE_PAGE.judgement}</h2>
        <span className="small">{CASE_PAGE.whatWouldSettleMostAnd}</span>
      </header>
      {view.lastChance.map(({ before, title, measures }) => (
        <section className="last" key={before} aria-label={title}>
          <h3>
            {title.charAt(0).toUpperCase()}
            {title.slice(1)}, {measures.length} {CASE_PAGE.canOnlyBeMeasuredNow}
          </h3>
          <ul>
            {measures.map(({ measure, words }) => (
              <li key={measure}>{words}</li>
            ))}
          </ul>
        </section>
      ))}
      <section aria-label={CASE_PAGE.whatToMeasureNext}>
        <h3>{CASE_PAGE.whatToMeasureNext}</h3>
        {view.next.length === 0 && <p>{CASE_PAGE.nothingThatThisBenchCould}</p>}
        <ol className="nexts">
          {view.next.map((one) => (
            <NextStep key={one.id} one={one} onOrigin={setOrigin} />
          ))}
        </ol>
      </section>
      {origin !== null && <OriginPanel step={origin} onClose={() => setOrigin(null)} onOpen={setOrigin} />}
      {view.warnings.length > 0 && (
        <section aria-label={CASE_PAGE.remarksOnTheCase}>
          <h3>{CASE_PAGE.remarksOnTheCase}</h3>
          <ul className="remarks">
            {view.warnings.map(({ at, where, words }) => (
              <li key={at + words}>
                <button type="button" className="from" onClick={() => goToField(at)}>
                  {where}
                </button>
                : {words}
              </li>
            ))}
          </ul>
        </section>
      )}
    </article>
  );
}

/** One measurement: how to do it, what can hurt, where to stop; its entry opens with one click, once the residual is known to be low. */
function NextStep({ one, onOrigin }: { one: NextView; onOrigin: (step: string) => void }) {
  const { store } = useOpenPage();
  const { id, screen } = useSnapshot();
  const entry = ENTRY_OF[one.measure];
  const residual = residualState(screen['residual-now'] ?? '');
  const shut = one.asksResidual && residual !== 'low';
  const start = (): void => {
    if (entry === undefined) return;
    const made = entry.kind === null ? null : addExhibit(store, entry.kind, entry.more ?? {});
    if (made !== null) store.setScreen(`open-${entry.kind}`, made);
    go(toCasePath(id, entry.chapter));
    requestAnimationFrame(() =>
      requestAnimationFrame(() =>
        document
          .querySelector<HTMLElement>(
            made === null ? 'main :is(input, select)' : `#record-${made} :is(input, select), .readings input, .each :is(input, select)`,
          )
          ?.focus(),
      ),
    );
  };
  return (
    <li>
      <p>
        <b>{one.words}.</b> {one.before !== null && <i>{one.before}</i>}
      </p>
      <p className="small">
        {CASE_PAGE.settles(one.settles.map(({ title }) => title).join(', '))} {one.prospect}
      </p>
      {one.hazards.length > 0 && (
        <p className="hazard">
          <b>{CASE_PAGE.hazard}</b> {one.hazards.join('; ')}.
        </p>
      )}
      {one.stops.length > 0 && (
        <p className="small">
          <b>{CASE_PAGE.stopAt}</b>{' '}
          {one.stops.map(({ words, step }, index) => (
            <span key={words}>
              {index > 0 && '; '}
              {step === null ? (
                words
              ) : (
                <button type="button" className="from" onClick={() => onOrigin(step)}>
                  {words}
                </button>
              )}
            </span>
          ))}
          .
        </p>
      )}
      {entry !== undefined && (
        <p className="ways">
          <button type="button" className="btn" disabled={shut} onClick={start}>
            {CASE_PAGE.enterIt}
          </button>
          {shut && <span className="small">{CASE_PAGE.shutUntilResidualVOr}</span>}
        </p>
      )}
    </li>
  );
}
