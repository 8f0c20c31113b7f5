import { drawLine } from '../../present/figure/margin-line.ts';
import { drawAmong, drawPlaceStrip, PLACE_STRIP } from '../../present/figure/place-strip.ts';
import { drawScale } from '../../present/figure/scale.ts';
import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { countText, standingText } from '../../present/words/casebook-words.ts';
import { getCheckWords } from '../../present/words/check-words.ts';
import { HAZARD_WORDS } from '../../present/words/hazard-words.ts';
import { LABORATORY_TITLE, LABORATORY_WORDS } from '../../present/words/laboratory-words.ts';
import type { PortraitMark } from '../../present/workspace/case-portrait.ts';
import { countWorse, worstMark } from '../../present/workspace/casebook-columns.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { type ListedCase, usePlaces } from '../state/use-casebook.ts';
import { Halves } from './pair.tsx';
import { dayText, nameOf, whatText } from './unit-text.ts';

const STRIP = { width: PLACE_STRIP.width, height: 26 };
const AMONG = { width: 300, height: 20 };

/** Beside columns: one check across the few cases, one case among them, what would settle most. */
export function FewPanel({ cases, unit, check }: { cases: readonly ListedCase[]; unit: ListedCase | null; check: string }) {
  const placed = cases
    .flatMap((row) => {
      const mark = row.summary?.marks.find((one) => one.check === check);
      return mark === undefined ? [] : [{ row, mark }];
    })
    .sort((a, b) => (a.mark.margin ?? Number.MAX_VALUE) - (b.mark.margin ?? Number.MAX_VALUE));
  const own = unit?.summary ?? null;
  const next = cases
    .flatMap(({ head, summary }) => (summary?.next ?? []).map((one) => ({ ...one, id: head.id, name: summary?.name ?? head.id })))
    .sort((a, b) => b.settles - a.settles);
  return (
    <>
      {check !== '' && (
        <section>
          <h2>{getCheckWords(check).title}</h2>
          <p className="small">{getCheckWords(check).question}</p>
          <RawHtml html={drawScale(STRIP).markup} />
          <ul className="strip">
            {placed.map(({ row, mark }) => (
              <li key={row.head.id} className={row === unit ? 'own' : ''}>
                <span>
                  {nameOf(row)}
                  <span>
                    {mark.value} <small className={mark.outcome}>{mark.says}</small>
                  </span>
                </span>
                <RawHtml html={drawLine(mark, STRIP).markup} />
              </li>
            ))}
          </ul>
          <p className="small">
            {countText(cases.length - placed.length, 'case')} {CASEBOOK_PAGE.withoutLineOnThisCheck}
          </p>
        </section>
      )}
      {own !== null && cases.length > 1 && (
        <section>
          <h2>
            {own.name} {CASEBOOK_PAGE.amongAll}
          </h2>
          <p className="small">{CASEBOOK_PAGE.itsWorstMarginUnderEach}</p>
          <RawHtml html={drawScale(AMONG).markup} />
          <Among own={own} cases={cases.flatMap(({ summary }) => (summary === null ? [] : [summary]))} />
        </section>
      )}
      {next.length > 0 && (
        <section>
          <h2>{CASEBOOK_PAGE.wouldSettleMost}</h2>
          <ul className="nx">
            {next.map(({ id, name, words, settles }) => (
              <li key={`${id} ${words}`}>
                <b>{name}</b>
                <span>{words}</span>
                <i>{countText(settles, 'check')}</i>
              </li>
            ))}
          </ul>
        </section>
      )}
      <Laboratory />
    </>
  );
}

type Portrait = NonNullable<ListedCase['summary']>;

function Among({ own, cases }: { own: Portrait; cases: readonly Portrait[] }) {
  return (
    <ul className="strip">
      {Object.entries(HAZARD_WORDS).map(([hazard, title]) => {
        const worst = cases.map((one) => ({ one, mark: worstMark(one, hazard) }));
        const others = worst.flatMap(({ one, mark }) => (one === own || mark === null || mark.margin === null ? [] : [mark.margin]));
        const mark = worst.find(({ one }) => one === own)?.mark ?? null;
        const judged = worst.filter((each) => each.mark !== null).length;
        if (judged === 0) return null;
        return (
          <li key={hazard}>
            <span>
              {title}
              <small>
                {mark === null ? CASEBOOK_PAGE.thisOneNotAssessed : ''}
                {judged} {CASEBOOK_PAGE.outOf} {cases.length} {CASEBOOK_PAGE.judged}
              </small>
            </span>
            <RawHtml html={drawAmong(others, mark, AMONG).markup} />
          </li>
        );
      })}
    </ul>
  );
}

/** Beside many rows: the selected case, its portrait, where it stands on one check, what would settle most. */
export function ManyPanel(props: {
  unit: ListedCase;
  check: string;
  of: number;
  archived: boolean;
  onCheck: (check: string) => void;
  ways: React.ReactNode;
}) {
  const { unit, check, of, archived, onCheck, ways } = props;
  const { summary } = unit;
  const places = usePlaces(check, archived, of);
  const mark = summary?.marks.find((one) => one.check === check) ?? null;
  return (
    <>
      <section className="about">
        <h2>{nameOf(unit)}</h2>
        <p className="what">
          {[whatText(unit), summary === null ? '' : CASEBOOK_PAGE.sample(summary.sample), CASEBOOK_PAGE.changed(dayText(unit.head.changed))]
            .filter((part) => part !== '')
            .join(', ')}
          {summary?.invented === true && <span className="invented"> {CASEBOOK_PAGE.inventedData}</span>}
        </p>
        {summary !== null && <Halves portrait={summary} />}
        {ways}
      </section>
      {summary !== null && (
        <section className="portrait">
          <h3>{CASEBOOK_PAGE.portrait}</h3>
          <div className="scaled">
            <RawHtml html={drawScale(SMALL).markup} />
          </div>
          <ul>
            {summary.marks.map((one) => (
              <li key={one.check} className={one.check === check ? 'lit' : ''}>
                <PortraitLine mark={one} isOn={one.check === check} onPress={() => onCheck(one.check)} />
              </li>
            ))}
          </ul>
          {summary.unread.length > 0 && (
            <p className="small">
              {countText(summary.unread.length, CASEBOOK_PAGE.moreCheck)} {CASEBOOK_PAGE.notAssessedEnd}
            </p>
          )}
        </section>
      )}
      {check !== '' && (
        <section className="place">
          <h3>{CASEBOOK_PAGE.whereItStands}</h3>
          <p className="small">
            {getCheckWords(check).title}
            {CASEBOOK_PAGE.commaAll} {countText(of, 'case')}
          </p>
          <RawHtml html={drawScale(PLACE_STRIP).markup} />
          <div className="strip-room">{places !== null && <RawHtml html={drawPlaceStrip(places.ratios, mark, PLACE_STRIP).markup} />}</div>
          {places !== null && (
            <>
              <p className="small">{CASEBOOK_PAGE.strokesAllCasesTallerWhere}</p>
              <p>
                {standingText({
                  judged: places.ratios.length + places.beyond,
                  all: of,
                  worse: mark === null ? 0 : countWorse(places, mark),
                  stands: mark !== null && (mark.margin !== null || mark.outcome === 'fail'),
                })}
              </p>
            </>
          )}
        </section>
      )}
      {summary !== null && summary.next.length > 0 && (
        <section className="next">
          <h3>{CASEBOOK_PAGE.wouldSettleMost}</h3>
          <ul className="nx one">
            {summary.next.map(({ words, settles }) => (
              <li key={words}>
                <span>{words}</span>
                <i>{countText(settles, 'check')}</i>
              </li>
            ))}
          </ul>
        </section>
      )}
      <Laboratory />
    </>
  );
}

const SMALL = { width: 100, height: 22 };

function PortraitLine({ mark, isOn, onPress }: { mark: PortraitMark; isOn: boolean; onPress: () => void }) {
  const { title } = getCheckWords(mark.check);
  return (
    <button type="button" aria-pressed={isOn} aria-label={`${title}: ${mark.value} ${mark.says}`} onClick={onPress}>
      <span>{title}</span>
      <RawHtml html={drawLine(mark, SMALL).markup} />
      <span className={`vl ${mark.outcome}`}>{mark.value === '' ? mark.says : mark.struck ? <s>{mark.value}</s> : mark.value}</span>
    </button>
  );
}

function Laboratory() {
  return (
    <p className="lablist">
      <b>{LABORATORY_TITLE}:</b> {Object.values(LABORATORY_WORDS).join(', ')}.
    </p>
  );
}
