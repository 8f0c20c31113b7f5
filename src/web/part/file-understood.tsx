import { useState } from 'react';
import type { Description } from '../../importer/describe.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { fieldText } from '../../present/words/picture-words.ts';
import type { TakenFile } from '../api/casebook.ts';

/** What the importer made of a file, column by column, and every question that the file leaves open, each settled with a click. */
export function FileUnderstood(props: {
  file: TakenFile;
  settled: Readonly<Record<string, string>>;
  onSettle: (settled: Readonly<Record<string, string>>) => void;
}) {
  const { file, settled, onSettle } = props;
  const { understood, notUnderstood } = file;
  if (understood === undefined)
    return (
      <p>
        {CASE_PAGE.mediaAndBytes(file.media, file.bytes)}
        {notUnderstood === undefined ? '' : ` ${notUnderstood}`}
      </p>
    );
  if (understood.shape === 'matrix') return <FieldUnderstood understood={understood} settled={settled} onSettle={onSettle} />;
  return (
    <>
      <p>
        {understood.rows} {CASE_PAGE.rowsComma} {understood.columns.length} {CASE_PAGE.columnsDecimal} {understood.decimalMark}
        {CASE_PAGE.cellsPartedBy} {separatorWords(understood.separator)}.
      </p>
      <div className="scroll">
        <table className="list">
          <thead>
            <tr>
              <th scope="col">{CASE_PAGE.column}</th>
              <th scope="col">{CASE_PAGE.unit}</th>
              <th scope="col">{CASE_PAGE.first}</th>
              <th scope="col">{CASE_PAGE.last}</th>
              <th scope="col">{CASE_PAGE.least}</th>
              <th scope="col">{CASE_PAGE.greatest}</th>
              <th scope="col" />
            </tr>
          </thead>
          <tbody>
            {understood.columns.map((column, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: columns of a file are their positions
              <tr key={index}>
                <td>{column.name}</td>
                <td>{column.unit ?? CASE_PAGE.notTold}</td>
                <td className="num">{column.first ?? ''}</td>
                <td className="num">{column.last ?? ''}</td>
                <td className="num">{column.min ?? ''}</td>
                <td className="num">{column.max ?? ''}</td>
                <td>{column.usable ? '' : CASE_PAGE.inDoubt}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <Questions doubts={understood.doubts} settled={settled} onSettle={onSettle} />
    </>
  );
}

type Settled = Readonly<Record<string, string>>;

/** A field of numbers is told as a whole, not column by column; what its numbers are is said below. */
function FieldUnderstood(props: { understood: Description; settled: Settled; onSettle: (settled: Settled) => void }) {
  const { columns, rows, doubts } = props.understood;
  const least = Math.min(...columns.map(({ min }) => min ?? Number.POSITIVE_INFINITY));
  const greatest = Math.max(...columns.map(({ max }) => max ?? Number.NEGATIVE_INFINITY));
  const unit = columns[0]?.unit;
  return (
    <>
      <p>{fieldText(columns.length, rows, least, greatest, unit ?? null)}</p>
      <Questions {...props} doubts={doubts.filter(({ code }) => code !== 'unit')} />
    </>
  );
}

function Questions({
  doubts,
  settled,
  onSettle,
}: {
  doubts: Description['doubts'];
  settled: Settled;
  onSettle: (settled: Settled) => void;
}) {
  return (
    <>
      {doubts.map((doubt) => (
        <fieldset className="doubt" key={doubt.code}>
          <legend>{doubt.question}</legend>
          {doubt.answers.map((answer) =>
            answer.includes('<') ? (
              <Filled key={answer} pattern={answer} onAnswer={(text) => onSettle({ ...settled, [doubt.code]: text })} />
            ) : (
              <button type="button" key={answer} className="btn" onClick={() => onSettle({ ...settled, [doubt.code]: answer })}>
                {answer}
              </button>
            ),
          )}
        </fieldset>
      ))}
    </>
  );
}

/** An answer with a place to fill in: "<step> s". */
function Filled({ pattern, onAnswer }: { pattern: string; onAnswer: (text: string) => void }) {
  const [text, setText] = useState('');
  const [before = '', name = '', after = ''] = pattern.split(/<([^>]*)>/);
  return (
    <span className="filled">
      {before}
      <input aria-label={name} placeholder={name} value={text} onChange={(event) => setText(event.target.value)} />
      {after}
      <button type="button" className="btn" disabled={text === ''} onClick={() => onAnswer(`${before}${text}${after}`)}>
        {CASE_PAGE.settle}
      </button>
    </span>
  );
}

const SEPARATORS: Readonly<Record<string, string>> = {
  comma: 'commas',
  semicolon: 'semicolons',
  tab: 'tabs',
  space: 'spaces',
  none: CASE_PAGE.lineEndsOnly,
};

function separatorWords(separator: string): string {
  return SEPARATORS[separator] ?? separator;
}
