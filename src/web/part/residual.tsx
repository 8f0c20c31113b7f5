import { useId } from 'react';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { addExhibit } from './new-exhibit.ts';

/** Above this a residual is too high to reach inside: common practice, no publication; far below what a hand feels, so that a meter's slip does not matter. */
const TOO_HIGH_V = 10;

/** What stands on the screen of a residual; emptied together at every power-up. */
export const RESIDUAL_KEYS = ['residual-now', 'residual-after', 'residual-later', 'residual-kept'] as const;

/** Residual voltage as measured, and once more a minute later: charge comes back. Empty again at every power-up; kept in the case by hand. */
export function Residual() {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const now = screen['residual-now'] ?? '';
  const isRead = !['empty', 'unread'].includes(residualState(now));
  return (
    <div className="residuals">
      <One label={CASE_PAGE.now} at="residual-now" />
      <One label={CASE_PAGE.inMin} at="residual-later" />
      {isRead && <Keep />}
      {now !== '' && (
        <button
          type="button"
          className="quiet"
          onClick={() => {
            for (const key of RESIDUAL_KEYS) store.setScreen(key, null);
          }}
        >
          {CASE_PAGE.poweredUpAgain}
        </button>
      )}
    </div>
  );
}

/** Into the case, with the seconds since unplugging; the second reading joins the first. */
function Keep() {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const id = useId();
  const after = screen['residual-after'] ?? '';
  const later = screen['residual-later'] ?? '';
  const kept = screen['residual-kept'] ?? null;
  const second = ['empty', 'unread'].includes(residualState(later)) ? null : { value: inVolts(later) };
  const keep = (): void => {
    if (kept !== null) {
      if (second !== null) store.set(`/case/exhibits/${kept}/later`, second, newItemId('entry'), { key: 'entry', args: {} });
      store.setScreen('residual-kept', `${kept}+`);
      return;
    }
    const first = { value: inVolts(screen['residual-now'] ?? ''), ...(after === '' ? {} : { after: inSeconds(after) }) };
    const made = addExhibit(store, 'residual', { ...first, ...(second === null ? {} : { later: second }) });
    store.setScreen('residual-kept', second === null ? made : `${made}+`);
  };
  const done = kept?.endsWith('+') === true;
  if (kept !== null && !done && second === null) return null; // the first is kept, the second not read yet
  return (
    <p className="resid">
      {kept === null && (
        <>
          <label htmlFor={id}>{CASE_PAGE.afterUnplugging}</label>
          <input
            id={id}
            inputMode="decimal"
            autoComplete="off"
            value={after}
            onChange={(event) => store.setScreen('residual-after', event.target.value)}
          />
          <span>s</span>
        </>
      )}
      {done ? (
        <span role="status">{CASE_PAGE.keptInTheCase}</span>
      ) : (
        <button type="button" className="quiet" onClick={keep}>
          {kept === null ? CASE_PAGE.keepInTheCase : CASE_PAGE.keepTheSecondToo}
        </button>
      )}
    </p>
  );
}

const inVolts = (text: string): string => (/[a-zA-Z]/.test(text) ? text : `${text.trim()} V`);
const inSeconds = (text: string): string => (/[a-zA-Z]/.test(text) ? text : `${text.trim()} s`);

function One({ label, at }: { label: string; at: string }) {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const id = useId();
  const text = screen[at] ?? '';
  const state = residualState(text);
  return (
    <p className={`resid ${state}`}>
      <label htmlFor={id}>{label}</label>
      <input id={id} inputMode="decimal" autoComplete="off" value={text} onChange={(event) => store.setScreen(at, event.target.value)} />
      <span>V</span>
      {state === 'high' && <b role="status">{CASE_PAGE.dischargeAgain(TOO_HIGH_V)}</b>}
      {state === 'unread' && <span role="status">{CASE_PAGE.notAVoltage}</span>}
    </p>
  );
}

export type ResidualState = 'empty' | 'unread' | 'high' | 'low';

export function residualState(text: string): ResidualState {
  if (text.trim() === '') return 'empty';
  const read = parseQuantity(inVolts(text), 'voltage');
  if (isRefusal(read)) return 'unread';
  return Math.abs(read.value) > TOO_HIGH_V ? 'high' : 'low';
}
