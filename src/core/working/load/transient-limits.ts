import { derive } from '../../formula/derive.ts';
import { belowWindow } from '../../formula/load/below-window.ts';
import { getCell } from '../../table/look-up.ts';
import { transient } from '../../table/usb/2010/transient.ts';
import { overvoltage } from '../../table/usb/2022/overvoltage.ts';
import type { Derived } from '../../trace/derived.ts';
import { findRead } from '../bench/open-value.ts';
import type { LevelFacts } from './sweep-facts.ts';

const FIVE_V = 5;

/** How far a level may go for a moment. Null where no publication says so: plain adapters, ranges, sockets of unknown kind. */
export interface TransientLimits {
  readonly most: Derived;
  readonly least: Derived;
  /** What the voltage may stay at. */
  readonly steady: Derived;
}

export function transientLimits({ port, window, level }: LevelFacts): TransientLimits | null {
  if (window === null || window.harmful === null) return null;
  const kind = findRead(port.kind);
  if (kind !== 'usbA' && kind !== 'usbC' && kind !== 'microB') return null;
  const at = `load/${port.id}/${level.id}`;
  if (window.nominal.value === FIVE_V)
    return {
      most: getCell(transient, 'usb5', 'most', 'load/usb5-overshoot', 'V'),
      least: getCell(transient, 'usb5', 'least', 'load/usb5-undershoot', 'V'),
      steady: window.harmful,
    };
  const step = getCell(overvoltage, 'pdBeyond', 'most', 'load/pd-beyond', 'ΔV');
  return { most: window.harmful, least: derive(belowWindow, { edge: window.least, step }, `${at}/undershoot`), steady: window.harmful };
}
