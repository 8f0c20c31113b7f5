/** What is at hand besides layers: core and former, and how the transformer is driven. No layer can have such an id. */
export const CORE = '+core';
export const DRIVE = '+drive';

/** Members of a stack that are entered under "how it is driven"; all others that are no layer under core and former. */
export const DRIVEN: readonly string[] = [
  'law',
  'frequency',
  'peakCurrent',
  'longestOn',
  'clamp',
  'ratioSeen',
  'switchResistance',
  'fallTime',
  'riseTime',
  'switchPart',
  'rectifierPart',
];

/** Where the screen keeps which layer of a stack is at hand. */
export function selectedKey(stack: string): string {
  return `layer-${stack}`;
}

/** What must be at hand so that a place of a stack is on the page: its stack and layer; null for a place in no stack. */
export function layerOfPlace(place: string): { readonly stack: string; readonly layer: string } | null {
  const [, list, stack = '', member = '', layer] = place.replace(/^\/case/, '').split('/');
  if (list !== 'exhibits' || stack === '') return null;
  if (member === 'outsideIn') return layer === undefined ? null : { stack, layer };
  return member === '' ? null : { stack, layer: DRIVEN.includes(member) ? DRIVE : CORE };
}
