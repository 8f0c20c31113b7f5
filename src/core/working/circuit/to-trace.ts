import type { Trace, TracedPart } from '../../circuit/trace/traced.ts';
import type { Case } from '../../evidence/case.ts';
import type { Part } from '../../evidence/sample.ts';
import type { Value } from '../../evidence/value.ts';
import { findRead, openValue } from '../bench/open-value.ts';

/**
 * The circuit of a case as lines can say it: what a line has no place for (photographs, readings, reasons) stays in the case. Names of nets
 * lose the signs that lines use for themselves.
 */
export function toTrace(one: Case): Trace {
  const names = lineNames(one);
  const sides = ['mains', 'output', 'earth', 'touchable', 'floating'] as const;
  return {
    parts: one.parts.filter(({ pins }) => pins !== undefined && pins.length > 0).map((part) => toLine(part, names)),
    sides: sides.flatMap((side) => {
      const nets = one.conductors.filter((net) => findRead(net.side) === side).map(({ id }) => names.get(id)!);
      return nets.length === 0 ? [] : [{ side, nets }];
    }),
  };
}

function toLine(part: Part, names: ReadonlyMap<string, string>): TracedPart {
  const value = openValue<string>(part.value);
  const rating = (which: 'voltage' | 'current' | 'power' | 'tolerance'): string | null =>
    word(findRead<string>(part.rating?.[which] as Value | undefined));
  return {
    ref: part.ref.toUpperCase(),
    kind: findRead(part.kind),
    value: value.state === 'read' ? word(value.v) : value.state === 'unknown' ? '?' : null,
    voltage: rating('voltage'),
    current: rating('current'),
    power: rating('power'),
    tolerance: rating('tolerance'),
    safetyClass: findRead(part.safetyClass),
    marking: findRead<string>(part.marking)?.replace(/[:#!]/g, ' ').trim() ?? null,
    crosses: part.crosses === true,
    pins: (part.pins ?? []).map(({ pin, net }) => ({ pin, net: names.get(findRead(net) ?? '') ?? null })),
    windings: (part.windings ?? []).map(({ name, turns }) => {
      const opened = openValue<string>(turns);
      return { name, turns: opened.state === 'read' ? opened.v : opened.state === 'unknown' ? '?' : null };
    }),
  };
}

/** One word without blanks: "2.2 nF" is "2.2nF". */
function word(text: string | null): string | null {
  return text === null ? null : text.replace(/\s+/g, '');
}

function lineNames({ conductors }: Case): Map<string, string> {
  const taken = new Set<string>();
  return new Map(
    conductors.map(({ id, name }) => {
      const plain = name.replace(/[\s,:=#?!()]+/g, '-');
      const own = plain === '' || taken.has(plain) ? id : plain;
      taken.add(own);
      return [id, own];
    }),
  );
}
