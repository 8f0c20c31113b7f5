import { drawLine, MARGIN_LINE_ROW } from '../../present/figure/margin-line.ts';
import { drawScale } from '../../present/figure/scale.ts';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { STROKE_WORDS } from '../../present/words/casebook-words.ts';
import type { PortraitMark } from '../../present/workspace/case-portrait.ts';
import { toColumns } from '../../present/workspace/casebook-columns.ts';
import { Link } from '../part/link.tsx';
import { RawHtml } from '../part/raw-html.tsx';
import { toCasePath } from '../state/route.ts';
import type { ListedCase } from '../state/use-casebook.ts';
import { Halves } from './pair.tsx';
import { dayText, nameOf, whatText } from './unit-text.ts';

const LINE = { ...MARGIN_LINE_ROW, width: 104, height: 33 };
const HATCHED = drawLine(
  { outcome: 'notAssessed', margin: null, band: null, rung: null, limit: null, amounts: false, anywhere: false },
  LINE,
).markup;

/** A few cases as columns of margin lines: the limits join into one thread down each, and what is wrong stands left of it. */
export function UnitColumns(props: {
  cases: readonly ListedCase[];
  at: number;
  check: string;
  onUnit: (index: number) => void;
  onCheck: (check: string) => void;
}) {
  const { cases, at, check, onUnit, onCheck } = props;
  const judged = cases.flatMap(({ summary }) => (summary === null ? [] : [summary]));
  return (
    <table className="columns">
      <thead>
        <tr>
          <th scope="col" className="check">
            <small>{CASEBOOK_PAGE.checkAndHowWellIts}</small>
          </th>
          {cases.map((row, index) => (
            <th key={row.head.id} scope="col" className={index === at ? 'on' : ''}>
              <h2>
                <Link to={toCasePath(row.head.id, 'load')}>{nameOf(row)}</Link>
              </h2>
              <p className="what">{[whatText(row), dayText(row.head.changed)].filter((part) => part !== '').join('; ')}</p>
              {row.summary !== null && <Halves portrait={row.summary} />}
              <button type="button" className="quiet" aria-pressed={index === at} onClick={() => onUnit(index)}>
                {index === at ? CASEBOOK_PAGE.shownInThePanel : CASEBOOK_PAGE.showInThePanel}
              </button>
            </th>
          ))}
        </tr>
      </thead>
      {toColumns(judged).map((group) => (
        <tbody key={group.hazard}>
          <tr className="hz">
            <th scope="rowgroup">{group.title}</th>
            {judged.map(({ product, sample }, index) => (
              <td key={`${product} ${sample}`} className={index === at ? 'on' : ''}>
                <RawHtml html={drawScale(LINE).markup} />
              </td>
            ))}
          </tr>
          {group.rows.map((row) => (
            <tr key={row.check} className={row.check === check ? 'lit' : ''}>
              <th scope="row">
                <button type="button" aria-pressed={row.check === check} onClick={() => onCheck(row.check)}>
                  {row.title}
                  <small>{row.strokes.map((stroke) => STROKE_WORDS[stroke]).join(', ')}</small>
                </button>
              </th>
              {row.cells.map((cell, index) => (
                <td key={cases[index]?.head.id} className={index === at ? 'on' : ''}>
                  <Cell cell={cell} />
                </td>
              ))}
            </tr>
          ))}
          {group.unread > 0 && (
            <tr className="rest">
              <th scope="row">
                <span>
                  {group.unread} {group.rows.length > 0 ? CASEBOOK_PAGE.more : ''} {CASEBOOK_PAGE.notAssessed}
                </span>
              </th>
              {judged.map(({ product, sample, unread }, index) => {
                const open = unread.filter((id) => id.startsWith(`${group.hazard}/`) && !group.rows.some((row) => row.check === id)).length;
                return (
                  <td key={`${product} ${sample}`} className={index === at ? 'on' : ''}>
                    <div className="cell">
                      {open > 0 ? <RawHtml html={HATCHED} /> : <span className="noline" />}
                      <span className="vl">{open > 0 ? open : CASEBOOK_PAGE.none}</span>
                    </div>
                  </td>
                );
              })}
            </tr>
          )}
        </tbody>
      ))}
    </table>
  );
}

function Cell({ cell }: { cell: PortraitMark | 'unread' | null }) {
  if (cell === null)
    return (
      <div className="cell">
        <span className="noline" />
        <span className="vl u">{CASEBOOK_PAGE.notApplicable}</span>
      </div>
    );
  if (cell === 'unread')
    return (
      <div className="cell">
        <RawHtml html={HATCHED} />
        <span className="vl u">{CASEBOOK_PAGE.notAssessed}</span>
      </div>
    );
  return (
    <div className="cell">
      <RawHtml html={drawLine(cell, LINE).markup} />
      <span className={`vl ${cell.outcome}`}>
        {cell.struck ? <s>{cell.value}</s> : cell.value}
        <small>{cell.says}</small>
      </span>
    </div>
  );
}
