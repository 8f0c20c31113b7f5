import type { Port } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { beyondWindow } from '../../formula/load/beyond-window.ts';
import { windowEdge } from '../../formula/load/window-edge.ts';
import { getCell } from '../../table/look-up.ts';
import { overvoltage } from '../../table/usb/2022/overvoltage.ts';
import { relativeWindow } from '../../table/usb/2022/relative-window.ts';
import { voltageWindow } from '../../table/usb/2022/voltage-window.ts';
import { type Derived, given } from '../../trace/derived.ts';
import { deriveTyped } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';

export interface Window {
  readonly nominal: Derived;
  readonly least: Derived;
  readonly most: Derived;
  /** Steady voltage that a device must stand; null where no publication gives one. */
  readonly harmful: Derived | null;
}

const FIVE_V = 5; // nominal voltage with windows of its own

/** The voltage window of one level of a port. Null for a level of no volts and for one with a range: its window depends on what was asked for. */
export function windowOf(port: Port, level: Port['levels'][number]): Window | null {
  if (level.range !== undefined) return null;
  const at = `load/${port.id}/${level.id}`;
  const nominal = deriveTyped(level.voltage, 'voltage', `/ports/${port.id}/levels/${level.id}/voltage`, 'nominalVoltage', 'V_n');
  if (nominal.value <= 0) return null; // a slip of the pen: no window stands round nothing
  const kind = findRead(port.kind);
  if (kind === null) return null; // the window of another socket would be a guess
  const usb = kind === 'usbA' || kind === 'usbC' || kind === 'microB';
  if (usb && nominal.value === FIVE_V) {
    const row = kind === 'usbC' ? 'usbC5' : 'usbA5';
    return {
      nominal,
      least: getCell(voltageWindow, row, 'least', `${at}/window-least`, 'V_w'),
      most: getCell(voltageWindow, row, 'most', `${at}/window-most`, 'V_w'),
      harmful: getCell(overvoltage, 'usb5', 'most', `${at}/harmful`, 'V'),
    };
  }
  const half = getCell(relativeWindow, usb ? 'pdFixed' : 'plainAdapter', 'half', `load/${usb ? 'pd' : 'plain'}-half-width`, 'w');
  const edge = (which: 'least' | 'most', sign: number): Derived =>
    derive(
      windowEdge,
      { nominal, half, sign: given('constant', sign, '1', { id: `load/sign-${which}`, name: `edge-${which}`, symbol: 's' }) },
      `${at}/window-${which}`,
    );
  const most = edge('most', 1);
  const step = usb ? getCell(overvoltage, 'pdBeyond', 'most', 'load/pd-beyond', 'ΔV') : null;
  return {
    nominal,
    least: edge('least', -1),
    most,
    harmful: step === null ? null : derive(beyondWindow, { edge: most, step }, `${at}/harmful`),
  };
}
