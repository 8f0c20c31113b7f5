import { memo, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { drawLine, MARGIN_LINE_ROW } from '../../present/figure/margin-line.ts';
import { drawScale } from '../../present/figure/scale.ts';
import { drawUnitAxis, UNIT_AXIS } from '../../present/figure/unit-axis.ts';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { getCheckWords } from '../../present/words/check-words.ts';
import { RawHtml } from '../part/raw-html.tsx';
import type { CaseList, ListedCase } from '../state/use-casebook.ts';
import { Pair } from './pair.tsx';
import { dayText, nameOf, whatText } from './unit-text.ts';
import { stepTo, visibleRows } from './visible-rows.ts';

const NARROW = '(max-width: 700px)';
const ROW = 34; // px, as in casebook.css
const NARROW_ROW = 114;

/** Many cases, one axis each. Only the rows in the window exist; the list keeps the height of all of them. */
export function UnitRows(props: {
  list: CaseList;
  at: number;
  byMargin: string | null;
  onStep: (index: number) => void;
  onOpen: (index: number) => void;
  need: (first: number, end: number) => void;
}) {
  const { list, at, byMargin, onStep, onOpen, need } = props;
  const box = useRef<HTMLDivElement>(null);
  const [rowHeight, setRowHeight] = useState(() => (matchMedia(NARROW).matches ? NARROW_ROW : ROW));
  const [seen, setSeen] = useState({ first: 0, end: 40 });
  const { total } = list;
  useLayoutEffect(() => {
    const look = (): void => {
      if (box.current === null) return;
      const now = visibleRows({ total, rowHeight, top: -box.current.getBoundingClientRect().top, height: window.innerHeight });
      setSeen((old) => (old.first === now.first && old.end === now.end ? old : now));
    };
    const turn = (): void => {
      setRowHeight(matchMedia(NARROW).matches ? NARROW_ROW : ROW);
      look();
    };
    look();
    window.addEventListener('scroll', look, { passive: true });
    window.addEventListener('resize', turn);
    return () => {
      window.removeEventListener('scroll', look);
      window.removeEventListener('resize', turn);
    };
  }, [total, rowHeight]);
  useEffect(() => need(seen.first, Math.min(seen.end, total)), [need, seen, total]);
  const step = (event: React.KeyboardEvent): void => {
    if (event.key === 'Enter') onOpen(at);
    else {
      const inWindow = Math.max(1, Math.floor(window.innerHeight / rowHeight) - PAGE_LESS);
      const to = stepTo(event.key, at, total, inWindow);
      if (to === null) return;
      onStep(to);
      bringIntoView(box.current, to, rowHeight);
    }
    event.preventDefault();
  };
  const shown: number[] = [];
  for (let index = seen.first; index < Math.min(seen.end, total); index += 1) shown.push(index);
  return (
    <>
      <div className="hd cols" aria-hidden="true">
        <span>{CASEBOOK_PAGE.unit}</span>
        <b>{CASEBOOK_PAGE.worstFailure}</b>
        <b>{CASEBOOK_PAGE.shockAndFire}</b>
        <span className="axhd">
          {byMargin === null ? (
            <>
              <small>
                <i>{CASEBOOK_PAGE.unread}</i> <span>{CASEBOOK_PAGE.aboveShockAndFireBelow}</span>
              </small>
              <RawHtml html={drawScale(UNIT_AXIS).markup} />
            </>
          ) : (
            <>
              <small>
                <span>{getCheckWords(byMargin).title}</span>
              </small>
              <RawHtml html={drawScale(MARGIN_LINE_ROW).markup} />
            </>
          )}
        </span>
        <span className="dt">{CASEBOOK_PAGE.changedHeading}</span>
      </div>
      <div
        ref={box}
        className="rows"
        role="listbox"
        tabIndex={0}
        aria-label={CASEBOOK_PAGE.casesArrowsToMoveEnter}
        aria-activedescendant={at >= seen.first && at < seen.end && at < total ? `unit-${at}` : undefined}
        onKeyDown={step}
        style={{ height: total * rowHeight }}
      >
        {shown.map((index) => (
          <Row
            key={index}
            row={list.rows.get(index)}
            index={index}
            total={total}
            top={index * rowHeight}
            isOn={index === at}
            byMargin={byMargin}
            onStep={onStep}
            onOpen={onOpen}
          />
        ))}
      </div>
    </>
  );
}

const PAGE_LESS = 8; // rows that bars and head take from a page of keys

/** Keeps clear of the bars that stick to the top, by the scroll margin of a row. */
function bringIntoView(box: HTMLElement | null, index: number, rowHeight: number): void {
  if (box === null) return;
  const top = box.getBoundingClientRect().top + index * rowHeight;
  const clear = Number.parseFloat(getComputedStyle(box).scrollMarginTop) || 0;
  const below = Number.parseFloat(getComputedStyle(box).scrollMarginBottom) || 0;
  if (top < clear) window.scrollBy(0, top - clear);
  else if (top + rowHeight > window.innerHeight - below) window.scrollBy(0, top + rowHeight - window.innerHeight + below);
}

interface RowProps {
  readonly row: ListedCase | undefined;
  readonly index: number;
  readonly total: number;
  readonly top: number;
  readonly isOn: boolean;
  readonly byMargin: string | null;
  readonly onStep: (index: number) => void;
  readonly onOpen: (index: number) => void;
}

const Row = memo(function Row({ row, index, total, top, isOn, byMargin, onStep, onOpen }: RowProps) {
  const summary = row?.summary ?? null;
  return (
    // biome-ignore lint/a11y/useFocusableInteractive: the list has the focus and names its active row
    // biome-ignore lint/a11y/useKeyWithClickEvents: arrows and Enter are the list's own
    <div
      id={`unit-${index}`}
      className={`unit cols${isOn ? ' on' : ''}`}
      role="option"
      aria-selected={isOn}
      aria-setsize={total}
      aria-posinset={index + 1}
      style={{ top }}
      onClick={() => onStep(index)}
      onDoubleClick={() => onOpen(index)}
    >
      {row !== undefined && (
        <>
          <span className="nm">
            <b>{nameOf(row)}</b>
            <small>{whatText(row)}</small>
          </span>
          {summary === null ? (
            <span className="unjudged">{CASEBOOK_PAGE.beingJudged}</span>
          ) : (
            <>
              <Pair portrait={summary} />
              <Line summary={summary} byMargin={byMargin} />
            </>
          )}
          <span className="dt">{dayText(row.head.changed)}</span>
        </>
      )}
    </div>
  );
});

function Line({ summary, byMargin }: { summary: NonNullable<ListedCase['summary']>; byMargin: string | null }) {
  if (byMargin !== null) {
    const mark = summary.marks.find(({ check }) => check === byMargin);
    return (
      <span className="ax one">
        {mark !== undefined && <RawHtml html={drawLine(mark, MARGIN_LINE_ROW).markup} />}
        <span className="vl">
          {mark === undefined ? (summary.unread.includes(byMargin) ? CASEBOOK_PAGE.notAssessed : CASEBOOK_PAGE.notApplicable) : mark.value}
          {mark !== undefined && <small className={mark.outcome}>{mark.says}</small>}
        </span>
      </span>
    );
  }
  const open = summary.unread.length + summary.marks.filter(({ outcome }) => outcome === 'notAssessed').length;
  return (
    <span className="ax">
      <span className={open === 0 ? 'pl none' : 'pl'}>
        {open === 0 ? '' : open}
        <span className="for-ears"> {CASEBOOK_PAGE.checksNotAssessed}</span>
      </span>
      <RawHtml html={drawUnitAxis(summary.marks).markup} />
    </span>
  );
}
