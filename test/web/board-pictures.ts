import sharp from 'sharp';

/** An invented board: six spots of solder, px of the picture of its top. */
export const SPOTS = [
  [120, 90],
  [520, 90],
  [120, 330],
  [520, 330],
  [300, 200],
  [420, 240],
] as const;
const WIDTH = 640;
const HEIGHT = 420;
/** The bottom is taken from a little further away and mirrored. */
export const BELOW_SCALE = 0.9;

/** Where a spot of the top lies on the picture of the bottom. */
export function onBottom([x, y]: readonly [number, number]): [number, number] {
  return [(WIDTH - x) * BELOW_SCALE, y * BELOW_SCALE];
}

/** Both sides as PNG. */
export async function drawBoard(): Promise<{ top: Buffer; bottom: Buffer }> {
  const picture = (ground: string, at: (spot: readonly [number, number]) => readonly [number, number], words: string, scale: number) => {
    const spots = SPOTS.map((spot) => at(spot)).map(([x, y]) => `<circle cx="${x}" cy="${y}" r="11" fill="#c9ccd0"/>`);
    const [width, height] = [WIDTH * scale, HEIGHT * scale];
    return sharp(
      Buffer.from(
        `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><rect width="100%" height="100%" fill="${ground}"/>${spots.join('')}<text x="20" y="30" font-size="20" fill="#fff">${words}</text></svg>`,
      ),
    )
      .png()
      .toBuffer();
  };
  return {
    top: await picture('#2f5d46', (spot) => spot, 'top, invented', 1),
    bottom: await picture('#5a6b3a', onBottom, 'bottom, invented', BELOW_SCALE),
  };
}
