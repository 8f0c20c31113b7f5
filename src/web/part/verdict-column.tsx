import { memo, useEffect, useState } from 'react';
import { toAnchor } from '../../present/markup/anchor.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import type { FindingRow } from '../../present/workspace/finding-row.ts';
import type { GroupedCheck } from '../../present/workspace/workspace-view.ts';
import { useChosen, useOpenPage } from '../state/use-case.ts';
import { RawHtml } from './raw-html.tsx';

/** Both words and every finding, always in view. On a narrow page the two words stay and the findings open over the page. */
export function VerdictColumn({ selected, onSelect }: { selected: string | null; onSelect: (id: string | null) => void }) {
  const view = useChosen((snapshot) => snapshot.view);
  const moved = useChosen((snapshot) => snapshot.moved);
  const [open, setOpen] = useState(false);
  const rows = new Map(view.rows.map((row) => [row.id, row]));
  return (
    <aside className={`verdict${open ? ' open' : ''}`} id="verdict" aria-label={CASE_PAGE.verdict} tabIndex={-1}>
      <Spoken words={view.verdict.spoken} />
      <RawHtml html={view.verdict.halvesHtml} as="div" />
      <RawHtml html={view.verdict.whyHtml} as="p" className="why" />
      <p className="tally">
        {view.tally.map(({ outcome, count, word, markSvg }) => (
          <span key={outcome}>
            <RawHtml html={markSvg} /> <b>{count}</b> <span className="w">{word}</span>
          </span>
        ))}
      </p>
      <button type="button" className="grip" aria-expanded={open} onClick={() => setOpen(!open)}>
        {open ? CASE_PAGE.closeKey : CASE_PAGE.allFindings}
      </button>
      <div className="all">
        <div className="scale" aria-hidden="true">
          <span>×¼</span>
          <span>×½</span>
          <b>{CASE_PAGE.limit}</b>
          <span>×2</span>
          <span>×4</span>
        </div>
        {view.groups.map((group) => (
          <section key={group.hazard} aria-label={group.title}>
            <h3>
              {group.title}
              {group.notApplicable > 0 && (
                <span>
                  {' '}
                  {group.notApplicable} {CASE_PAGE.notApplicable}
                </span>
              )}
            </h3>
            <ul>
              {group.checks.map((check) => (
                <Check key={check.lead} check={check} rows={rows} selected={selected} onSelect={onSelect} moved={moved} />
              ))}
            </ul>
            {group.unread.length > 0 && (
              <details className="unread" open={group.unread.some(({ lead }) => lead === selected) || undefined}>
                <summary>
                  <span className="hatch" /> {CASE_PAGE.checks(group.unread.length)} {CASE_PAGE.notAssessed}
                </summary>
                <ul>
                  {group.unread.map((check) => (
                    <Check key={check.lead} check={check} rows={rows} selected={selected} onSelect={onSelect} moved={moved} />
                  ))}
                </ul>
              </details>
            )}
          </section>
        ))}
        <p className="lablist">
          <b>{CASE_PAGE.cannotBeJudgedWithoutLaboratory}</b> {view.laboratory}.
        </p>
      </div>
    </aside>
  );
}

interface Selecting {
  readonly selected: string | null;
  readonly onSelect: (id: string | null) => void;
  readonly moved: ReadonlySet<string>;
}

function Check({ check, rows, ...selecting }: { check: GroupedCheck; rows: ReadonlyMap<string, FindingRow> } & Selecting) {
  const row = rows.get(check.lead);
  if (row === undefined) return null;
  return (
    <SettledRow
      row={row}
      others={check.others.flatMap((id) => rows.get(id) ?? [])}
      isSelected={selecting.selected === check.lead || check.others.includes(selecting.selected ?? '')}
      {...selecting}
    />
  );
}

type RowProps = { row: FindingRow; others: readonly FindingRow[]; isSelected: boolean } & Selecting;

/** Drawn again only when its finding moved or moved last, when it is opened or closed, and while it is open. */
const SettledRow = memo(Row, (before: RowProps, now: RowProps) => {
  const isOpen = before.isSelected || now.isSelected;
  const sameMark = before.moved.has(before.row.id) === now.moved.has(now.row.id);
  return !isOpen && sameMark && before.row === now.row && before.onSelect === now.onSelect && before.others.length === now.others.length;
});

function Row(props: RowProps) {
  const { row, others, isSelected, onSelect, moved } = props;
  return (
    <li id={toAnchor('finding', row.id)} className={`row${isSelected ? ' on' : ''}${moved.has(row.id) ? ' moved' : ''}`}>
      <button type="button" aria-expanded={isSelected} aria-label={row.spoken} onClick={() => onSelect(isSelected ? null : row.id)}>
        <RawHtml html={row.markSvg} className="ms" />
        <span className="nm">
          <b>{row.title}</b>
          <small>
            {[row.about, row.limit === '' ? '' : `${row.limit}, ${row.grade}`].filter((part) => part !== '').join('; ')}
            {others.length > 0 && CASE_PAGE.worstOf(others.length + 1)}
          </small>
        </span>
        <RawHtml html={row.lineSvg} className="ln" />
        <span className="vl">
          <RawHtml html={row.valueHtml} />
          <small className={`wd ${row.outcome}`}>{row.word}</small>
        </span>
      </button>
      {isSelected && <Opened row={row} />}
      {isSelected && others.length > 0 && (
        <ul className="others">
          {others.map((other) => (
            <Row key={other.id} {...props} row={other} others={[]} isSelected={props.selected === other.id} />
          ))}
        </ul>
      )}
    </li>
  );
}

/** What a finding says in full, and the ways on: to where its number comes from and to the fields that decide it. */
function Opened({ row }: { row: FindingRow }) {
  const { openOrigin, goToField } = useOpenPage();
  return (
    <div className="opened">
      {row.question !== '' && <p>{row.question}</p>}
      <p>{row.decision}</p>
      {row.under !== '' && <p className="small">{row.under}</p>}
      {row.remarks.length > 0 && (
        <ul className="remarks">
          {row.remarks.map((remark) => (
            <li key={remark}>{remark}</li>
          ))}
        </ul>
      )}
      <p className="ways">
        {row.step !== null && (
          <button type="button" className="from" onClick={(event) => openOrigin(row.step ?? '', event.currentTarget)}>
            {CASE_PAGE.whereTheValueComesFrom}
          </button>
        )}
        {row.limitStep !== null && (
          <button type="button" className="from" onClick={(event) => openOrigin(row.limitStep ?? '', event.currentTarget)}>
            {CASE_PAGE.whereTheLimitComesFrom}
          </button>
        )}
        {row.fields.length > 0 && (
          <button type="button" className="from" onClick={() => goToField(row.fields[0] ?? '')}>
            {CASE_PAGE.toWhatDecidesIt}
          </button>
        )}
      </p>
    </div>
  );
}

const QUIET_MS = 2000; // at most one sentence in two seconds

/** Says both words when they change, at once; nothing else speaks by itself. */
function Spoken({ words }: { words: string }) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const later = setTimeout(() => setSaid(words), said === '' ? QUIET_MS : 0);
    return () => clearTimeout(later);
  }, [words, said]);
  return (
    <p className="for-ears" role="status">
      {said}
    </p>
  );
}
