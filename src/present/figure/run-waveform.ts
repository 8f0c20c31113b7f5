import type { RunWaveform } from '../../core/evidence/computed/circuit-run.ts';
import { coordinate as c } from '../markup/coordinate.ts';
import { html, type Markup, NOTHING } from '../markup/markup.ts';
import { LINE_WORDS } from '../words/run-words.ts';
import { type CurveSize, drawFrame, reach } from './curve-frame.ts';

export const WAVEFORM_WIDE: CurveSize = { width: 640, height: 150 };
export const WAVEFORM_NARROW: CurveSize = { width: 330, height: 140 };

const MARGIN = { left: 48, right: 12, top: 24, bottom: 36 };
const MILLI = 1e-3;
const MICRO = 1e-6;
/** Shorter than this, times are told in microseconds, seconds. */
const SHORT_S = 1e-3;

/** One simulated line over time. A level that the line is held against is dashed. */
export function drawRunLine(
  waveform: RunWaveform,
  id: string,
  size: CurveSize,
  level: { readonly at: number; readonly text: string } | null = null,
): Markup {
  const line = waveform.lines.find((one) => one.id === id);
  if (line === undefined || waveform.timeS.length < 2) return NOTHING;
  const lastS = waveform.timeS.at(-1)!;
  const [unit, factor] = lastS < SHORT_S ? (['µs', MICRO] as const) : (['ms', MILLI] as const);
  const values = level === null ? line.values : [...line.values, level.at];
  const frame = drawFrame({ x: [0, lastS / factor], y: reach(values, null), xUnit: unit, yUnit: line.unit }, size, MARGIN);
  const path = line.values
    .map((value, index) => `${index === 0 ? 'M' : 'L'}${c(frame.x(waveform.timeS[index]! / factor))} ${c(frame.y(value))}`)
    .join('');
  const held =
    level === null
      ? NOTHING
      : html`<path class="limit" d="M${c(frame.x(0))} ${c(frame.y(level.at))}H${c(frame.right)}"/><text class="says" x="${c(frame.right)}" y="${c(frame.y(level.at) - 4)}" text-anchor="end">${level.text}</text>`;
  const label = `${lineTitle(id)} over ${(lastS / factor).toPrecision(3)} ${unit}`;
  return html`<svg class="ml fig load run" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" role="img" aria-label="${label}">${frame.drawn}<path class="curve" d="${path}"/>${held}</svg>`;
}

export function lineTitle(id: string): string {
  return LINE_WORDS[id] ?? (id.startsWith('reverse-') ? `Across ${id.slice('reverse-'.length)}` : id);
}
