import type { CaseState } from './case-state.ts';

/** The document of a case as it stands in a folder: indented by two, a newline at the end. Drafts stay in the casebook. */
export function documentText({ case: document }: CaseState): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}
