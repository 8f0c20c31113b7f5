import type { WithoutPlace } from '../app/casebook/without-place.ts';

/** How photos lose the place where they were taken on their way out. Null: there is no way yet, and a case with photos does not leave. */
export const WITHOUT_PLACE: WithoutPlace | null = null;
