import { describe, expect, it } from 'vitest';
import { costOf } from '../../src/web/bench/cost-of.ts';
import { passPoint } from '../../src/web/bench/open-anyway.ts';
import { addLayer, addTurns, currentWinding, loseCount, mayStop, setItem, showTape, woundOf } from '../../src/web/bench/turn-count.ts';
import { countOf } from '../../src/web/stack/layer-edit.ts';
import { demoCase, emptyCase } from './bench-case.ts';

const AT = '2026-03-12T12:00:00';

describe('going past the opening without the last measurements', () => {
  const one = demoCase('moss-trio');
  const view = one.view();
  const left = view.lastChance.find(({ before }) => before === 'opening')?.measures ?? [];
  const out = left.map((measure) => ({ ...measure, reason: 'no time today' }));

  it('leaves something to lose in this case', () => {
    expect(left.map(({ measure }) => measure)).toEqual(expect.arrayContaining(['enclosure', 'touchBothWays', 'short']));
  });

  it('keeps what happened with its reasons, and what can never be read now as such', () => {
    const after = one.after(passPoint(one, 'opening', out, AT));
    const event = after.parsed().events.at(-1);
    expect(event).toMatchObject({ what: 'opened', at: AT });
    expect(event?.leftOut).toMatchObject(left.map(({ measure }) => ({ measure, because: 'no time today' })));
    const gone = { state: 'cannotNow', since: event?.id };
    const touch = after.parsed().exhibits.find(({ kind }) => kind === 'touch');
    expect(touch).toMatchObject({ value: gone });
    expect(after.parsed().exhibits.find(({ kind }) => kind === 'body')).toMatchObject({ seamOpens: gone, livePartTouchable: gone });
  });

  it('is not examined for good, and what hangs on it alone is never asked for again', () => {
    const after = one.after(passPoint(one, 'opening', out, AT));
    expect(after.view().points.opened).toBe(true);
    const asked = after.view().next.map(({ measure }) => measure);
    for (const measure of ['touchBothWays', 'short']) expect(asked, measure).not.toContain(measure);
    const reasons = new Map(after.assessed().findings.map(({ id, reason }) => [id, reason]));
    for (const id of ['shock/enclosure@live-part', 'shock/enclosure@seam']) expect(reasons.get(id), id).toBe('cannotNow');
  });

  it.each(['opening', 'desoldering'] as const)('records every measurement that the sheet before %s lists, whatever its kind', (point) => {
    for (const from of [emptyCase(), demoCase('moss-trio'), demoCase('fell-12')]) {
      const lost = from.view().lastChance.find(({ before }) => before === point)?.measures ?? [];
      const after = from.after(
        passPoint(
          from,
          point,
          lost.map(({ measure }) => ({ measure, reason: 'no time today' })),
          AT,
        ),
      );
      const asked = after.view().next.map(({ measure }) => measure);
      expect(lost.filter(({ measure }) => asked.includes(measure))).toEqual([]);
      expect(
        after
          .parsed()
          .events.at(-1)
          ?.leftOut?.map(({ measure }) => measure) ?? [],
      ).toEqual(lost.map(({ measure }) => measure));
    }
  });

  it('costs the checks that hang on it, for shock and for fire', () => {
    expect(
      costOf(
        left.map(({ measure }) => measure),
        view,
      ),
    ).toEqual({ shock: 2, fire: 2 });
    expect(costOf([], view)).toEqual({ shock: 0, fire: 0 });
  });

  it('does not overwrite what was read', () => {
    const tarn = demoCase('tarn-30');
    const touched = tarn.parsed().exhibits.filter(({ kind }) => kind === 'touch');
    const after = tarn.after(passPoint(tarn, 'desoldering', [{ measure: 'touchBothWays', reason: 'done' }], AT));
    expect(after.parsed().exhibits.filter(({ kind }) => kind === 'touch')).toEqual(touched);
  });

  it('works in a case where nothing was entered yet', () => {
    const fresh = emptyCase();
    const after = fresh.after(passPoint(fresh, 'opening', [{ measure: 'coldInsulation', reason: 'no tester' }], AT));
    expect(after.parsed().events.length).toBe(1);
    expect(after.parsed().exhibits.length).toBe(1);
  });
});

describe('turns coming off', () => {
  const count = (steps: readonly string[]) =>
    steps.reduce((one, step) => {
      if (step === 'turn') return one.after(addTurns(one, 1));
      if (step === 'back') return one.after(addTurns(one, -1));
      if (step === 'layer') return one.after(addLayer(one));
      if (step === 'lost') return one.after(loseCount(one, 'the wire broke'));
      return one.after(showTape(one, Number(step)));
    }, emptyCase());

  it('are written outside in, a winding between tapes', () => {
    const one = count(['1', '3', 'turn', 'turn', 'turn', 'back', 'layer', 'turn', '2', 'turn']);
    const stack = one.parsed().exhibits.find(({ kind }) => kind === 'stack');
    expect(stack).toMatchObject({
      outsideIn: [
        { is: 'insulation', layers: '3' },
        { is: 'winding', name: 'W1', turns: '3', layers: '2' },
        { is: 'insulation', layers: '2' },
        { is: 'winding', name: 'W2', turns: '1', layers: '1' },
      ],
    });
  });

  it('never go below none, and a tape cannot be turned', () => {
    expect(countOf(currentWinding(woundOf(count(['turn', 'back', 'back']))), 'turns')).toBe(0);
    expect(addTurns(count(['1']), -1)).toEqual([]);
  });

  it('stay unknown with the reason once the count is lost', () => {
    const one = count(['turn', 'turn', 'lost']);
    expect(one.after(addTurns(one, 1)).one).toEqual(one.one);
    expect(currentWinding(woundOf(one))?.['turns']).toEqual({ state: 'unknown', because: 'the wire broke' });
    const next = one.after(showTape(one, 1));
    expect(countOf(currentWinding(woundOf(next.after(addTurns(next, 1)))), 'turns')).toBe(1);
  });

  it('keep what is said of the wire', () => {
    const one = count(['turn']);
    const id = String(currentWinding(woundOf(one))?.['id']);
    expect(one.after(setItem(one, id, 'wireKind', 'enamelled')).parsed().exhibits[0]).toMatchObject({
      outsideIn: [{ wireKind: 'enamelled' }],
    });
  });

  it('may stop once the insulation has failed and nothing of the stack is proposed, not before', () => {
    const view = emptyCase().view();
    const row = view.rows.find(({ check }) => check === 'shock/winding-insulation');
    if (row === undefined) throw new Error('the check is not in the view');
    expect(mayStop(view)).toBe(false);
    const failed = { rows: [{ ...row, outcome: 'fail' as const }], next: [] };
    expect(mayStop(failed)).toBe(true);
    const [first] = view.next;
    if (first === undefined) throw new Error('nothing is proposed for a new case');
    expect(mayStop({ ...failed, next: [{ ...first, measure: 'stack' }] })).toBe(false);
  });
});
