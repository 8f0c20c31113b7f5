/** An id that stands wherever a value or conditions can stand, and the list that must hold it. */
export interface Mention {
  readonly list: 'instruments' | 'events' | 'photos' | 'ports';
  readonly id: string;
  readonly place: string;
}

/** A load named under some conditions: its level must be one of its port's. */
export interface LoadMention {
  readonly port: string;
  readonly level: string | undefined;
  readonly place: string;
}

/** Keys with the keys and words of people below them, where "photo" may mean anything. */
const FREE = new Set(['settled', 'editions', 'law']);

/** Instruments, photographs and points of no return that readings and states name, and ports and levels of loads, at any depth. */
export function mentionsIn(value: unknown, place: string): { mentions: Mention[]; loads: LoadMention[] } {
  const found: { mentions: Mention[]; loads: LoadMention[] } = { mentions: [], loads: [] };
  const visit = (one: unknown, at: string): void => {
    if (typeof one !== 'object' || one === null) return;
    if (Array.isArray(one)) {
      for (const [index, item] of one.entries()) visit(item, `${at}/${idOf(item) ?? index}`);
      return;
    }
    const { instrument, photo, state, since } = one as Record<string, unknown>;
    if (typeof instrument === 'string') found.mentions.push({ list: 'instruments', id: instrument, place: `${at}/instrument` });
    if (typeof photo === 'string') found.mentions.push({ list: 'photos', id: photo, place: `${at}/photo` });
    if (state === 'cannotNow' && typeof since === 'string') found.mentions.push({ list: 'events', id: since, place: `${at}/since` });
    for (const [key, item] of Object.entries(one)) {
      if (FREE.has(key)) continue;
      if (key === 'loads' && Array.isArray(item)) for (const load of item as unknown[]) addLoad(load, `${at}/loads`);
      else visit(item, `${at}/${key}`);
    }
  };
  const addLoad = (load: unknown, at: string): void => {
    const { port, level } = load as { port: string; level?: string };
    found.mentions.push({ list: 'ports', id: port, place: at });
    found.loads.push({ port, level, place: at });
  };
  visit(value, place);
  return found;
}

function idOf(item: unknown): string | undefined {
  return typeof item === 'object' && item !== null && 'id' in item && typeof item.id === 'string' ? item.id : undefined;
}
