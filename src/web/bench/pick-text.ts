import { PICK_WORDS } from '../../present/words/bench-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';

/** Words of one key to choose. */
export function pickText(key: string): string {
  return PICK_WORDS[key] ?? choiceWords(key);
}
