import type { Case } from '../../core/evidence/case.ts';
import type { Assessment } from '../../core/result/assessment.ts';
import { type CasePortrait, type PortraitMark, toCasePortrait } from '../../present/workspace/case-portrait.ts';

/** What the list of cases needs of one case: small, made of its Assessment, and made again when the case or the rules moved. */
export interface CaseSummary extends CasePortrait {
  /** Revision of the case and hash of the rules that it was made of. */
  readonly revision: number;
  readonly rules: string;
  /** Kinds of output socket ("usbC") and the claims ("12 V 2 A") a person may look for. */
  readonly kinds: readonly string[];
  readonly claims: readonly string[];
}

/** The worst finding of each check that was judged. */
export type CheckMark = PortraitMark;

export function toSummary(one: Case, assessment: Assessment, revision: number): CaseSummary {
  const kinds = one.ports.flatMap(({ kind }) => (typeof kind === 'string' ? [kind] : 'v' in kind ? [kind.v] : []));
  const claims = one.ports.flatMap(({ levels }) => levels.map(({ voltage, printed }) => claimText(voltage, printed)));
  return {
    ...toCasePortrait(assessment),
    revision,
    rules: assessment.rules.sha256,
    kinds: [...new Set(kinds)],
    claims: [...new Set(claims)],
  };
}

type Printed = Case['ports'][number]['levels'][number]['printed'];

function claimText(voltage: string, printed: Printed): string {
  const current = typeof printed === 'string' ? printed : printed !== undefined && 'v' in printed ? printed.v : '';
  return `${voltage} ${current}`.trim();
}
