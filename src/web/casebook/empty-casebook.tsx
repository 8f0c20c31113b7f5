import { drawLine, MARGIN_LINE_ROW } from '../../present/figure/margin-line.ts';
import { drawScale } from '../../present/figure/scale.ts';
import { drawHalves } from '../../present/figure/verdict-halves.ts';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { FIRST_DAY } from '../../present/words/casebook-words.ts';
import { CAUTIONS } from '../../present/words/fixed-sentences.ts';
import { HAZARD_WORDS } from '../../present/words/hazard-words.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { Import, NewUnit } from './new-unit.tsx';

const ANYWHERE = drawLine(
  { outcome: 'notAssessed', margin: null, band: null, rung: null, limit: null, amounts: false, anywhere: false },
  MARGIN_LINE_ROW,
).markup;
const NOTHING_READ = drawHalves(
  { word: 'No verdict yet', second: CASEBOOK_PAGE.nothingWasAssessed, weight: 'void', mark: 'notAssessed' },
  { coverage: { shock: 'not examined', fire: 'not examined' }, cells: { shock: [], fire: [] } },
).markup;

/** No case yet: how to begin, and what stands before anything is read. */
export function EmptyCasebook({ onFile }: { onFile: (file: File) => void }) {
  return (
    <div className="begin">
      <main id="cases" tabIndex={-1}>
        <h2>{CASEBOOK_PAGE.howToBegin}</h2>
        <p>{CASEBOOK_PAGE.nameIsEnoughEverythingElse}</p>
        <NewUnit />
        <div className="drop">
          <p>{CASEBOOK_PAGE.caseThatSomebodyPackedDrop}</p>
          <Import className="btn" onFile={onFile} />
        </div>
        <h3>{CASEBOOK_PAGE.doFirstInOrderDay}</h3>
        <ol className="day">
          {FIRST_DAY.map(({ what, how }, index) => (
            <li key={what}>
              <span className="k">{index + 1}</span>
              <span>
                <b>{what}</b>
                <small>{how}</small>
              </span>
            </li>
          ))}
        </ol>
        <ul className="cautions" aria-label={CASEBOOK_PAGE.cautions}>
          {CAUTIONS.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </main>
      <aside className="side" aria-label={CASEBOOK_PAGE.beforeAnythingIsRead}>
        <RawHtml as="div" html={NOTHING_READ} />
        <p className="why">
          <b>{CASEBOOK_PAGE.nothingIsKnownAboutNew}</b> {CASEBOOK_PAGE.everyCheckStandsAsNot}
        </p>
        <RawHtml html={drawScale(MARGIN_LINE_ROW).markup} className="atline" />
        <ul className="blank">
          {Object.entries(HAZARD_WORDS).map(([hazard, title]) => (
            <li key={hazard}>
              <span>{title}</span>
              <RawHtml html={ANYWHERE} />
              <span className="vl">{CASEBOOK_PAGE.notAssessed}</span>
            </li>
          ))}
        </ul>
      </aside>
    </div>
  );
}
