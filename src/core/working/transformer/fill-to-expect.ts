import { derive } from '../../formula/derive.ts';
import { fillToExpect } from '../../formula/magnetics/fill-to-expect.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';

/** Middle and half width of each share. The tape of a mains transformer takes more than nothing, so the product is a figure from above. */
const SHARES = {
  bare: [0.8225, 0.0325, 'S_1', '0.79 to 0.855, gauge 26 to gauge 20'],
  laid: [0.61, 0, 'S_2', '0.61 of a winding of round wire'],
  usable: [0.65, 0.1, 'S_3', '0.55 to 0.75, formers of ferrite cores'],
  untaped: [1, 0, 'S_4', '1 without tape between the windings'],
} as const;

/** The most copper that a window takes, as handbooks reckon: what the copper that is there is read against. */
export function mostCopper(id: string): Derived {
  const share = (key: keyof typeof SHARES): Derived => {
    const [middle, half, symbol, place] = SHARES[key];
    return given(
      'constant',
      middle,
      '1',
      {
        id: `${id}/share-${key}`,
        name: `share-of-window-${key}`,
        symbol,
        source: cite('wire-handbook', `chapter 4: ${place}`, 'secondary'),
      },
      half === 0 ? {} : { form: doubtOf({ id: `estimate/share-${key}`, u: rectangular(half), means: 'estimatedShareOfWindow' }) },
    );
  };
  return derive(
    fillToExpect,
    { bare: share('bare'), laid: share('laid'), usable: share('usable'), untaped: share('untaped') },
    `${id}/fill-to-expect`,
  );
}
