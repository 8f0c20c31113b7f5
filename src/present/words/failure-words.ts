import type { Coverage, Failure } from '../../core/result/assessment.ts';

/** How heavily the left half of a verdict is drawn. */
export type FailureWeight = 'grave' | 'mild' | 'clear' | 'void';

/** The words of the left half stand in the Assessment itself; here is what goes with each. */
export const FAILURE_WEIGHTS: Readonly<Record<Failure, FailureWeight>> = {
  Dangerous: 'grave',
  Unsafe: 'grave',
  'Harmful to devices': 'mild',
  'Below its claims': 'mild',
  'Nothing found wrong': 'clear',
  'No verdict yet': 'void',
};

export const FAILURE_MEANINGS: Readonly<Record<Failure, string>> = {
  Dangerous: 'a finding that can put the mains on what a person touches',
  Unsafe: 'a finding that can injure: fire, burn, or only one of two layers of insulation',
  'Harmful to devices': 'a finding that can damage what is connected',
  'Below its claims': 'a finding that falls short of what is printed or asked',
  'Nothing found wrong': 'no check that was assessed found anything wrong',
  'No verdict yet': 'no check has been assessed',
};

export const COVERAGE_WORDS: Readonly<Record<Coverage, string>> = {
  examined: 'Examined',
  'partly examined': 'Partly examined',
  'not examined': 'Not examined',
};

/** From the best looked at to the least. */
const COVERAGE_ORDER: readonly Coverage[] = ['examined', 'partly examined', 'not examined'];

/** The worse of two coverages, with its hazard named when they differ. */
export function coverageHeadline(of: { readonly shock: Coverage; readonly fire: Coverage }): { worse: Coverage; words: string } {
  if (of.shock === of.fire) return { worse: of.shock, words: COVERAGE_WORDS[of.shock] };
  const shockIsWorse = COVERAGE_ORDER.indexOf(of.shock) > COVERAGE_ORDER.indexOf(of.fire);
  return shockIsWorse ? { worse: of.shock, words: `Shock ${of.shock}` } : { worse: of.fire, words: `Fire ${of.fire}` };
}
