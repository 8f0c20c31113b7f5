import type { TransformerSheet } from '../../core/result/transformer-sheet.ts';

/** Members of a stack in which a missing number is entered. */
const IN_STACK: Readonly<Record<string, string>> = {
  law: 'law',
  inductance: 'inductance',
  inductanceBelowClosedCore: 'inductance',
  peak: 'peakCurrent',
  frequency: 'frequency',
  longestOn: 'longestOn',
  ratiosThatAgree: 'ratioSeen',
  coreArea: 'coreArea',
  coreLength: 'coreLength',
  ferriteWithData: 'ferrite',
  gap: 'gap',
  clamp: 'clamp',
  switchResistance: 'switchResistance',
  fallTime: 'fallTime',
  riseTime: 'riseTime',
  leakage: 'leakage',
  meanTurn: 'meanTurn',
  window: 'window/width',
};

/** Where a number is entered that something waits for; null where it is read somewhere else, or is itself worked out. `board` is the exhibit of the board. */
export function placeOfMissing(key: string, { exhibit, layers }: TransformerSheet, board: string | null): string | null {
  const at = `/exhibits/${exhibit}`;
  const member = Object.hasOwn(IN_STACK, key) ? IN_STACK[key] : undefined;
  if (member !== undefined) return `${at}/${member}`;
  const windings = layers.filter((layer) => layer.is === 'winding');
  const inLayer = (id: string | undefined, name: string): string =>
    id === undefined ? `${at}/outsideIn` : `${at}/outsideIn/${id}/${name}`;
  switch (key) {
    case 'primaryTurns':
    case 'secondaryTurns': {
      const role = key === 'primaryTurns' ? 'primary' : 'secondary';
      const own = windings.filter((winding) => winding.role === role);
      const uncounted = own.find(({ turns }) => turns === null);
      return own.length === 0 ? inLayer(windings[0]?.id, 'role') : inLayer(uncounted?.id ?? own[0]?.id, 'turns');
    }
    case 'turns':
      return inLayer(windings.find(({ turns }) => turns === null)?.id, 'turns');
    case 'wireDiameter':
      return inLayer(windings.find(({ wire }) => wire === null)?.id, 'wire');
    case 'outputVoltage':
      return '/ports';
    case 'rectifier':
      return board === null ? null : `/exhibits/${board}/rectifier`;
    case 'bulkCapacitance':
      return '/parts';
    default:
      return null;
  }
}
