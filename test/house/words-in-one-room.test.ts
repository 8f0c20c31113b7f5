import { parseSync } from 'vite';
import { describe, expect, test } from 'vitest';
import { FAILURES } from '../../src/core/result/assessment.ts';
import { filesBelow, type SourceFile } from './read-tree.ts';

type Node = Readonly<Record<string, unknown>> & { readonly type: string; readonly start: number; readonly end: number };

/** Attributes whose text somebody reads or hears. */
const READ = new Set(['aria-label', 'aria-description', 'title', 'placeholder', 'alt', 'label']);
/** Attributes and calls whose text only the browser reads. */
const UNREAD = new Set(['className', 'style', 'name', 'd', 'viewBox', 'transform']);
const UNREAD_CALL = /(?:querySelector(?:All)?|matches|closest|matchMedia|includes|startsWith|addEventListener)$/;
const LETTERS = /\p{L}{2}/u;
const PROSE = /\p{L}{2,}[,;:]? \p{Ll}{2,}/u;

/** Words of the verdict are values of the Assessment: a page that asks for them says them as they stand there. */
const VALUES: ReadonlySet<string> = new Set([...FAILURES, 'examined', 'partly examined', 'not examined']);

/** English that stands in a file of the page, as "line: text". What a defect throws is for people who mend the tool. */
function wordsIn({ path, text }: SourceFile): string[] {
  const found: string[] = [];
  const { program } = parseSync(path, text, { lang: path.endsWith('x') ? 'tsx' : 'ts' });
  const tell = (node: Node, words: string): void => {
    found.push(`${text.slice(0, node.start).split('\n').length}: ${words.trim().replace(/\s+/g, ' ')}`);
  };
  const visit = (node: unknown, inRead: boolean): void => {
    if (Array.isArray(node)) {
      for (const one of node) visit(one, inRead);
      return;
    }
    if (typeof node !== 'object' || node === null) return;
    const one = node as Node;
    let read = inRead;
    switch (one.type) {
      case 'ImportDeclaration':
      case 'ThrowStatement':
      case 'TSTypeAliasDeclaration':
      case 'TSInterfaceDeclaration':
        return;
      case 'CallExpression': {
        const callee = one['callee'] as Node;
        visit(callee, false);
        if (!UNREAD_CALL.test(text.slice(callee.start, callee.end))) visit(one['arguments'], false);
        return;
      }
      case 'JSXAttribute': {
        const name = String((one['name'] as Node)['name']);
        if (UNREAD.has(name)) return;
        read = READ.has(name);
        break;
      }
      case 'JSXElement':
      case 'JSXFragment':
        visit(one['openingElement'], false);
        // what an expression between tags comes to is read; what it asks on the way is not
        for (const child of one['children'] as readonly Node[])
          visit(child.type === 'JSXExpressionContainer' ? child['expression'] : child, child.type === 'JSXExpressionContainer');
        return;
      case 'ConditionalExpression':
        visit(one['test'], false);
        visit([one['consequent'], one['alternate']], inRead);
        return;
      case 'LogicalExpression':
        visit(one['left'], inRead && one['operator'] !== '&&');
        visit(one['right'], inRead);
        return;
      case 'BinaryExpression':
      case 'MemberExpression':
        read = false;
        break;
      case 'JSXText':
        if (LETTERS.test(String(one['value']).replace(/&\w+;/g, ''))) tell(one, String(one['value']));
        return;
      case 'Literal': {
        const value = one['value'];
        if (typeof value === 'string' && !VALUES.has(value) && (inRead ? LETTERS : PROSE).test(value)) tell(one, value);
        return;
      }
      case 'TemplateLiteral': {
        const words = (one['quasis'] as readonly { readonly value: { readonly raw: string } }[]).map(({ value }) => value.raw);
        if (words.some((part) => (inRead ? LETTERS : PROSE).test(part))) tell(one, words.join('…'));
        break;
      }
      default:
    }
    for (const [key, value] of Object.entries(one)) if (key !== 'type') visit(value, read);
  };
  visit(program, false);
  return found;
}

const FILES = filesBelow('src/web', ['.ts', '.tsx']).filter(({ path }) => path !== 'src/web/style/adopt.ts');

describe('English words of the page', () => {
  test('stand in one room, src/present/words', () => {
    const found = FILES.flatMap((file) => wordsIn(file).map((words) => `${file.path}:${words}`));
    expect(found).toEqual([]);
    expect(FILES.length).toBeGreaterThan(100);
  });

  test.each([
    ['a text between tags', 'export const a = <p>Load off</p>;'],
    ['a spoken name', 'export const a = <p aria-label="Verdict" />;'],
    // biome-ignore lint/suspicious/noTemplateCurlyInString: it is a program to be read
    ['a spoken name put together', 'export const a = (n: number) => <p aria-label={`row ${n}`} />;'],
    ['a choice of two', "export const a = (b: boolean) => <p>{b ? 'kept with the time' : ''}</p>;"],
    ['a single word of two', "export const a = (b: boolean) => <p>{b ? 'fewer' : null}</p>;"],
    // biome-ignore lint/suspicious/noTemplateCurlyInString: it is a program to be read
    ['a sentence put together', 'export const a = (n: number) => `${n} not on the disk yet`;'],
  ])('are seen as %s', (_what, text) => {
    expect(wordsIn({ path: 'a.tsx', text })).toHaveLength(1);
  });

  test.each([
    ['a class', 'export const a = <p className="chosen one" />;'],
    ['a selector', "export const a = document.querySelector('input, select, textarea');"],
    ['what a defect says', "export const a = () => { throw new Error('a part outside of its page'); };"],
    ['what is asked on the way', "export const a = (k: string) => <p>{k === 'sweep' && k}</p>;"],
    ['words of the room', "import { CASE_PAGE } from '../present/words/case-page-words.ts'; export const a = <p>{CASE_PAGE.find}</p>;"],
  ])('are not taken for %s', (_what, text) => {
    expect(wordsIn({ path: 'a.tsx', text })).toEqual([]);
  });
});
