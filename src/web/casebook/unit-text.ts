import { CASEBOOK_PAGE } from '../../present/words/casebook-page-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import type { ListedCase } from '../state/use-casebook.ts';

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });
const DAY_OF_YEAR = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** "USB-C, 5 V 2 A": sockets and claims of a unit. */
export function whatText({ summary }: ListedCase): string {
  if (summary === null) return '';
  const MOST = 3; // claims named before the rest is counted
  const claims = summary.claims.slice(0, MOST).join(', ');
  const more = summary.claims.length > MOST ? CASEBOOK_PAGE.andMore(summary.claims.length - MOST) : '';
  return [summary.kinds.map(choiceWords).join(', '), `${claims}${more}`].filter((part) => part !== '').join(', ');
}

/** The day, with the year when it is another one. */
export function dayText(at: string): string {
  const day = new Date(at);
  return (day.getFullYear() === new Date().getFullYear() ? DAY : DAY_OF_YEAR).format(day);
}

export function nameOf({ head, summary }: ListedCase): string {
  return summary?.name ?? head.id;
}
