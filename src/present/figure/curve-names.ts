import type { Assessment, Curve, Finding } from '../../core/result/assessment.ts';
import { amountText } from '../words/amount-text.ts';
import { ORDER_WORDS, SENSE_WORDS } from '../words/case-words.ts';

/** Port and level as findings name their subject. */
export function subjectOf({ port, level }: Pick<Curve, 'port' | 'level'>): string {
  return `${port}~${level}`;
}

/** The output as the case calls it, where a finding about it says so. */
export function curveName(curve: Curve, assessment: Assessment): string {
  const subject = subjectOf(curve);
  return (
    assessment.findings.find((finding) => finding.subject === subject && finding.about !== null)?.about ?? `${curve.port}, ${curve.level}`
  );
}

/** Curves of one port and level, in the order in which they come. */
export function curvesByLevel({ curves }: Pick<Assessment, 'curves'>): readonly (readonly [Curve, ...Curve[]])[] {
  const groups = new Map<string, [Curve, ...Curve[]]>();
  for (const curve of curves) {
    const known = groups.get(subjectOf(curve));
    if (known === undefined) groups.set(subjectOf(curve), [curve]);
    else known.push(curve);
  }
  return [...groups.values()];
}

/** What tells a curve from the others it is drawn with: its mains, then whatever else differs at those mains. */
export function curveLabel(curve: Curve, among: readonly Curve[]): string {
  const twins = among.filter(({ mains }) => mains === curve.mains);
  const { frequency } = curve;
  const parts = [
    curve.mains === null ? 'mains not stated' : amountText({ value: curve.mains, unit: 'V', u: null }),
    frequency !== null && differs(twins, (one) => one.frequency) ? amountText({ value: frequency, unit: 'Hz', u: null }) : '',
    differs(twins, ({ order }) => order) ? ORDER_WORDS[curve.order] : '',
    differs(twins, ({ sense }) => sense) ? SENSE_WORDS[curve.sense] : '',
  ];
  const alike = twins.filter((one) => one.frequency === frequency && one.order === curve.order && one.sense === curve.sense);
  return [...parts, alike.length > 1 ? curve.exhibit : ''].filter((part) => part !== '').join(', ');
}

function differs(curves: readonly Curve[], read: (curve: Curve) => unknown): boolean {
  return new Set(curves.map(read)).size > 1;
}

/** The finding of a check about this port and level. */
export function findingOn(curve: Curve, check: string, { findings }: Pick<Assessment, 'findings'>): Finding | undefined {
  return findings.find((finding) => finding.check === check && finding.subject === subjectOf(curve));
}
