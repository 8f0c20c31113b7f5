import type { Grade } from './grade.ts';
import { PUBLICATIONS, type PublicationId } from './publications.ts';

/** Where a figure or a formula stands, and how sure we are of it. Travels with the number to every screen and page. */
export interface Source {
  readonly publication: string;
  readonly edition: string;
  /** Clause, table, page, equation. */
  readonly place: string;
  readonly grade: Grade;
  /** ISO date on which somebody last compared our figure with the place named. */
  readonly checked: string;
  /** Independent places that print the same. */
  readonly alsoBy?: readonly string[];
  /** Places that print something else, with what. */
  readonly disagrees?: readonly string[];
}

const LAST_FULL_CHECK = '2026-11-25'; // when the tables of this edition were compared with their sources

export function cite(
  publication: PublicationId,
  place: string,
  grade: Grade,
  more: { checked?: string; alsoBy?: readonly string[]; disagrees?: readonly string[] } = {},
): Source {
  const { title, edition } = PUBLICATIONS[publication];
  return {
    publication: title,
    edition,
    place,
    grade,
    checked: more.checked ?? LAST_FULL_CHECK,
    ...(more.alsoBy === undefined ? {} : { alsoBy: more.alsoBy }),
    ...(more.disagrees === undefined ? {} : { disagrees: more.disagrees }),
  };
}
