import type { ExhibitOf } from '../../evidence/case.ts';
import { integralOfCurrent } from '../../formula/board/integral-of-current.ts';
import { meltingCurrent } from '../../formula/board/melting-current.ts';
import { derive } from '../../formula/derive.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { cite } from '../../source/source.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { openValue } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';

const USUAL_COPPER_M = 35e-6; // one ounce per square foot; common practice
const ONE_SECOND = 1; // the longest time for which the estimate holds

/** Estimate of what melts a printed track that is the first part: the current for one second, and its integral. Null when nobody measured the track. */
export function trackMelts(bench: Bench, setting: SettingFacts, board: ExhibitOf<'board'>): { current: Derived; integral: Derived } | null {
  const opened = openValue(board.track);
  if (opened.state !== 'read') return null;
  const length = (text: string, name: string, symbol: string): Derived | null => {
    const quantity = parseQuantity(text, 'length');
    if (isRefusal(quantity)) return null;
    return deriveReading(bench, quantity, {
      field: `/exhibits/${board.id}/track/${name}`,
      role: 'distance',
      day: board.day,
      instrument: opened.read.instrument,
      symbol,
    });
  };
  const width = length(opened.v.width, 'width', 'w');
  const source = cite('bench', 'copper of a plain board', 'common-practice');
  const usual = given('constant', USUAL_COPPER_M, 'm', { id: 'board/usual-copper', name: 'estimate-copper', symbol: 'h', source });
  const thickness = opened.v.thickness === undefined ? usual : length(opened.v.thickness, 'thickness', 'h');
  if (width === null || thickness === null) return null;
  const time = given('constant', ONE_SECOND, 's', {
    id: 'board/one-second',
    name: 'estimate-time',
    symbol: 't',
    source: cite('fusing', 'valid to a second or so', 'secondary'),
  });
  const current = derive(
    meltingCurrent,
    { width, thickness, ambient: setting.highestAmbient, time },
    `board/${board.id}/track/melting-current`,
  );
  return { current, integral: derive(integralOfCurrent, { current, time }, `board/${board.id}/track/melting-integral`) };
}
