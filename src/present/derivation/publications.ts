import type { Assessment } from '../../core/result/assessment.ts';
import { listSources, type SourceRecord } from './source-text.ts';

/** One publication in one edition, with every place in it that this Assessment uses. */
export interface Publication {
  readonly number: number;
  readonly title: string;
  readonly places: readonly SourceRecord[];
}

const KNOWN = new WeakMap<Assessment, readonly Publication[]>();

/** Publications in the order of the list of sources, counted from one: a step names its number and the place only. */
export function listPublications(assessment: Assessment): readonly Publication[] {
  const known = KNOWN.get(assessment);
  if (known !== undefined) return known;
  const byTitle = new Map<string, SourceRecord[]>();
  for (const source of listSources(assessment))
    byTitle.set(titleOfPublication(source), [...(byTitle.get(titleOfPublication(source)) ?? []), source]);
  const listed = [...byTitle].map(([title, places], index) => ({ number: index + 1, title, places }));
  KNOWN.set(assessment, listed);
  return listed;
}

export function publicationOf(assessment: Assessment, source: SourceRecord): Publication | undefined {
  return listPublications(assessment).find(({ title }) => title === titleOfPublication(source));
}

/** Publication and edition. */
export function titleOfPublication({ publication, edition }: SourceRecord): string {
  return edition === 'none' || edition === '' ? publication : `${publication}; ${edition}`;
}
