import { pinsOf } from '../pin-names.ts';
import { KIND_WORDS, kindOfReference } from './kind-words.ts';
import type { Trace, TracedPart } from './traced.ts';

/** The lines that read back as this trace. */
export function printTrace({ parts, sides }: Trace): string {
  const lines = [...sides.map(({ side, nets }) => `${side}: ${nets.join(', ')}`), ...parts.flatMap(printPart)];
  return lines.length === 0 ? '' : `${lines.join('\n')}\n`;
}

function printPart(part: TracedPart): string[] {
  const net = (name: string | null): string => name ?? '?';
  if (part.kind === 'transformer') {
    const kind = kindOfReference(part.ref, []) === 'transformer' ? '' : ` (${KIND_WORDS.transformer})`;
    return part.windings.map(({ name, turns }) => {
      const end = (which: '1' | '2'): string => net(part.pins.find(({ pin }) => pin === `${name}.${which}`)?.net ?? null);
      const words = [`${part.ref}${kind}`, name, ...(turns === null ? [] : [turns]), ...(part.crosses ? ['!'] : [])];
      return `${words.join(' ')}: ${end('1')}, ${end('2')}`;
    });
  }
  const known = part.kind === null ? null : pinsOf(part.kind);
  const nets = part.pins.flatMap((pin) => pin.net ?? []);
  const inOrder = known?.length === 2 && part.pins.every(({ pin }, index) => pin === known[index]) && new Set(nets).size === nets.length;
  const names = inOrder ? [] : part.pins.map(({ pin }) => pin);
  const kind = kindOfReference(part.ref, names) === part.kind ? '' : ` (${part.kind === null ? '?' : KIND_WORDS[part.kind]})`;
  const words = [part.value, part.voltage, part.current, part.power, part.tolerance, part.safetyClass, part.marking].flatMap(
    (one) => one ?? [],
  );
  const pins = part.pins.map((pin) => (inOrder ? net(pin.net) : `${pin.pin}=${net(pin.net)}`));
  return [`${[`${part.ref}${kind}`, ...words, ...(part.crosses ? ['!'] : [])].join(' ')}: ${pins.join(', ')}`];
}
