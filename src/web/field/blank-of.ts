import type { Json } from '../../app/casebook/change.ts';
import type { FormNode } from '../../present/workspace/form.ts';

/** The least that can stand at a place before anything is known: required members blank, values as ones nobody looked at. */
export function blankOf(node: FormNode, id: string, kind?: string): Json {
  switch (node.is) {
    case 'object': {
      const required = node.members.filter((member) => member.required);
      return Object.fromEntries(required.map(({ key, node: inner }) => [key, key === 'id' ? id : blankOf(inner, id)]));
    }
    case 'variants': {
      const first = kind ?? Object.keys(node.of)[0] ?? '';
      const of = node.of[first];
      return of === undefined ? {} : { ...(blankOf(of, id) as object), [node.by]: first };
    }
    case 'value':
      return { state: 'notLooked' };
    case 'condition':
      return { state: 'unknown', because: '' };
    case 'list':
      return [];
    case 'pair':
      return node.of.map((inner) => blankOf(inner, id));
    case 'map':
      return {};
    case 'choice':
      return node.options[0] ?? '';
    case 'fixed':
      return node.value;
    case 'flag':
      return false;
    case 'number':
      return 0;
    case 'either':
      return node.of[0] === undefined ? '' : blankOf(node.of[0], id);
    default:
      return '';
  }
}
