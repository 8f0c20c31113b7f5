import { STACK_WORDS } from '../../present/words/stack-words.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';

/** What each pair of windings really has, and each wire: the lines of their findings, worst first. */
export function PairFindings({ ids }: { ids: readonly string[] }) {
  const { view } = useSnapshot();
  const { showFinding } = useOpenPage();
  const rows = ids.flatMap((id) => view.rows.find((row) => row.id === id) ?? []).filter(({ outcome }) => outcome !== 'notApplicable');
  if (rows.length === 0) return null;
  return (
    <section className="pair-findings" aria-label={STACK_WORDS.pairs}>
      <h3>{STACK_WORDS.pairs}</h3>
      <ul>
        {rows.map((row) => (
          <li key={row.id}>
            <button type="button" aria-label={row.spoken} onClick={() => showFinding(row.id)}>
              <RawHtml html={row.markSvg} className="ms" />
              <span className="nm">
                <b>{row.about.includes(': ') ? row.about.replace(/^[^:]*: /, '') : row.title}</b>
                <small>{row.limit === '' ? row.title : `${row.limit}, ${row.grade}`}</small>
              </span>
              <RawHtml html={row.lineSvg} className="ln" />
              <span className="vl">
                <RawHtml html={row.valueHtml} />
                <small className={`wd ${row.outcome}`}>{row.word}</small>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
