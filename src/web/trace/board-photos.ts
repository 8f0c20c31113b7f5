import type { Json } from '../../app/casebook/change.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { type Alignment, alignByPoints, type Point } from '../../present/figure/alignment.ts';
import { fileOf } from '../api/casebook.ts';
import { type CaseReader, listOf } from '../part/new-exhibit.ts';

type Tree = Readonly<Record<string, Json>>;

/** A photo of the case that can be shown. */
export interface BoardPhoto {
  readonly id: string;
  readonly name: string;
  readonly source: string;
  /** Laid on another photo, when it is. */
  readonly onto: { readonly photo: string; readonly alignment: Alignment } | null;
}

/** Photos of the case whose file is there. */
export function listBoardPhotos(reader: CaseReader, caseId: string): readonly BoardPhoto[] {
  const files = new Map(listOf(reader, 'files').map((file) => [String(file['id']), file]));
  return listOf(reader, 'exhibits').flatMap((item) => {
    const file = item['kind'] === 'photo' ? files.get(String(item['file'])) : undefined;
    if (file === undefined) return [];
    const id = String(item['id']);
    const name = typeof item['of'] === 'string' && item['of'] !== '' ? item['of'] : id;
    return [{ id, name, source: fileOf(caseId, String(file['sha256'])), onto: readOnto(item['onto']) }];
  });
}

/** The two sides that are traced: those that were chosen, else a photo that lies on another one with the one below it. */
export function chooseSides(
  photos: readonly BoardPhoto[],
  kept: { readonly below: string | undefined; readonly above: string | undefined },
): { readonly below: BoardPhoto | null; readonly above: BoardPhoto | null } {
  const laid = photos.find(({ onto }) => onto !== null && photos.some(({ id }) => id === onto.photo));
  const below = photos.find(({ id }) => id === (kept.below ?? laid?.onto?.photo)) ?? photos.find((one) => one !== laid) ?? null;
  if (kept.above === NO_SIDE) return { below, above: null };
  const others = photos.filter((one) => one !== below);
  return {
    below,
    above: others.find(({ id }) => id === kept.above) ?? others.find(({ onto }) => onto?.photo === below?.id) ?? others[0] ?? null,
  };
}

/** Kept where a person wants one photo alone. */
export const NO_SIDE = 'none';

function readOnto(value: Json | undefined): BoardPhoto['onto'] {
  const onto = value as Tree | undefined;
  const points = Array.isArray(onto?.['points']) ? (onto['points'] as unknown as readonly { here: Point; there: Point }[]) : [];
  const alignment = alignByPoints(points.map(({ here, there }) => ({ from: here, to: there })));
  return onto === undefined || isRefusal(alignment) ? null : { photo: String(onto['photo']), alignment };
}
