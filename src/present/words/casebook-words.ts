import type { GradeStroke } from './grade-words.ts';

/** Words of the list of cases. */
export const SORT_WORDS: Readonly<Record<string, string>> = {
  verdict: 'failure',
  leastExamined: 'least examined',
  changed: 'newest',
  name: 'name',
};

/** How well a line's limit is sourced, by its stroke. */
export const STROKE_WORDS: Readonly<Record<GradeStroke, string>> = {
  official: 'official text or label',
  secondary: 'secondary copy',
  memory: 'from memory or practice',
};

export function countText(count: number, one: string, many = `${one}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? one : many}`;
}

/** Where one case stands among those judged on a check. */
export function standingText(of: {
  readonly judged: number;
  readonly all: number;
  readonly worse: number;
  readonly stands: boolean;
}): string {
  const { judged, all, worse, stands } = of;
  const rest = all === judged ? '' : ` ${countText(all - judged, 'case')} cannot be placed on this line.`;
  if (judged === 0) return 'No case can be placed on this line.';
  if (!stands) return `${countText(judged, 'case')} placed, this one is not.${rest}`;
  const others = judged - 1;
  if (others === 0) return `No other case to compare with.${rest}`;
  return `${worse.toLocaleString('en')} of ${countText(others, 'other')} ${worse === 1 ? 'is' : 'are'} worse.${rest}`;
}

/** The first day with a unit, in the order in which nothing is lost. */
export const FIRST_DAY: readonly { readonly what: string; readonly how: string }[] = [
  { what: 'photographs, purchase', how: 'label, all sides, plug, a ruler in the picture' },
  { what: 'plug, body, seam', how: 'scale and caliper' },
  { what: 'cold checks', how: 'pins to output, before power: insulation, resistance, capacitance' },
  { what: 'first power-up', how: 'behind a screen, one hand, protection against residual current' },
  { what: 'touch current, both plug ways', how: 'a direct supply, before anything earthed touches the output' },
  { what: 'load sweeps, soak', how: 'cover on' },
  { what: 'before opening', how: 'a list of what is lost by it' },
];
