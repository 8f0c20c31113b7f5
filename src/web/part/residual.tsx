import { useId } from 'react';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';

/** Above this a residual is too high to reach inside: common practice, no publication; far below what a hand feels, so that a meter's slip does not matter. */
const TOO_HIGH_V = 10;

/** Residual voltage as measured, and once more a minute later: charge comes back. Both empty again at every power-up. */
export function Residual() {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  return (
    <div className="residuals">
      <One label={CASE_PAGE.now} at="residual-now" />
      <One label={CASE_PAGE.inMin} at="residual-later" />
      {(screen['residual-now'] ?? '') !== '' && (
        <button
          type="button"
          className="quiet"
          onClick={() => {
            store.setScreen('residual-now', null);
            store.setScreen('residual-later', null);
          }}
        >
          {CASE_PAGE.poweredUpAgain}
        </button>
      )}
    </div>
  );
}

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
  const read = parseQuantity(/[a-zA-Z]/.test(text) ? text : `${text} V`, 'voltage');
  if (isRefusal(read)) return 'unread';
  return Math.abs(read.value) > TOO_HIGH_V ? 'high' : 'low';
}
