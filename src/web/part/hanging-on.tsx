import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { findingsOn } from '../state/hanging-on.ts';
import { useChosen, useOpenPage } from '../state/use-case.ts';
import { RawHtml } from './raw-html.tsx';

const WORST_FIRST = ['fail', 'inconclusive', 'notAssessed', 'pass', 'notApplicable'];

/** Which findings hang on this entry: the mark of the worst of them and how many there are, leading to it. */
export function HangingOn({ place }: { place: string }) {
  const { showFinding } = useOpenPage();
  const hanging = useChosen(({ view }) => findingsOn(place, view.rows));
  const found = hanging.toSorted((a, b) => WORST_FIRST.indexOf(a.outcome) - WORST_FIRST.indexOf(b.outcome));
  const [worst] = found;
  if (worst === undefined) return null;
  const spoken = found.map((row) => row.spoken).join(' ');
  return (
    <button
      type="button"
      className="hanging"
      aria-label={CASE_PAGE.decides(spoken)}
      title={CASE_PAGE.decides(spoken)}
      onClick={() => showFinding(worst.id)}
    >
      <RawHtml html={worst.markSvg} />
      {found.length > 1 && <small>{found.length}</small>}
    </button>
  );
}
