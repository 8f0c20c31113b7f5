import { useMemo, useState } from 'react';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import type { ChapterView } from '../../present/workspace/chapter-view.ts';
import { CircuitDesk } from '../circuit/circuit-desk.tsx';
import { BarrierLines } from '../part/barrier-lines.tsx';
import { OriginPanel } from '../part/origin-panel.tsx';
import { Pictures } from '../part/pictures.tsx';
import { RawHtml } from '../part/raw-html.tsx';
import { SheetView } from '../part/sheet.tsx';
import { RunsOfCircuit } from '../run/runs-of-circuit.tsx';
import { TransformerChapter } from '../stack/transformer-chapter.tsx';
import { useChosen } from '../state/use-case.ts';
import { SHEETS } from './chapter-sheets.ts';

/** One chapter: evidence on the left, its picture on the right, worked numbers below, and where a number comes from in place. */
export function ChapterPage({
  chapter,
  origin,
  setOrigin,
  selected,
}: {
  chapter: ChapterView;
  origin: string | null;
  setOrigin: (step: string | null) => void;
  selected: string | null;
}) {
  const view = useChosen((snapshot) => snapshot.view);
  const row = view.rows.find(({ id }) => id === selected);
  const lit = useMemo(() => litRows(row?.fields ?? []), [row]);
  const { bring, findings } = chapter;
  const empty = chapter.exhibits === 0;
  const panel = origin === null ? null : <OriginPanel step={origin} onClose={() => setOrigin(null)} onOpen={setOrigin} />;
  return (
    <article className="chapter" aria-labelledby="chapter-title">
      <header>
        <h2 id="chapter-title">{chapter.title}</h2>
        <span className="small">{empty ? CASE_PAGE.nothingYetBring(bring) : bring}</span>
      </header>
      {chapter.id !== 'transformer' && <Works chapter={chapter} open={origin} onOpen={setOrigin} />}
      {chapter.id !== 'transformer' && panel}
      {empty && <Unfed findings={findings} />}
      {chapter.id === 'transformer' ? (
        <TransformerChapter chapter={chapter} lit={lit} origin={panel} />
      ) : (
        <div className={`evidence of-${chapter.id}`}>
          <div className="entries">
            {chapter.id === 'circuit' && <CircuitDesk />}
            {chapter.id === 'faults' && <RunsOfCircuit />}
            {SHEETS[chapter.id].map((sheet) => (
              <SheetView key={JSON.stringify(sheet)} sheet={sheet} lit={lit} />
            ))}
          </div>
          <Pictures chapter={chapter}>{chapter.barrier !== null && <BarrierLines view={chapter.barrier} />}</Pictures>
        </div>
      )}
    </article>
  );
}

/** Checks that this chapter would feed, hatched. */
function Unfed({ findings }: { findings: readonly string[] }) {
  const view = useChosen((snapshot) => snapshot.view);
  const rows = view.rows.filter(({ id, outcome }) => findings.includes(id) && outcome === 'notAssessed');
  return (
    <ul className="unfed" aria-label={CASE_PAGE.checksThatWaitForThis}>
      {rows.map((row) => (
        <li key={row.id}>
          <RawHtml html={row.lineSvg} /> {row.title}
        </li>
      ))}
    </ul>
  );
}

function Works({ chapter, open, onOpen }: { chapter: ChapterView; open: string | null; onOpen: (step: string | null) => void }) {
  const [all, setAll] = useState(false);
  const FEW = 5;
  if (chapter.works.length === 0) return null;
  const shown = all ? chapter.works : chapter.works.slice(0, FEW);
  return (
    <dl className="works">
      {shown.map(({ label, valueHtml, step }) => (
        <div key={step + label}>
          <dt>{label}</dt>
          <dd>
            <button
              type="button"
              className={`from${open === step ? ' open' : ''}`}
              aria-label={CASE_PAGE.whereOneComesFrom(label)}
              onClick={() => onOpen(open === step ? null : step)}
            >
              <RawHtml html={valueHtml} />
            </button>
          </dd>
        </div>
      ))}
      {chapter.works.length > FEW && (
        <div>
          <dt>{CASE_PAGE.workedNumbers}</dt>
          <dd>
            <button type="button" className="quiet" onClick={() => setAll(!all)}>
              {all ? CASE_PAGE.fewer : CASE_PAGE.moreNumbers(chapter.works.length - FEW)}
            </button>
          </dd>
        </div>
      )}
    </dl>
  );
}

/** Rows and records that a finding stands on: numbers of table rows by exhibit, ids of records under "". */
export function litRows(fields: readonly string[]): (exhibit: string) => ReadonlySet<string> {
  const byExhibit = new Map<string, Set<string>>([['', new Set()]]);
  const add = (exhibit: string, row: string): void => {
    byExhibit.set(exhibit, (byExhibit.get(exhibit) ?? new Set()).add(row));
  };
  for (const field of fields) {
    const [, list, id, ...rest] = field.split('/');
    if (id !== undefined) add('', id);
    if (list !== 'exhibits' || id === undefined) continue;
    const column = rest.indexOf('columns');
    const row = rest.indexOf('rows');
    if (column >= 0 && rest[column + 2] !== undefined) add(id, rest[column + 2] ?? '');
    else if (row >= 0 && rest[row + 1] !== undefined) add(id, rest[row + 1] ?? '');
  }
  return (exhibit) => byExhibit.get(exhibit) ?? new Set();
}
