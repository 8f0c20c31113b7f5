import type { CasebookStore } from './casebook-store.ts';

/** The slug itself, or with the first number that is free among the cases of a casebook. */
export async function freeCaseId(store: CasebookStore, slug: string): Promise<string> {
  if ((await store.cases.head(slug)) === null) return slug;
  for (let number = 2; ; number += 1) {
    const id = `${slug}-${number}`;
    if ((await store.cases.head(id)) === null) return id;
  }
}
