/** 50 rounds of edits in a process of their own, killed without a word: how many were acknowledged, how many of those are missing. */
import { join } from 'node:path';
import { LEAST_EDITS, stormRound } from '../../test/store/storm/storm-round.ts';
import { inScratch } from './scratch.ts';

const ROUNDS = 50;
const ROUNDS_PER_FILE = 10; // reading a history that only grows would measure something else

await inScratch(async (folder) => {
  let [acknowledged, lost, wrong, short] = [0, 0, 0, 0];
  for (let seed = 1; seed <= ROUNDS; seed += 1) {
    const round = await stormRound(join(folder, `book-${Math.floor(seed / ROUNDS_PER_FILE)}`), seed);
    acknowledged += round.acknowledged;
    lost += round.lost.length;
    wrong += round.check.wrong.length;
    if (round.acknowledged < LEAST_EDITS) short += 1;
  }
  console.log(
    `${ROUNDS} kills: ${acknowledged} acknowledged edits, ${lost} missing, ${wrong} wrong, ${short} rounds below ${LEAST_EDITS} edits`,
  );
  if (lost + wrong + short > 0) process.exitCode = 1;
});
