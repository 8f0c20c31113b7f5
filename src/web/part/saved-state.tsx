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
            Another tab was faster at {conflicts.length === 1 ? 'one field' : `${conflicts.length} fields`}; its values stand.{' '}
            <button type="button" className="from" onClick={() => store.dismiss()}>
              Seen
            </button>
          </span>
        ) : waiting > 0 ? (
          `saving ${waiting}`
        ) : (
          `saved ${time}`
        )}
      </span>
      <button type="button" className="btn" disabled={undo === null} onClick={() => void store.undo()}>
        Undo{undo !== null && <span className="wide-only"> {stepWords(undo)}</span>}
      </button>
      {redo !== null && (
        <button type="button" className="btn" onClick={() => void store.redo()}>
          Redo <span className="wide-only">{stepWords(redo)}</span>
        </button>
      )}
    </>
  );
}
