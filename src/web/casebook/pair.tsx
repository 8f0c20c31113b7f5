import { drawCoverageSquare } from '../../present/figure/coverage-cells.ts';
import { drawOutcomeMark } from '../../present/figure/outcome-mark.ts';
import { COVERAGE_CLASSES, drawHalves } from '../../present/figure/verdict-halves.ts';
import { coverageHeadline } from '../../present/words/failure-words.ts';
import { type CasePortrait, toCells } from '../../present/workspace/case-portrait.ts';
import { RawHtml } from '../part/raw-html.tsx';

const MARK = 11;

/** Both halves of a verdict on the narrowest row: word and mark, the second line left to the panel. */
export function Pair({ portrait }: { portrait: CasePortrait }) {
  const { worse, words } = coverageHeadline(portrait.coverage);
  return (
    <>
      <span className={`chip half ${portrait.weight}`}>
        <RawHtml html={drawOutcomeMark(portrait.mark, MARK).markup} />
        <span>{portrait.word}</span>
      </span>
      <span className={`chip half ${COVERAGE_CLASSES[worse]}`}>
        <RawHtml html={drawCoverageSquare(worse, MARK).markup} />
        <span>{words}</span>
      </span>
    </>
  );
}

/** Both halves in full. */
export function Halves({ portrait }: { portrait: CasePortrait }) {
  const { word, because, weight, mark, coverage, cells } = portrait;
  const looked = { coverage, cells: { shock: toCells(cells.shock), fire: toCells(cells.fire) } };
  return <RawHtml as="div" html={drawHalves({ word, second: because, weight, mark }, looked).markup} />;
}
