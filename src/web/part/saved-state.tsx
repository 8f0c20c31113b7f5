import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { stepWords } from '../../present/words/step-words.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';

/** Whether everything typed is on the disk, what did not work, and the last step to take back. */
export function SavedState() {
  const { store } = useOpenPage();
  const { waiting, savedAt, trouble, conflicts, undo, redo } = useSnapshot();
  const time = new Date(savedAt).toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });
  return (
    <>
      <span className="saved" role="status">
        {trouble !== null ? (
          <span className="trouble">{trouble.words}</span>
        ) : conflicts.length > 0 ? (
          <span className="trouble">
            {CASE_PAGE.anotherTabWasFasterAt} {conflicts.length === 1 ? CASE_PAGE.oneField : CASE_PAGE.fields(conflicts.length)}
            {CASE_PAGE.itsValuesStand}{' '}
            <button type="button" className="from" onClick={() => store.dismiss()}>
              {CASE_PAGE.seen}
            </button>
          </span>
        ) : waiting > 0 ? (
          CASE_PAGE.saving(waiting)
        ) : (
          CASE_PAGE.saved(time)
        )}
      </span>
      <button type="button" className="btn" disabled={undo === null} onClick={() => void store.undo()}>
        {CASE_PAGE.undo}
        {undo !== null && <span className="wide-only"> {stepWords(undo)}</span>}
      </button>
      {redo !== null && (
        <button type="button" className="btn" onClick={() => void store.redo()}>
          {CASE_PAGE.redo} <span className="wide-only">{stepWords(redo)}</span>
        </button>
      )}
    </>
  );
}
