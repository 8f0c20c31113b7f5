import type { WithoutPlace } from '../app/casebook/without-place.ts';

/** How photos lose the place where they were taken on their way out; what opens pictures is loaded when there is one. */
export const WITHOUT_PLACE: WithoutPlace = async (bytes, media) =>
  (await import('../server/photo/without-place.ts')).withoutPlace(bytes, media);
