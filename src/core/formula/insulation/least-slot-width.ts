import { cite } from '../../source/source.ts';
import { defineFormula } from '../define-formula.ts';

const SMALL_CLEARANCE_M = 3e-3; // from this clearance on the printed X holds as it stands
const PARTS = 3; // below it a third of the clearance is enough

const isSmall = (clearance: number): boolean => clearance < SMALL_CLEARANCE_M;
const width = (printed: number, clearance: number): number => (isSmall(clearance) ? Math.min(printed, clearance / PARTS) : printed);

/** Width below which a slot adds nothing to a creepage distance. The clearance is the one that is required, not the one found. */
export const leastSlotWidth = defineFormula({
  id: 'insulation/least-slot-width',
  tex: String.raw`X' = \min(X, d/3)\ \text{for}\ d < 3\,\mathrm{mm},\ \text{else}\ X`,
  text: "X' = min( X ; d / 3 ) where d < 3 mm, else X",
  source: cite('iec-60664-1', 'clause 6.2', 'secondary', { alsoBy: ['a connector maker’s catalogue, measuring clearance and creepage'] }),
  inputs: {
    printed: { symbol: 'X', unit: 'm', means: 'width by pollution degree', moves: 'up' },
    clearance: { symbol: 'd', unit: 'm', means: 'required clearance of the pair', moves: 'up' },
  },
  output: { symbol: "X'", unit: 'm', means: 'least width of a slot that counts', show: 'millimetres' },
  validity: 'slots and grooves with parallel or widening walls; one that narrows to its mouth is measured at its narrowest',
  compute: ({ printed, clearance }) => width(printed, clearance),
  branch: ({ printed, clearance }) =>
    isSmall(clearance) && clearance / PARTS < printed ? 'a third of the clearance' : 'the width by pollution degree',
});
