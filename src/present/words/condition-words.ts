import type { Finding } from '../../core/result/assessment.ts';
import { foundText } from './found-words.ts';

/** Conditions in the order in which a reader asks for them, each with the words around what was typed. */
const CONDITIONS: readonly { readonly key: string; readonly say: (typed: string) => string }[] = [
  { key: 'mains', say: (typed) => `mains ${typed}` },
  { key: 'frequency', say: (typed) => typed },
  { key: 'supply', say: (typed) => (typed === 'direct' ? 'direct supply' : `supply: ${foundText(typed)}`) },
  { key: 'orientation', say: (typed) => `plug way ${typed}` },
  { key: 'loads', say: (typed) => `load ${typed}` },
  {
    key: 'cover',
    say: (typed) => (typed.startsWith(OPENED_BEFORE) ? `cover opened ${typed.slice(OPENED_BEFORE.length)} before` : `cover ${typed}`),
  },
  { key: 'position', say: (typed) => `position: ${typed}` },
  { key: 'ambient', say: (typed) => `ambient ${typed}` },
  { key: 'start', say: (typed) => `started ${typed}` },
  { key: 'minutes', say: (typed) => `after ${typed}` },
];
const OPENED_BEFORE = 'openedBefore ';
const UNKNOWN = 'unknown';

/** "mains 230.4 V, 50 Hz, direct supply, plug way B": as typed; empty when nothing was typed. */
export function underText(under: Finding['under']): string {
  const known = CONDITIONS.map(({ key }) => key);
  const told = CONDITIONS.flatMap(({ key, say }) => {
    const typed = Object.hasOwn(under, key) ? under[key] : undefined;
    if (typed === undefined) return [];
    return [typed === UNKNOWN ? `${key} not known` : say(typed)];
  });
  const others = Object.entries(under).flatMap(([key, typed]) => (known.includes(key) ? [] : [`${key} ${typed}`]));
  return [...told, ...others].join(', ');
}
