import { cite } from '../../../source/source.ts';
import { defineTable } from '../../define-table.ts';

/** Most input power with nothing connected that makers of the voluntary agreement promised, second tier. Never a legal limit. */
export const noLoad = defineTable({
  id: 'eu-code-of-conduct/5/no-load',
  title: 'No-load power, voluntary agreement',
  source: cite('eu-code-of-conduct', 'version 5, tier 2', 'secondary', { alsoBy: ['a maker of supplies', 'a trade journal'] }),
  lookUp: 'first row that covers',
  key: { name: 'nameplate output power', unit: 'W', si: 'W', factor: 1 },
  columns: { most: { unit: 'W', si: 'W', factor: 1 } },
  rows: [
    [49, 0.075],
    [250, 0.15],
  ],
});
