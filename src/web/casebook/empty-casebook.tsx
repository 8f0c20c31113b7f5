import { drawLine, MARGIN_LINE_ROW } from '../../present/figure/margin-line.ts';
import { drawScale } from '../../present/figure/scale.ts';
import { drawHalves } from '../../present/figure/verdict-halves.ts';
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
  { word: 'No verdict yet', second: 'nothing was assessed', weight: 'void', mark: 'notAssessed' },
  { coverage: { shock: 'not examined', fire: 'not examined' }, cells: { shock: [], fire: [] } },
).markup;

/** No case yet: how to begin, and what stands before anything is read. */
export function EmptyCasebook({ onFile }: { onFile: (file: File) => void }) {
  return (
    <div className="begin">
      <main id="cases" tabIndex={-1}>
        <h2>How to begin</h2>
        <p>A name is enough. Everything else can wait until the unit is in your hand.</p>
        <NewUnit />
        <div className="drop">
          <p>A case that somebody packed: drop the file anywhere on this page, or</p>
          <Import className="btn" onFile={onFile} />
        </div>
        <h3>Do first, in the order of a day</h3>
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
        <ul className="cautions" aria-label="Cautions">
          {CAUTIONS.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </main>
      <aside className="side" aria-label="Before anything is read">
        <RawHtml as="div" html={NOTHING_READ} />
        <p className="why">
          <b>Nothing is known about a new unit.</b> Every check stands as not assessed, and each line says where a reading could fall:
          anywhere. A missing value never counts as a pass, and zero is a reading, not a blank.
        </p>
        <RawHtml html={drawScale(MARGIN_LINE_ROW).markup} className="atline" />
        <ul className="blank">
          {Object.entries(HAZARD_WORDS).map(([hazard, title]) => (
            <li key={hazard}>
              <span>{title}</span>
              <RawHtml html={ANYWHERE} />
              <span className="vl">not assessed</span>
            </li>
          ))}
        </ul>
      </aside>
    </div>
  );
}
