import { PHOTO } from '../../present/words/photo-words.ts';
import type { At } from '../stage/stage-view.ts';
import { shortestTree } from './shortest-tree.ts';
import type { Traced, TracedPad } from './traced-pads.ts';

const HUES = 8; // colours before they come round again with other dashes
const DASHES = ['', '9 4', '2 4', '12 4 2 4'];
const RADIUS = 9; // px of the screen
const LETTER = 6.6; // width of a letter with room to spare, px of the screen
const PLATE = 16; // height of the plate under a name, px of the screen
const BASELINE = 4; // below the middle, px of the screen

/** Pads with the number of their net, and thin lines that join those of one net; each as large on the screen however near the photo is. */
export function PadOverlay({
  traced,
  place,
  scale,
  chosen,
  onChoose,
}: {
  traced: Traced;
  /** Where a pad lies in the window's picture; null where its photo is not laid on it. */
  place: (pad: TracedPad) => At | null;
  scale: number;
  chosen: string | null;
  onChoose: (id: string) => void;
}) {
  const spots = traced.pads.flatMap((pad) => {
    const at = place(pad);
    return at === null ? [] : [{ pad, at, net: traced.nets.find(({ id }) => id === pad.net) }];
  });
  return (
    <>
      {traced.nets.map(({ id, number }) =>
        shortestTree(spots.filter(({ pad }) => pad.net === id).map(({ at }) => at)).map(([from, to]) => (
          <g key={`${id} ${from.x} ${from.y} ${to.x} ${to.y}`} className={netClass(number)}>
            <line className="halo" x1={from.x} y1={from.y} x2={to.x} y2={to.y} strokeWidth={5 / scale} />
            <line
              className="track"
              x1={from.x}
              y1={from.y}
              x2={to.x}
              y2={to.y}
              strokeWidth={2.4 / scale}
              strokeDasharray={dashesOf(number, scale)}
            />
          </g>
        )),
      )}
      {spots.map(({ pad, at, net }) => (
        // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in a drawing
        <g
          key={pad.id}
          data-own-click=""
          data-pad={pad.id}
          role="button"
          tabIndex={-1} // with the keyboard it is chosen in the list of nets
          aria-pressed={pad.id === chosen}
          aria-label={PHOTO.padSpoken(
            pad.pin === '' ? PHOTO.partNotKnown : pad.pin,
            net === undefined ? PHOTO.netNotKnown : PHOTO.netNamed(net.name),
          )}
          className={`pad ${net === undefined ? 'net-none' : netClass(net.number)}${pad.id === chosen ? ' chosen' : ''}`}
          transform={`translate(${at.x} ${at.y}) scale(${1 / scale})`}
          onClick={() => onChoose(pad.id)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' && event.key !== ' ') return;
            event.preventDefault();
            event.stopPropagation();
            onChoose(pad.id);
          }}
        >
          <circle r={RADIUS + 2} className="halo" />
          <circle r={RADIUS} className="spot" strokeWidth={2} strokeDasharray={pad.pin === '' ? '3 2' : undefined} />
          <text textAnchor="middle" y={BASELINE}>
            {net === undefined ? '?' : net.number}
          </text>
          {pad.pin !== '' && (
            <g transform={`translate(${RADIUS + 4} 0)`}>
              <rect className="plate" x={0} y={-PLATE / 2} width={pad.pin.length * LETTER + 6} height={PLATE} rx={2} />
              <text className="beside" x={3} y={BASELINE}>
                {pad.pin}
              </text>
            </g>
          )}
        </g>
      ))}
    </>
  );
}

export function netClass(number: number): string {
  return `net-${(number - 1) % HUES}`;
}

function dashesOf(number: number, scale: number): string {
  const dashes = DASHES[Math.floor((number - 1) / HUES) % DASHES.length] ?? '';
  return dashes
    .split(' ')
    .map((length) => Number(length) / scale)
    .join(' ');
}
