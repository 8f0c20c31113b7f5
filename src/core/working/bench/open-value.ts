import type { NoValue, Read, Value } from '../../evidence/value.ts';

/** A value with its state laid open: one shape for the five states, a live marker (not looked) and a struck reading. */
export type Opened<T> =
  | { readonly state: 'read'; readonly v: T; readonly read: Read<T> }
  | { readonly state: 'notLooked' }
  | { readonly state: 'absent' | 'unknown' | 'struck'; readonly because: string }
  | { readonly state: 'cannotNow'; readonly because: string };

export function openValue<T>(value: Value<T> | undefined): Opened<T> {
  if (value === undefined) return { state: 'notLooked' };
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    if ('state' in value) return openState(value as NoValue);
    if ('v' in value) {
      const read = value as Read<T>;
      return read.struck === undefined ? { state: 'read', v: read.v, read } : { state: 'struck', because: read.struck };
    }
  }
  return { state: 'read', v: value as T, read: { v: value as T } };
}

function openState(value: NoValue): Opened<never> {
  switch (value.state) {
    case 'notLooked':
    case 'marked':
      return { state: 'notLooked' };
    case 'absent':
    case 'unknown':
      return { state: value.state, because: value.because };
    case 'cannotNow':
      return { state: 'cannotNow', because: value.since };
  }
}

/** The value itself when there is one. */
export function findRead<T>(value: Value<T> | undefined): T | null {
  const opened = openValue(value);
  return opened.state === 'read' ? opened.v : null;
}
