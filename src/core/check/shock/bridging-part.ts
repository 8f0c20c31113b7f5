import { type BridgingPath, suppressionAbsent } from '../../working/board/bridging-facts.ts';
import { defineCheck } from '../define-check.ts';
import { judgeBridging } from '../judge-bridging.ts';

/** Is every part that stands across the barrier of a kind that may stand there? */
export const bridgingPart = defineCheck<BridgingPath>({
  id: 'shock/bridging-part',
  consequence: 'lethal',
  needs: ['bridgingParts'],
  subjects: ({ bench, bridging: paths }) => (paths.length > 0 ? paths : suppressionAbsent(bench) ? 'doesNotApply' : 'notLooked'),
  judge: (_facts, path) => judgeBridging(path),
});
