import { pinsOf } from '../pin-names.ts';
import { kindOfReference } from './kind-words.ts';

const NAMED = /^[^\s,:=#?!()]+\s*=\s*\S+$/;
const HEADING = /^\p{L}[\p{L} ]*$/u;

/**
 * A row pasted from a table (cells divided by tabs) as the line that says the same: the reference, then what the part is, then its nets. The nets
 * are the cells with "pin=net", or else as many of the last cells as the part has pins; "-" and empty cells say nothing. Null for a heading.
 */
export function lineFromRow(row: string): string | null {
  const cells = row
    .split('\t')
    .map((cell) => cell.trim())
    .filter((cell) => cell !== '' && cell !== '-');
  const [ref = '', ...rest] = cells;
  if (HEADING.test(ref)) return null;
  const isNamed = rest.some((cell) => NAMED.test(cell));
  const kind = kindOfReference(ref, []);
  // a row of a transformer is one winding: its name, turns, and the two ends
  const pins = kind === 'transformer' ? WINDING_ENDS : (kind === null ? null : pinsOf(kind))?.length;
  const first = Math.max(0, rest.length - (pins ?? rest.length));
  const isNet = (cell: string, index: number): boolean => (isNamed ? NAMED.test(cell) : index >= first);
  const words = rest.filter((cell, index) => !isNet(cell, index)).map((cell) => cell.replace(/[:#]/g, ' '));
  return `${[ref, ...words].join(' ')}: ${rest.filter(isNet).join(', ')}`;
}

const WINDING_ENDS = 2;
