/** Colours of a terminal by meaning. Without colour the text says the same: shape and word carry it. */
export type Paint = 'bold' | 'pass' | 'fail' | 'inconclusive' | 'quiet' | 'grave' | 'unexamined' | 'link';

const ESCAPE = '\u001b[';
const CODES: Readonly<Record<Paint, string>> = {
  bold: '1',
  pass: '36',
  fail: '31',
  inconclusive: '33',
  quiet: '2',
  grave: '1;97;41',
  unexamined: '1;7',
  link: '4',
};

export function paint(text: string, how: Paint, colour: boolean): string {
  return colour && text !== '' ? `${ESCAPE}${CODES[how]}m${text}${ESCAPE}0m` : text;
}
