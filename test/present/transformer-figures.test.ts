import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { drawBarrierMap, MAP_NARROW, MAP_WIDE } from '../../src/present/figure/barrier-map.ts';
import { placeLayers } from '../../src/present/figure/winding-plan.ts';
import { drawWindingWindow, WINDING_NARROW, WINDING_WIDE } from '../../src/present/figure/winding-window.ts';
import { strengthText } from '../../src/present/words/transformer-words.ts';
import { caseOf, HAND_SOLVED, mm, stackOf, tape, winding } from '../truth/barrier/hand-solved.ts';
import { judge } from '../truth/build-case.ts';
import { gap } from '../truth/evidence-pieces.ts';

const FINE = { wire: mm(0.2), overall: mm(0.23) } as const;
const judged = (stack: ReturnType<typeof stackOf>): Assessment => judge(caseOf({ title: '', outcome: 'pass', stack }));
const wound = (margin: number) =>
  judged(
    stackOf(
      [
        winding('s', 'output', { ...FINE, turns: '8', margins: [mm(margin), mm(margin)] }),
        tape('tape', '3'),
        winding('p', 'mains', { ...FINE, turns: '30', layers: '2', margins: [mm(margin), mm(margin)] }),
      ],
      {
        window: { width: '12 mm', height: '3 mm' },
        former: { tube: '1 mm', wall: '1 mm' },
      },
    ),
  );
const drawn = (assessment: Assessment, size = WINDING_WIDE): string =>
  drawWindingWindow(assessment.transformers![0]!, assessment, size).markup;
const count = (markup: string, piece: string): number => markup.split(piece).length - 1;

describe('the winding window', () => {
  it('shows every turn once, filled on the mains side and hollow on the side of a hand', () => {
    const markup = drawn(wound(1.3));
    expect(count(markup, 'class="turn mains"')).toBe(30);
    expect(count(markup, 'class="turn hand"')).toBe(8);
    expect(count(markup, 'class="tape"')).toBe(3);
  });

  it('is to scale both ways: 12 mm of window to 0.2 mm of wire, margins of 1.3 mm, by hand', () => {
    const plan = placeLayers(wound(1.3).transformers![0]!, 280)!;
    expect(plan.perMillimetre).toBeCloseTo(280 / 14, 9); // 12 mm of window between two walls of 1 mm
    const [, , primary] = plan.layers;
    if (primary?.is !== 'winding') throw new Error('the innermost layer is the primary');
    expect(primary.radius).toBeCloseTo(0.1 * 20, 9);
    expect(primary.from).toBeCloseTo((1 + 1.3) * 20, 9);
    expect(primary.to).toBeCloseTo((1 + 12 - 1.3) * 20, 9);
    for (const { x } of primary.turns) {
      expect(x - primary.outer).toBeGreaterThanOrEqual(primary.from - 1e-9);
      expect(x + primary.outer).toBeLessThanOrEqual(primary.to + 1e-9);
    }
    expect(primary.turns.at(-1)!.y - primary.turns[0]!.y).toBeCloseTo(0.23 * 20, 9); // the second row lies one wire deeper
  });

  it('marks the weakest way round the edge of the tape as a line with the colour of its finding', () => {
    expect(drawn(wound(1.3))).toMatch(/class="way m-fail open" d="M[\d.]+ [\d.]+H[\d.]+V[\d.]+H[\d.]+"/);
    expect(drawn(wound(3))).toMatch(/class="way m-pass open"/);
  });

  it('draws a lead-out that crosses from its winding out of the window, and its sleeve around it', () => {
    const led = (sleeved: boolean): string =>
      drawn(
        judged(
          stackOf([
            winding('p', 'mains', FINE),
            tape('tape', '3'),
            winding('s', 'output', { ...FINE, leads: [{ id: 'start', end: 'start', crosses: ['p'], sleeved }] }),
          ]),
        ),
      );
    const [, from, to] = /<path class="turn" d="M[\d.]+ ([\d.]+)V([\d.]+)"/.exec(led(false)) ?? [];
    expect(Number(to)).toBeLessThan(Number(from)); // upwards, over what lies outside of it
    expect(count(led(false), '<rect class="cover"')).toBe(0);
    expect(count(led(true), '<rect class="cover"')).toBe(1);
    expect(count(drawn(wound(1.3)), '<path class="turn"')).toBe(0);
  });

  it('draws a tape that stops short with its gap', () => {
    const stack = stackOf(
      [winding('s', 'output', FINE), tape('tape', '1', { covers: 'stopsShort', short: mm(1) }), winding('p', 'mains', FINE)],
      { window: { width: '12 mm', height: '3 mm' } },
    );
    const plan = placeLayers(judged(stack).transformers![0]!, 280)!;
    const layer = plan.layers[1]!;
    expect(layer.from - plan.wall).toBeCloseTo(plan.perMillimetre, 6);
    expect(plan.wall + plan.width - layer.to).toBeCloseTo(plan.perMillimetre, 6);
    expect(drawn(judged(stack))).toContain('short of the wall');
  });

  it('says what it does not know instead of inventing it', () => {
    const stack = stackOf([
      winding('s', 'output', { turns: { state: 'unknown', because: 'lost count' } }),
      tape('tape', '3'),
      winding('p', 'mains'),
    ]);
    const markup = drawn(judged(stack));
    expect(markup).toContain('turns not known');
    expect(markup).toContain('class="unknown"');
    expect(markup).toContain('width of the window not read');
  });

  it('stays within a phone', () => {
    const markup = drawn(wound(1.3), WINDING_NARROW);
    const xs = [...markup.matchAll(/ (?:x|cx)="([\d.-]+)"/g)].map(([, x]) => Number(x));
    expect(Math.max(...xs)).toBeLessThanOrEqual(WINDING_NARROW.width);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(0);
  });

  it('holds a name that tries to be markup as text', () => {
    const stack = stackOf([winding('s', 'output', { name: '<script>x</script>' }), tape('tape', '3'), winding('p', 'mains')]);
    expect(drawn(judged(stack))).not.toContain('<script>');
  });
});

describe('the barrier map', () => {
  const row = (title: string) => judge(caseOf(HAND_SOLVED.find((one) => one.title.startsWith(title))!));
  const map = (assessment: Assessment, size = MAP_WIDE): string => drawBarrierMap(assessment, size).markup;

  it('lights the weakest way, in the colour of what it means', () => {
    expect(map(row('3.1 mm on the board'))).toMatch(/class="edge basic lit"/);
    expect(map(row('an ordinary ceramic'))).toMatch(/class="edge none lit"/);
    expect(map(row('sound everywhere'))).toMatch(/class="edge double lit good"/);
    expect(map(row('two tapes are double only'))).toMatch(/class="edge open lit doubt"/);
  });

  it('draws the way over the core through the core', () => {
    const markup = map(row('the core is a conductor'));
    expect(markup).toContain('T1 core');
    expect(count(markup, ' lit"')).toBeGreaterThanOrEqual(2);
  });

  it('names each way once, with what it stands for', () => {
    const markup = map(row('one Y2 alone'));
    expect(markup).toContain('part across: basic');
    expect(count(markup, 'on the weakest way')).toBe(1);
  });

  it('stays within a phone', () => {
    const xs = [...map(row('the core is a conductor'), MAP_NARROW).matchAll(/ (?:x|cx)="([\d.-]+)"/g)].map(([, x]) => Number(x));
    expect(Math.max(...xs)).toBeLessThanOrEqual(MAP_NARROW.width);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(0);
  });

  it('shows what stands between the mains and earth, with the sign of earth, and takes it for no path', () => {
    const sound = { title: '', outcome: 'pass' } as const;
    const earthed = judge({
      ...caseOf(sound),
      exhibits: [...(caseOf(sound).exhibits ?? []), gap(mm(1.2), { id: 'gap-earth', from: 'line', to: 'earth' })],
    });
    const plain = judge(caseOf(sound));
    expect(earthed.barrier?.weakest).toEqual(plain.barrier?.weakest);
    expect(earthed.barrier?.earth?.ways.map(({ id }) => id)).toEqual(['surface:line~earth']);
    expect(plain.barrier?.earth).toBeUndefined();
    const markup = map(earthed);
    expect(markup).toContain('class="node earth"');
    expect(markup).toContain('line to earth, over the surface: less than basic');
    expect(map(plain)).not.toContain('earth');
  });

  it('is not drawn where nobody recorded a way', () => expect(map(judge())).toBe(''));

  it('says strengths in words', () => {
    expect([
      strengthText(0, 0),
      strengthText(0.4, 0.6),
      strengthText(1.2, 1.3),
      strengthText(2, 2),
      strengthText(0, 2),
      strengthText(1, 2),
    ]).toEqual(['nothing', 'less than basic', 'basic', 'double or reinforced', 'open', 'basic, perhaps more']);
  });
});
