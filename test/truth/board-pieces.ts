import type { CasePatch } from './build-case.ts';
import { across, board, label, type PartInput } from './evidence-pieces.ts';

/** Conductors of a mains side: poles, the rails behind the rectifier, an auxiliary rail, a middle between two capacitors. */
export const MAINS_SIDE: NonNullable<CasePatch['conductors']> = [
  { id: 'line', name: 'line', side: 'mains' },
  { id: 'neutral', name: 'neutral', side: 'mains' },
  { id: 'hv-plus', name: 'bulk plus', side: 'mains' },
  { id: 'hv-plus-2', name: 'bulk plus behind the choke', side: 'mains' },
  { id: 'hv-minus', name: 'bulk minus', side: 'mains' },
  { id: 'half', name: 'middle of the bulk', side: 'mains' },
  { id: 'aux', name: 'auxiliary rail', side: 'mains' },
  { id: 'out-plus', name: 'output plus', side: 'output' },
  { id: 'out-minus', name: 'output minus', side: 'output' },
];

export function electrolytic(
  id: string,
  from: string,
  to: string,
  voltage: NonNullable<PartInput['rating']>['voltage'],
  more: Partial<PartInput> = {},
): PartInput {
  return across(id, from, to, { kind: 'electrolyticCapacitor', ...(voltage === undefined ? {} : { rating: { voltage } }), ...more });
}

/** A unit for 100-240 V: its highest mains is 264 V. */
export const UNIVERSAL = label({ input: { voltage: '100-240 V' } });

export function onBoard(parts: PartInput[], more: Parameters<typeof board>[0] = {}): CasePatch {
  return { conductors: MAINS_SIDE, parts, exhibits: [UNIVERSAL, board(more)] };
}
