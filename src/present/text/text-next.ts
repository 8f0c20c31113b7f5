import type { Assessment, Next } from '../../core/result/assessment.ts';
import { getCheckWords } from '../words/check-words.ts';
import { BEFORE_WORDS, measurementText, prospectText } from '../words/next-words.ts';
import { stopText } from '../words/stop-text.ts';
import { paint } from './ansi.ts';
import { hang, toTerminal } from './terminal-text.ts';

const MOST_NEXT = 3;
const INDENT = '     ';

/** What to measure next, with where to stop; a limit that was worked out names the step that explains it. */
export function renderNext({ next }: Assessment, width: number, colour: boolean): string {
  if (next.length === 0) return '';
  const lines = next.slice(0, MOST_NEXT).flatMap((one, index) => [renderOne(one, index + 1, width), ...renderStops(one, width)]);
  return [paint('Measure next', 'bold', colour), ...lines].join('\n');
}

function renderOne(one: Next, number: number, width: number): string {
  const before = one.before === null ? '' : ` (${BEFORE_WORDS[one.before]})`;
  const settles = [...new Set(one.settles.map((id) => getCheckWords(id.split('@')[0] ?? id).title))];
  const of = settles.length === 0 ? '' : ` Settles: ${settles.join(', ')}.`;
  return hang(toTerminal(`${measurementText(one.measure, one.about)}${before}.${of} ${prospectText(one)}`), width, `  ${number}. `);
}

function renderStops({ stop }: Next, width: number): string[] {
  return stop.map((one) => {
    const origin = one.step === null ? '' : ` (${one.step})`;
    return hang(toTerminal(`stop at ${stopText(one)}${origin}`), width, INDENT);
  });
}

/** One short list before each point of no return that still lies ahead. */
export function renderLastChance({ lastChance }: Assessment, width: number, colour: boolean): string {
  const points = lastChance.filter(({ measure }) => measure.length > 0);
  if (points.length === 0) return '';
  const lines = points.flatMap(({ before, measure }) => [
    `  ${BEFORE_WORDS[before]}:`,
    ...measure.map((key) => hang(toTerminal(measurementText(key)), width, '  – ')),
  ]);
  return [paint('What can only be measured now', 'bold', colour), ...lines].join('\n');
}
