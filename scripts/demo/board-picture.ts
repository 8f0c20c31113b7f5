import { ROOM_C } from './demo-unit.ts';
import type { ExhibitInput } from './full-day.ts';
import { noiseFor } from './noise.ts';
import type { UnitModel } from './unit-model.ts';

type Picture = Extract<ExhibitInput, { kind: 'thermalPicture' }>;

const WIDE = 96;
const HIGH = 72;
const SCATTER_K = 0.06;
const EMISSIVITY = 0.95;

/** What lies on the board, in pixels: where, how wide, how hot beside the winding, how fast it cools. Invented. */
const PARTS = [
  { place: 'winding', x: 48, y: 34, wide: 14, high: 12, share: 0.97, coolsS: 420 },
  { place: 'core-tape', x: 71, y: 34, wide: 3, high: 10, share: 0.86, coolsS: 420 },
  { place: 'bulk', x: 13, y: 57, wide: 8, high: 8, share: 0.72, coolsS: 500 },
  { place: 'rectifier', x: 84, y: 14, wide: 4, high: 3, share: 1.02, coolsS: 150 },
] as const;
const BOARD_SHARE = 0.42; // of the rise of the winding, far from everything
const BOARD_COOLS_S = 300;
const EDGE = 4; // pixels over which a part fades into the board

/** The opened board so many seconds after the cover came off, °C as a camera shows it. */
export function boardPicture(model: UnitModel, { windingC }: { windingC: number }, seconds: number): number[][] {
  const noise = noiseFor(model.seed, `picture ${seconds}`);
  const rise = (share: number, coolsS: number): number => (windingC - ROOM_C) * share * Math.exp(-seconds / coolsS);
  return Array.from({ length: HIGH }, (_, y) =>
    Array.from({ length: WIDE }, (_unused, x) => {
      const board = rise(BOARD_SHARE, BOARD_COOLS_S);
      const heights = PARTS.map((part) => {
        const outside = Math.hypot(Math.max(0, Math.abs(x - part.x) - part.wide), Math.max(0, Math.abs(y - part.y) - part.high));
        return board + (rise(part.share, part.coolsS) - board) * Math.exp(-outside / EDGE);
      });
      return ROOM_C + Math.max(board, ...heights) + SCATTER_K * noise.normal();
    }),
  );
}

/** The picture with a region on each part. */
export function boardPictureExhibit(id: string, at: string, under: Picture['under']): Picture {
  return {
    id,
    kind: 'thermalPicture',
    day: 'day-1',
    at,
    under,
    file: `${id}-file`,
    scale: { unit: '°C' },
    cameraEmissivity: String(EMISSIVITY),
    reflected: `${ROOM_C} °C ± 1 K`,
    regions: PARTS.map(({ place, x, y, wide, high }) => ({
      id: place,
      place,
      drawn: 'rectangle',
      points: [
        [x - wide, y - high],
        [x + wide, y - high],
        [x + wide, y + high],
        [x - wide, y + high],
      ],
    })),
  };
}
