import { useRef } from 'react';
import { KEYS_OFF } from '../state/use-keys.ts';
import type { LayerKind } from './layer-edit.ts';

export interface StackKeys {
  readonly count: (by: 1 | -1) => void;
  readonly row: () => void;
  readonly add: (kind: LayerKind) => void;
  readonly step: (by: 1 | -1) => void;
  readonly move: (by: 1 | -1) => void;
  readonly remove: () => void;
  readonly photo: () => void;
}

const AFTER_G_MS = 1500; // "g" and a letter lead to a chapter, also from here

export function isTyping(target: EventTarget): boolean {
  return (target as HTMLElement).matches('input, select, textarea, summary');
}

/** What single keys do while the hand is at a stack and not in an entry. Letters can be turned off like all others. */
export function useStackKeys(act: StackKeys): (event: React.KeyboardEvent) => void {
  const goAt = useRef(Number.NEGATIVE_INFINITY);
  return (event) => {
    if (isTyping(event.target) || event.ctrlKey || event.metaKey) return;
    const used = event.altKey ? moved(event.key, act) : named(event, act) || letter(event, act, goAt);
    if (!used) return;
    event.preventDefault();
    event.stopPropagation();
  };
}

function moved(key: string, act: StackKeys): boolean {
  if (key !== 'ArrowUp' && key !== 'ArrowDown') return false;
  act.move(key === 'ArrowUp' ? -1 : 1);
  return true;
}

function named(event: React.KeyboardEvent, act: StackKeys): boolean {
  const target = event.target as HTMLElement;
  const isPick = target.classList.contains('pick');
  // on any other button the space bar presses it
  if (event.key === ' ' && !isPick && target.closest('button') !== null) return false;
  switch (event.key) {
    case ' ':
    case '+':
      act.count(1);
      return true;
    case 'Backspace':
    case '-':
      act.count(-1);
      return true;
    case 'ArrowDown':
      act.step(1);
      return true;
    case 'ArrowUp':
      act.step(-1);
      return true;
    case 'Delete':
      act.remove();
      return true;
    default:
      // a digit begins the number of the layer at hand
      if (/^\d$/.test(event.key)) focusNumber(target);
      return false;
  }
}

function focusNumber(target: HTMLElement): void {
  const entry = target.closest('.stack-entry')?.querySelector<HTMLInputElement>('.layer-list li.on .numbers input[type="text"]');
  entry?.focus();
  entry?.select();
}

function letter(event: React.KeyboardEvent, act: StackKeys, goAt: React.RefObject<number>): boolean {
  if (localStorage.getItem(KEYS_OFF) !== null) return false;
  const after = event.timeStamp - goAt.current < AFTER_G_MS;
  goAt.current = event.key === 'g' ? event.timeStamp : Number.NEGATIVE_INFINITY;
  if (after) return false;
  switch (event.key.toLowerCase()) {
    case 'w':
      act.add('winding');
      return true;
    case 't':
      act.add('insulation');
      return true;
    case 'f':
      act.add('formerWall');
      return true;
    case 'l':
      act.row();
      return true;
    case 'p':
      act.photo();
      return true;
    default:
      return false;
  }
}
