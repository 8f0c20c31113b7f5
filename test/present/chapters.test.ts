import { describe, expect, it } from 'vitest';
import { BENCH_SET } from '../../src/core/check/bench-set.ts';
import type { Assessment, Finding } from '../../src/core/result/assessment.ts';
import { toAnchor } from '../../src/present/markup/anchor.ts';
import { CHAPTERS, isTelling } from '../../src/present/report/chapter.ts';
import { renderReport } from '../../src/present/report/render-report.ts';
import { summaryText } from '../../src/present/text/summary.ts';
import { getCheckWords } from '../../src/present/words/check-words.ts';
import { underText } from '../../src/present/words/condition-words.ts';
import { evidenceText } from '../../src/present/words/evidence-text.ts';
import { amountOf, assessmentOf, findingOf, limitOf, stepOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';

function readable(page: string): string {
  return page
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ');
}

function sectionOf(page: string, id: string): string {
  return page.split(`<section aria-labelledby="part-${id}">`)[1]?.split(/<section aria-labelledby="part-|<\/main>/)[0] ?? '';
}

const FULL = fullAssessment();
const PAGE = renderReport(FULL);

describe('the chapters of a report', () => {
  it('come in the order of the examination, and only those in which something was examined', () => {
    const chapters = [...PAGE.matchAll(/aria-labelledby="part-chapter-([a-z]+)"/g)].map(([, chapter]) => chapter);
    expect(chapters).toEqual(['touch', 'load', 'heat', 'board', 'scope']);
    expect(renderReport(assessmentOf())).not.toContain('part-chapter-');
  });

  it('hold every finding that says something exactly once, in the chapter of its check', () => {
    for (const finding of FULL.findings.filter(isTelling)) {
      const chapter = BENCH_SET.find(({ id }) => id === finding.check)?.chapter;
      const place = `id="${toAnchor('finding', finding.id)}"`;
      expect(PAGE.split(place)).toHaveLength(2);
      expect(sectionOf(PAGE, `chapter-${chapter}`)).toContain(place);
    }
    expect(FULL.findings.filter(isTelling).length).toBeGreaterThan(10);
  });

  it('name at their end what of the chapter was not examined', () => {
    for (const chapter of ['load', 'heat', 'board']) {
      const said = readable(sectionOf(PAGE, `chapter-${chapter}`));
      const checks = BENCH_SET.filter((check) => check.chapter === chapter).map(({ id }) => id);
      const missing = checks.filter((check) => FULL.findings.every((one) => one.check !== check || one.outcome === 'notAssessed'));
      expect(missing.length).toBeGreaterThan(0);
      const gap = said.slice(said.indexOf('Not examined in this chapter'));
      for (const check of missing) expect(gap).toContain(getCheckWords(check).title);
    }
  });

  it('know every chapter of the bench set', () => {
    for (const { chapter } of BENCH_SET) expect(CHAPTERS).toContain(chapter);
  });

  it('say under which conditions a temperature, a load or a touch current was read, and keep quiet where they decide nothing', () => {
    const under = { mains: '230.4 V', frequency: '50 Hz', cover: 'closed', loads: 'usb: 1.5 A', minutes: '60 min' };
    const read = { outcome: 'pass', reason: 'met', measured: amountOf(330, 'K', 1), margin: 0.5, under } as const;
    const heat = findingOf('burn/enclosure-temperature', { ...read, limit: limitOf('atMost', amountOf(350, 'K'), 'memory') });
    const fuse = findingOf('fire/fuse', { outcome: 'pass', reason: 'met', measured: { word: 'cartridge' }, under });
    const page = renderReport(assessmentOf({ findings: [heat, fuse] }));
    const words = 'mains 230.4 V, 50 Hz, load usb: 1.5 A, cover closed, after 60 min';
    expect(readable(sectionOf(page, 'chapter-heat'))).toContain(words);
    expect(readable(sectionOf(page, 'chapter-board'))).not.toContain(words);
  });
});

describe('several findings of one check', () => {
  const present = (subject: string): Finding =>
    findingOf('labelling/ratings', {
      subject,
      about: subject,
      outcome: 'pass',
      reason: 'met',
      measured: { word: 'present' },
      margin: null,
    });
  const warm = (subject: string, notes: Finding['notes']): Finding =>
    findingOf('fire/winding-temperature', {
      subject,
      about: subject,
      outcome: 'pass',
      reason: 'met',
      measured: amountOf(350, 'K', 1),
      limit: limitOf('atMost', amountOf(380, 'K'), 'memory'),
      margin: 0.5,
      notes,
    });
  const pageOf = (findings: Finding[]): string => renderReport(assessmentOf({ findings }));

  it('that pass in a word stand in one row from three on, each still to be reached; two stand alone, and a failure does', () => {
    const three = sectionOf(pageOf(['input', 'output', 'class'].map(present)), 'chapter-label');
    expect(three.match(/class="find one plain"/g)).toHaveLength(1);
    for (const subject of ['input', 'output', 'class'])
      expect(three).toContain(`id="${toAnchor('finding', `labelling/ratings@${subject}`)}"`);
    expect(sectionOf(pageOf(['input', 'output'].map(present)), 'chapter-label')).not.toContain('plain');
    const failed: Finding = { ...present('maker'), outcome: 'fail', reason: 'notMet', measured: { word: 'absent' } };
    const mixed = sectionOf(pageOf([...['input', 'output', 'class'].map(present), failed]), 'chapter-label');
    expect(mixed.match(/<article class="find one(?: plain)?"/g)).toHaveLength(2);
  });

  it('that share a remark say it once, and keep their own', () => {
    const shared = { key: 'scaledToHighestAmbient', args: {} };
    const own = { key: 'coverOpenAtLeast', args: {} };
    const said = readable(sectionOf(pageOf([warm('one', [shared]), warm('two', [shared, own])]), 'chapter-heat'));
    expect(said.split('Scaled from the ambient')).toHaveLength(2);
    expect(said.split('Read with the cover open')).toHaveLength(2);
  });
});

describe('what to measure next', () => {
  const next = (id: string, hazard: string[]): Assessment['next'][number] => ({
    ...FULL.next[0]!,
    id,
    hazard,
    stop: [],
  });
  it('says a hazard that several measurements share once, and points to it', () => {
    const [hazard] = FULL.next.flatMap((one) => one.hazard);
    const said = readable(sectionOf(renderReport({ ...FULL, next: [next('a', [hazard!]), next('b', [hazard!]), next('c', [])] }), 'next'));
    expect(said.split('Hazard:')).toHaveLength(2);
    expect(said).toContain('Hazards as in 1.');
    expect(said.split('Hazards as in')).toHaveLength(2);
  });
});

describe('conditions in words', () => {
  it('keep what was typed, in the order in which a reader asks', () => {
    expect(underText({ minutes: '60 min', orientation: 'A', supply: 'isolating', mains: '230 V', cover: 'openedBefore 2 min' })).toBe(
      'mains 230 V, supply: isolating transformer, plug way A, cover opened 2 min before, after 60 min',
    );
  });
  it('say that one is not known, and show one that has no words', () => {
    expect(underText({ ambient: 'unknown', damp: 'yes' })).toBe('ambient not known, damp yes');
    expect(underText({})).toBe('');
  });
});

describe('evidence in words', () => {
  it('counts many values of one exhibit, and names a few', () => {
    const column = Array.from({ length: 14 }, (_, row) => `/exhibits/sweep-1/table/columns/v/${row}`);
    expect(evidenceText([...column, '/parts/c5/mark'])).toBe('exhibit sweep-1, 14 values; part c5, mark');
    expect(evidenceText(column.slice(0, 1))).toBe('exhibit sweep-1, column v, row 1');
  });
});

describe('the head of a report', () => {
  const bench: Assessment['bench'] = {
    examinedBy: 'an invented examiner',
    bought: { where: 'an invented market', date: '2026-02-20', price: '6.50' },
    days: [{ id: 'day-1', date: '2026-03-04', under: { mains: '230.4 V', frequency: '50 Hz', supply: 'direct' } }],
    events: [
      { at: '2026-02-20T12:00:00', what: 'purchased', note: null },
      { at: '2026-03-04T15:00:00', what: 'opened', note: 'along the seam' },
    ],
    instruments: [
      { id: 'm', name: 'meter, invented', calibrated: '2025-11-01', roles: ['mains', 'touchCurrent'] },
      { id: 'c', name: 'caliper, invented', calibrated: null, roles: ['distance'] },
    ],
    exhibits: [],
  };
  const said = readable(renderReport({ ...FULL, bench }));

  it('says where and when it was bought, who examined it, when, under which mains, with what, and what happened to it', () => {
    for (const words of [
      'bought 2026-02-20, an invented market, price 6.50',
      'examined by an invented examiner',
      'days 2026-03-04: mains 230.4 V, 50 Hz, direct supply',
      'events 2026-03-04 15:00: opened, along the seam',
      'meter, invented: mains, touch current; calibrated 2025-11-01',
      'caliper, invented: distance; no calibration stated',
      'A, one sample',
    ])
      expect(said).toContain(words);
  });

  it('claims nothing that the case does not say', () => {
    for (const words of ['examined by', 'bought', 'instruments', 'calibration']) expect(readable(PAGE)).not.toContain(words);
  });
});

describe('what comes next', () => {
  const step = stepOf('stop/case', { kind: 'constant', value: 368.15, unit: 'K', u: 0 });
  const stop = [
    { of: 'caseTemperature', about: 'case', at: amountOf(368.15, 'K', 0), step: step.id },
    { of: 'outputVoltageUp', about: 'socket, 5 V', at: amountOf(6, 'V', 0), step: null },
  ];
  const [first] = FULL.next;
  const assessed = assessmentOf({
    steps: [step],
    next: [{ ...first!, stop }],
    lastChance: [
      { before: 'opening', measure: ['touchBothWays', 'soak'] },
      { before: 'unwinding', measure: [] },
    ],
  });

  it('says where to stop, with the way to the number', () => {
    const section = sectionOf(renderReport(assessed), 'next');
    expect(readable(section)).toContain('Stop at 95 °C case temperature, step 1 ; 6 V output voltage, rising (socket, 5 V)');
    expect(section).toContain(`href="#${toAnchor('step', step.id)}"`);
    const terminal = summaryText(assessed, { colour: false, width: 100 });
    expect(terminal).toContain('stop at 95 °C case temperature (stop/case)');
    expect(terminal).toContain('stop at 6 V output voltage, rising (socket, 5 V)');
  });

  it('lists before each point of no return what can only be measured now, and no point with nothing left', () => {
    const section = readable(sectionOf(renderReport(assessed), 'next'));
    expect(section).toContain('before opening , 2 left:');
    expect(section).not.toContain('before unwinding');
    const terminal = summaryText(assessed, { colour: false, width: 100 });
    expect(terminal).toMatch(/before opening:\n {2}– Measure the touch current.*\n( {4}.*\n)* {2}– Log the hottest/);
    expect(terminal).not.toContain('before unwinding');
  });
});
