import { findingsOn } from '../state/hanging-on.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { RawHtml } from './raw-html.tsx';

const MOST = 4;

/** Which findings hang on this entry: a mark each, leading to the finding. */
export function HangingOn({ place }: { place: string }) {
  const { view } = useSnapshot();
  const { showFinding } = useOpenPage();
  const found = findingsOn(place, view.rows);
  if (found.length === 0) return null;
  return (
    <span className="hanging">
      {found.slice(0, MOST).map((row) => (
        <button type="button" key={row.id} aria-label={`decides ${row.spoken}`} title={row.spoken} onClick={() => showFinding(row.id)}>
          <RawHtml html={row.markSvg} />
        </button>
      ))}
      {found.length > MOST && <small>+{found.length - MOST}</small>}
    </span>
  );
}
