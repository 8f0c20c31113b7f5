import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/core/result/assessment.ts';
import { distanceFindings, drawDistanceList } from '../../src/present/figure/distance-list.ts';
import { drawHeatLadder, heatFindings } from '../../src/present/figure/heat-ladder.ts';
import { LIST_NARROW, LIST_WIDE } from '../../src/present/figure/judged-list.ts';
import { amountOf, assessmentOf, findingOf, limitOf } from './build-assessment.ts';

const ASKED = limitOf('atLeast', amountOf(0.005, 'm'), 'secondary', { name: 'reinforced' });
const BASIC = limitOf('atLeast', amountOf(0.0025, 'm'), 'secondary', { name: 'basic' });

function pair(subject: string, millimetres: number, more: Partial<Finding> = {}): Finding {
  return findingOf('shock/creepage', {
    subject,
    about: `pair ${subject}`,
    outcome: millimetres < 5 ? 'fail' : 'pass',
    reason: millimetres < 5 ? 'notMet' : 'met',
    measured: amountOf(millimetres / 1000, 'm', 0.00005),
    limit: ASKED,
    others: [BASIC],
    margin: 5 / millimetres,
    show: 'millimetres',
    ...more,
  });
}

const BRIDGED = pair('bridged', 1, { rung: 'bridgedOrAbsent', margin: null, measured: { word: 'bridged' }, outcome: 'fail' });
const UNREAD = findingOf('shock/creepage', { subject: 'unread', about: 'pair unread' });
const BOARD = assessmentOf({ findings: [pair('wide', 10), pair('close', 2.5), UNREAD, pair('short', 4), BRIDGED] });

/** Where the marks of one kind stand, from the left edge of their own line. */
function marksAt(drawn: string, kind: string): number[] {
  const cross = [...drawn.matchAll(new RegExp(`<path class="${kind} open" stroke-width="2\\.7" d="M([\\d.]+) [\\d.]+L([\\d.]+)`, 'g'))];
  return cross.map(([, left, right]) => (Number(left) + Number(right)) / 2);
}

describe('the list of distances', () => {
  it('puts the worst ratio first, a bridge before every ratio, and what nobody read last', () => {
    expect(distanceFindings(BOARD).map(({ subject }) => subject)).toEqual(['bridged', 'close', 'short', 'wide', 'unread']);
  });

  it('goes by ratio, not by millimetres', () => {
    const low = pair('low', 1, {
      limit: limitOf('atLeast', amountOf(0.0008, 'm'), 'memory', { name: 'basic' }),
      margin: 0.8,
      outcome: 'pass',
    });
    expect(distanceFindings(assessmentOf({ findings: [low, pair('short', 4)] })).map(({ subject }) => subject)).toEqual(['short', 'low']);
  });

  it('draws half of what is asked for one octave left of the limit, where basic insulation ends', () => {
    const drawn = drawDistanceList(assessmentOf({ findings: [pair('close', 2.5)] }), LIST_WIDE).markup;
    // the line is 124 wide with 7 free at each end: two octaves a side, 27.5 an octave, the limit at 62
    expect(marksAt(drawn, 'm-fail')).toEqual([62 - 27.5]);
    expect(drawn).toContain('<path class="limit rung secondary" d="M34.5 ');
  });

  it('writes found, both limits in millimetres and the grade', () => {
    const drawn = drawDistanceList(BOARD, LIST_WIDE).markup;
    for (const said of [
      'pair close',
      'over the surface',
      'reinforced 5\u00a0mm, basic 2.5\u00a0mm',
      'secondary copy',
      '2.50\u00a0±\u00a00.10\u00a0mm',
    ])
      expect(drawn).toContain(said);
  });

  it('is drawn anew for a narrow page: the same rows and words inside its width', () => {
    const [wide, narrow] = [LIST_WIDE, LIST_NARROW].map((size) => drawDistanceList(BOARD, size).markup);
    for (const drawn of [wide!, narrow!]) {
      for (const subject of ['bridged', 'close', 'short', 'wide', 'unread']) expect(drawn).toContain(`>pair ${subject}<`);
      expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
    }
    const xs = [...narrow!.matchAll(/<text class="[a-z -]+" x="([\d.]+)"/g)].map(([, x]) => Number(x));
    expect(Math.max(...xs)).toBeLessThanOrEqual(LIST_NARROW.width);
  });

  it('is nothing where no distance belongs to a pair', () => {
    expect(drawDistanceList(assessmentOf(), LIST_WIDE).markup).toBe('');
  });
});

function heat(check: string, about: string, margin: number, note: string): Finding {
  return findingOf(check, {
    subject: about,
    about,
    state: 'labelLoad',
    outcome: margin > 1 ? 'fail' : 'pass',
    reason: margin > 1 ? 'notMet' : 'met',
    measured: amountOf(313.15 + 70 * margin, 'K', 1),
    limit: limitOf('atMost', amountOf(383.15, 'K'), 'memory'),
    margin,
    rise: { found: 70 * margin, permitted: 70, ambient: 313.15 },
    notes: [{ key: note, args: {} }],
  });
}

describe('the heat ladder', () => {
  const findings = [
    heat('burn/enclosure-temperature', 'case top', 0.5, 'asRead'),
    heat('fire/winding-temperature', 'winding', 1.3, 'scaledToHighestAmbient'),
    findingOf('fire/board-temperature', { subject: 'board', about: 'board' }),
  ];
  const warm = assessmentOf({ findings, setting: { highestAmbient: { value: '40 °C', from: 'default', source: null } } });

  it('orders places by margin, and leaves out what has no temperature', () => {
    expect(heatFindings(warm).map(({ about }) => about)).toEqual(['winding', 'case top']);
  });

  it('says of each place whether it was scaled to the highest ambient or taken as read, and the rise found of the rise permitted', () => {
    const drawn = drawHeatLadder(warm, LIST_WIDE).markup;
    for (const said of ['scaled to 40 °C ambient', 'as read', 'rise 91 of 70\u00a0K', 'rise 35 of 70\u00a0K', 'at most 110\u00a0°C'])
      expect(drawn).toContain(said);
    // 40 °C and 1.3 times 70 K
    expect(drawn).toContain('131.0\u00a0±\u00a02.0\u00a0°C');
  });

  it('says neither of a place whose finding says neither', () => {
    const plain = { ...findings[1]!, notes: [] };
    expect(drawHeatLadder(assessmentOf({ findings: [plain] }), LIST_WIDE).markup).not.toMatch(/as read|scaled/);
  });

  it('stands half of the permitted rise one octave right of the limit', () => {
    const drawn = drawHeatLadder(assessmentOf({ findings: [findings[0]!] }), LIST_WIDE).markup;
    expect(drawn).toMatch(/<circle class="m-pass full" cx="89\.5" cy="17"/);
  });

  it('is nothing without temperatures', () => {
    expect(drawHeatLadder(assessmentOf(), LIST_NARROW).markup).toBe('');
  });
});
