import { CELL, type WorkedExample } from '../worked-example.ts';

const PAGE = {
  publication: 'Encyclopaedia article on BS 1363, in a copy',
  origin: 'publication',
  unit: 'mm',
  tolerance: 0,
  because: CELL,
} as const;

/** Line and neutral pins of the British plug. */
export const BRITISH_PLUG: readonly WorkedExample[] = [
  { ...PAGE, table: 'bs-1363/undated/pins/nominal', place: 'line and neutral, length', inputs: { key: 'length' }, printed: 17.7 },
  {
    ...PAGE,
    table: 'bs-1363/undated/pins/nominal',
    place: 'line and neutral to the edge of the plug',
    inputs: { key: 'toEdge' },
    printed: 9.5,
  },
];
