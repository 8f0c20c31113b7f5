import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

const ONE_MAKER = cite('camera-makers', 'one maker’s table of emissivities', 'secondary');
const ANOTHER = cite('camera-makers', 'the appendix of another maker’s manual', 'secondary');
const BOARDS = cite('camera-makers', 'a third maker’s answer on circuit boards', 'secondary');

/**
 * How well a surface radiates, with half of the range that is met. Metals are listed to be refused: below 0.6 a camera shows the room as much as the
 * surface, and only tape or paint helps.
 */
export const surfaceEmissivity = defineTable({
  id: 'camera-makers/2026/surface-emissivity',
  title: 'Emissivity of surfaces met in adapters',
  source: cite('camera-makers', 'usual ranges', 'memory'),
  lookUp: 'exact key',
  key: { name: 'surface', unit: '', si: 'word', factor: 1 },
  columns: { emissivity: { unit: '1', si: '1', factor: 1 }, halfWidth: { unit: '1', si: '1', factor: 1 } },
  rows: [
    ['plastic', 0.94, 0.03],
    ['paper', 0.95, 0.02],
    ['glass', 0.94, 0.03],
    ['ceramic', 0.92, 0.03],
    ['mattPaint', 0.97, 0.02],
    ['varnish', 0.94, 0.03],
    ['partOnBoard', 0.9, 0.05],
    ['epoxy', 0.9, 0.05],
    ['solderMask', 0.9, 0.05],
    ['tapeVinyl', 0.96, 0.01],
    ['tapePolyimide', 0.75, 0.15],
    ['sleeve', 0.9, 0.05],
    ['ferrite', 0.9, 0.05],
    ['metalOnBoard', 0.15, 0.1],
    ['bareAluminium', 0.06, 0.04],
    ['oxidisedAluminium', 0.2, 0.1],
    ['anodisedAluminium', 0.55, 0.1],
    ['copper', 0.04, 0.02],
    ['tinned', 0.07, 0.03],
    ['solder', 0.36, 0.08],
  ],
  cellSources: {
    'plastic/emissivity': ONE_MAKER,
    'paper/emissivity': cite('camera-makers', 'two makers’ tables: 0.97 and 0.93', 'secondary'),
    'glass/emissivity': ONE_MAKER,
    'ceramic/emissivity': ONE_MAKER,
    'mattPaint/emissivity': ONE_MAKER,
    'varnish/emissivity': ONE_MAKER,
    'partOnBoard/emissivity': BOARDS,
    'metalOnBoard/emissivity': BOARDS,
    'bareAluminium/emissivity': cite('camera-makers', 'two makers’ tables: 0.02 to 0.09', 'secondary'),
    'oxidisedAluminium/emissivity': ONE_MAKER,
    'anodisedAluminium/emissivity': ANOTHER,
    'copper/emissivity': ONE_MAKER,
    'solder/emissivity': cite('camera-makers', 'one maker’s table for lead: 0.28 and 0.43', 'secondary'),
  },
});
