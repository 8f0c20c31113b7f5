import { type Box, overlaps, type Point } from '../../src/present/schematic/geometry.ts';
import { footBox, symbolBox } from '../../src/present/schematic/lay-out-schematic.ts';
import type { Schematic } from '../../src/present/schematic/schematic.ts';

type Line = readonly [Point, Point];
const within = (value: number, one: number, two: number): boolean => value > Math.min(one, two) && value < Math.max(one, two);

/** The line runs through the inside of the box. */
function cuts([from, to]: Line, { x, y, width, height }: Box): boolean {
  return (
    Math.max(from.x, to.x) > x && Math.min(from.x, to.x) < x + width && Math.max(from.y, to.y) > y && Math.min(from.y, to.y) < y + height
  );
}

/** Two lines of different nets share more than a crossing: they run along each other, or one ends on the other. */
function touches([a, b]: Line, [c, d]: Line): boolean {
  const lies = (line: Line): boolean => line[0].y === line[1].y;
  if (lies([a, b]) === lies([c, d])) {
    const [one, two] = lies([a, b]) ? [a.y === c.y, [a.x, b.x, c.x, d.x]] : [a.x === c.x, [a.y, b.y, c.y, d.y]];
    return one && Math.max(two[0]!, two[1]!) >= Math.min(two[2]!, two[3]!) && Math.max(two[2]!, two[3]!) >= Math.min(two[0]!, two[1]!);
  }
  const [flat, tall] = lies([a, b]) ? [[a, b] as const, [c, d] as const] : [[c, d] as const, [a, b] as const];
  const meets =
    Math.min(flat[0].x, flat[1].x) <= tall[0].x &&
    tall[0].x <= Math.max(flat[0].x, flat[1].x) &&
    Math.min(tall[0].y, tall[1].y) <= flat[0].y &&
    flat[0].y <= Math.max(tall[0].y, tall[1].y);
  return meets && !(within(tall[0].x, flat[0].x, flat[1].x) && within(flat[0].y, tall[0].y, tall[1].y));
}

/** Everything that a drawing must not do, in words; an empty list is a good drawing. */
export function whatIsWrong({ parts, wires, names, barrier }: Schematic): string[] {
  const wrong: string[] = [];
  const boxes = [
    ...parts.map((part) => ({ what: part.part.ref, box: symbolBox(part), text: false })),
    ...parts.flatMap(({ part, labels, feet }) => [
      ...labels.map(({ box, text }) => ({ what: `text "${text}" of ${part.ref}`, box, text: true })),
      ...feet.map((foot) => ({ what: `return of ${part.ref}`, box: footBox(foot), text: false })),
    ]),
    ...names.map(({ label }) => ({ what: `name "${label.text}"`, box: label.box, text: true })),
  ];
  for (const [index, one] of boxes.entries())
    for (const two of boxes.slice(index + 1)) if (overlaps(one.box, two.box)) wrong.push(`${one.what} on ${two.what}`);
  const lines = [
    ...wires.flatMap(({ net, lines: own }) => own.map((line) => ({ net, line }))),
    ...names.map(({ net, line }) => ({ net, line })),
  ];
  const stubs = parts.flatMap(({ feet }) =>
    feet.flatMap(({ net, pin, at }) => (pin.x === at.x ? [] : [{ net, line: [pin, at] as const }])),
  );
  for (const stub of stubs)
    for (const { net, line } of lines) if (net !== stub.net && touches(stub.line, line)) wrong.push(`wire ${net} onto a return`);
  for (const { net, line } of lines) for (const { what, box } of boxes) if (cuts(line, box)) wrong.push(`wire ${net} through ${what}`);
  for (const [index, one] of lines.entries())
    for (const two of lines.slice(index + 1))
      if (one.net !== two.net && touches(one.line, two.line)) wrong.push(`wire ${one.net} along or onto ${two.net}`);
  if (barrier !== null) {
    for (const part of parts) {
      const { x, width } = symbolBox(part);
      const left = x + width < barrier;
      const right = x > barrier;
      if (part.zone === 'across' ? left || right : part.zone === 'mains' ? !left : !right)
        wrong.push(`${part.part.ref} (${part.zone}) on the wrong side`);
    }
    for (const { net, line } of lines)
      if (Math.min(line[0].x, line[1].x) <= barrier && Math.max(line[0].x, line[1].x) >= barrier)
        wrong.push(`wire ${net} across the barrier`);
  }
  return wrong;
}

/** Pins of one net that neither wires nor a name reach together. */
export function unjoined({ parts, wires, names }: Schematic): string[] {
  const key = ({ x, y }: Point): string => `${x} ${y}`;
  return wires.flatMap(({ net, lines }) => {
    const root = new Map<string, string>();
    const find = (at: string): string => (root.get(at) === undefined || root.get(at) === at ? at : find(root.get(at)!));
    const GRID = 10;
    for (const [from, to] of lines) {
      const [dx, dy] = [Math.sign(to.x - from.x) * GRID, Math.sign(to.y - from.y) * GRID];
      for (let { x, y } = from; x !== to.x || y !== to.y; x += dx, y += dy)
        root.set(find(key({ x, y })), find(key({ x: x + dx, y: y + dy })));
    }
    const named = new Set(names.map(({ line }) => key(line[0])));
    const footed = new Set(parts.flatMap(({ feet }) => feet.map(({ pin }) => key(pin))));
    const ends = parts.flatMap(({ part, shape, at }) =>
      shape.pins
        .filter(({ pin }) => part.pins.some((one) => one.pin === pin && one.net === net))
        .map(({ x, y }) => key({ x: x + at.x, y: y + at.y })),
    );
    const joined = new Set(ends.filter((end) => !named.has(end) && !footed.has(end)).map(find));
    return joined.size > 1 ? [`${net} falls into ${joined.size} pieces`] : [];
  });
}
