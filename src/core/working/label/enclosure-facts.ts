import type { ExhibitOf } from '../../evidence/case.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { type Opened, openValue } from '../bench/open-value.ts';

/** One thing that keeps fingers off live parts, with what was seen of it in each exhibit. `sound` in a reading: it is as it should be. */
export interface EnclosureQuestion {
  readonly id: 'live-part' | 'drop' | 'seam' | 'wires';
  readonly about: string;
  readonly seen: readonly {
    readonly field: string;
    readonly opened: Opened<boolean>;
    readonly short?: 'fewDrops' | 'dropHeightNotStated' | 'dropTooLow' | 'dropTooHigh';
  }[];
}

export const DROPS = 3; // IEC 62368-1 annex T.7, direct plug-in units (memory); what the trade does
export const DROP_HEIGHT_M = 1;
const HEIGHT_SLACK = 0.05; // a bench is not an inclined plane: a height within a twentieth counts; house convention

/** The four questions, each with what was recorded; those that nobody looked at have nothing in `seen`. */
export function enclosureQuestions(bench: Bench): EnclosureQuestion[] {
  const bodies = exhibitsOf(bench, 'body');
  const flag = (
    exhibit: ExhibitOf<'body' | 'board'>,
    value: Parameters<typeof openValue<boolean>>[0],
    key: string,
    sound: boolean,
  ): EnclosureQuestion['seen'] => {
    const opened: Opened<boolean> = exhibit.struck === undefined ? openValue<boolean>(value) : { state: 'struck', because: exhibit.struck };
    if (openValue<boolean>(value).state === 'notLooked') return [];
    return [{ field: `/exhibits/${exhibit.id}/${key}`, opened: opened.state === 'read' ? { ...opened, v: opened.v === sound } : opened }];
  };
  return [
    {
      id: 'live-part',
      about: 'a live part within reach',
      seen: bodies.flatMap((body) => flag(body, body.livePartTouchable, 'livePartTouchable', false)),
    },
    { id: 'drop', about: 'dropped', seen: bodies.flatMap(seenOfDrops) },
    { id: 'seam', about: 'the seam', seen: bodies.flatMap((body) => flag(body, body.seamOpens, 'seamOpens', false)) },
    {
      id: 'wires',
      about: 'mains wires',
      seen: exhibitsOf(bench, 'board').flatMap((board) => flag(board, board.wiresHeld, 'wiresHeld', true)),
    },
  ];
}

function seenOfDrops(body: ExhibitOf<'body'>): EnclosureQuestion['seen'] {
  const { drops } = body;
  if (drops === undefined || drops.made === 0) return [];
  const field = `/exhibits/${body.id}/drops`;
  if (body.struck !== undefined) return [{ field, opened: { state: 'struck', because: body.struck } }];
  const sound = drops.failed === 0;
  const opened: Opened<boolean> = { state: 'read', v: sound, read: { v: sound } };
  const height = body.dropHeight === undefined ? null : parseQuantity(body.dropHeight, 'length');
  const metres = height === null || isRefusal(height) || height.side !== undefined ? null : height.value;
  const low = metres !== null && metres < DROP_HEIGHT_M * (1 - HEIGHT_SLACK);
  const high = metres !== null && metres > DROP_HEIGHT_M * (1 + HEIGHT_SLACK);
  // an easier test that breaks it settles it, and so does a harder one that does not
  if (sound)
    return [
      {
        field,
        opened,
        ...(metres === null
          ? { short: 'dropHeightNotStated' }
          : low
            ? { short: 'dropTooLow' }
            : drops.made < DROPS
              ? { short: 'fewDrops' }
              : {}),
      },
    ];
  return [{ field, opened, ...(metres === null ? { short: 'dropHeightNotStated' } : high ? { short: 'dropTooHigh' } : {}) }];
}
