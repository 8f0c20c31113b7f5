/** Sentences that stand in every report, always the same. */
export const ONE_SAMPLE = 'An examination of one sample, not a certification.';
export const ONE_SAMPLE_LONG =
  'Everything here is about the one sample that was examined, as it was measured on one bench. Another sample of the same product may differ. A laboratory would apply further conditions.';
export const INVENTED = 'Invented unit, invented data. Nothing here describes a real product.';
export const RIGHT_OF_REPLY =
  'Maker, importer and seller can answer. An answer is printed whole with the next version, and earlier versions stay readable. This document carries no answer.';
export const DO_NOT_REPEAT =
  'Do not repeat these measurements unless you are trained for work on live mains and allowed to do it where you are.';
export const HOW_TO_READ =
  'Right of the limit is good. The limit is drawn solid for official text or the label, dashed for a secondary copy, dotted for memory, practice or reasoning. Band: where the true value lies, 95 %. Hatched: it could be anywhere. Short stroke: basic insulation. Temperatures: rise over permitted rise. Cross: fail. Disc: pass. Half disc: inconclusive. Ring: not assessed.';
export const DECISION_RULE =
  'A check passes when the probability that its limit is met is at least the setting asks, fails when it is at most the setting asks, and is inconclusive between.';

export const CAUTIONS: readonly string[] = [
  'Mains can kill, and so can the charged bulk capacitor behind the rectifier, with the plug already out. Unplugging is not proof: only a measured residual voltage is, and a second one a minute later.',
  'Cold checks and output-to-earth come first, before anything earthed or connected to a computer touches the output.',
  'Never clip an earthed probe to the primary side. Use a differential probe; an isolation transformer and residual-current protection belong on the bench, covers and eye protection on the unit and on you.',
  'Work on live mains belongs to people who are trained for it and allowed to do it where they are. Local rules and licensed laboratories come first.',
];
