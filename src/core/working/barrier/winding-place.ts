import type { StackFacts, Winding } from '../transformer/stack-facts.ts';

/** Names of the conductors that a stack adds to the map. */
export const nodeOf = (stack: StackFacts, winding: Winding): string => `${stack.part.id}/${winding.id}`;
export const coreOf = (stack: StackFacts): string => stack.exhibit.coreConductor ?? `${stack.part.id}/core`;

export type Faces = 'mains' | 'hand' | 'between' | 'unknown';

/** Which side of the barrier a winding stands on. */
export function facesOf({ side }: Winding): Faces {
  if (side.state !== 'read') return 'unknown';
  if (side.v === 'mains') return 'mains';
  return side.v === 'output' || side.v === 'touchable' ? 'hand' : 'between';
}
