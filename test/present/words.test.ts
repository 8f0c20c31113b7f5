import { describe, expect, it } from 'vitest';
import { BENCH_SET, LABORATORY } from '../../src/core/check/bench-set.ts';
import { CONSEQUENCES, FAILURES, HAZARDS, outcome, REASONS, rung } from '../../src/core/result/assessment.ts';
import { GRADES } from '../../src/core/source/grade.ts';
import { EXHIBIT_KINDS, SWEEP_ENDS } from '../../src/present/words/case-words.ts';
import { CHECK_WORDS, getCheckWords } from '../../src/present/words/check-words.ts';
import { COVERAGE_WORDS, coverageHeadline, FAILURE_MEANINGS, FAILURE_WEIGHTS } from '../../src/present/words/failure-words.ts';
import { fieldText } from '../../src/present/words/field-words.ts';
import { fillTemplate, isKeptUnit, sentenceFor, type Templates } from '../../src/present/words/fill-template.ts';
import {
  CAUTIONS,
  DO_NOT_REPEAT,
  HOW_TO_READ,
  INVENTED,
  ONE_SAMPLE,
  ONE_SAMPLE_LONG,
  RIGHT_OF_REPLY,
} from '../../src/present/words/fixed-sentences.ts';
import { GRADE_MEANINGS, GRADE_PHRASES, GRADE_STROKES, GRADE_WORDS } from '../../src/present/words/grade-words.ts';
import { CHAPTER_WORDS, CONSEQUENCE_WORDS, HAZARD_WORDS } from '../../src/present/words/hazard-words.ts';
import { LABORATORY_WORDS, laboratoryText } from '../../src/present/words/laboratory-words.ts';
import { LEAVES } from '../../src/present/words/leaf-words.ts';
import { LIMIT_NAMES, limitText } from '../../src/present/words/limit-words.ts';
import { MEASUREMENT_HAZARDS, MEASUREMENTS, measurementText, STOPS } from '../../src/present/words/next-words.ts';
import { NOTES, WARNINGS } from '../../src/present/words/notes.ts';
import { OUTCOME_WORDS, outcomeText, RUNG_WORDS, rungText } from '../../src/present/words/outcome-words.ts';
import { probabilityText } from '../../src/present/words/probability-text.ts';
import { REASON_WORDS } from '../../src/present/words/reason-words.ts';
import { SETTING_VALUES, SETTINGS } from '../../src/present/words/setting-words.ts';
import { STEP_NAMES } from '../../src/present/words/step-names.ts';
import { amountOf, findingOf, limitOf } from './build-assessment.ts';
import { remarksInCore } from './remarks-in-core.ts';
import { CREEPAGE } from './sample-findings.ts';

const TEMPLATES: Readonly<Record<string, Templates>> = {
  NOTES,
  WARNINGS,
  LEAVES,
  STEP_NAMES,
  LIMIT_NAMES,
  MEASUREMENTS,
  MEASUREMENT_HAZARDS,
  STOPS,
  SETTINGS,
  SETTING_VALUES,
  EXHIBIT_KINDS,
  SWEEP_ENDS,
};

const EVERY_SENTENCE: readonly string[] = [
  ...Object.values(CHECK_WORDS).flatMap(({ title, question }) => [title, question]),
  ...Object.values(TEMPLATES).flatMap((templates) => Object.values(templates)),
  ...[
    OUTCOME_WORDS,
    RUNG_WORDS,
    REASON_WORDS,
    FAILURE_MEANINGS,
    COVERAGE_WORDS,
    HAZARD_WORDS,
    CONSEQUENCE_WORDS,
    GRADE_WORDS,
    GRADE_MEANINGS,
    GRADE_PHRASES,
    LABORATORY_WORDS,
  ].flatMap((words) => Object.values(words) as string[]),
  ...Object.values(CHAPTER_WORDS).flatMap(({ title, bring }) => [title, bring]),
  ...CAUTIONS,
  DO_NOT_REPEAT,
  HOW_TO_READ,
  INVENTED,
  ONE_SAMPLE,
  ONE_SAMPLE_LONG,
  RIGHT_OF_REPLY,
];

describe('words', () => {
  it('every check of the bench set has a title and a question, and no other check has', () => {
    expect(Object.keys(CHECK_WORDS).sort()).toEqual(BENCH_SET.map(({ id }) => id).sort());
    for (const { id } of BENCH_SET) {
      expect(getCheckWords(id).title, id).toMatch(/^[A-Z].{2,32}$/);
      expect(getCheckWords(id).question, id).toMatch(/^[A-Z].+\?$/);
    }
  });

  it('no two checks have the same title', () => {
    const titles = Object.values(CHECK_WORDS).map(({ title }) => title);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it('every outcome, reason, rung, failure, hazard, consequence, grade, chapter and laboratory test has words', () => {
    const pairs: readonly (readonly [readonly string[], object])[] = [
      [outcome.options, OUTCOME_WORDS],
      [REASONS, REASON_WORDS],
      [rung.options, RUNG_WORDS],
      [FAILURES, FAILURE_WEIGHTS],
      [FAILURES, FAILURE_MEANINGS],
      [HAZARDS, HAZARD_WORDS],
      [CONSEQUENCES, CONSEQUENCE_WORDS],
      [GRADES, GRADE_WORDS],
      [GRADES, GRADE_STROKES],
      [LABORATORY, LABORATORY_WORDS],
      [[...new Set(BENCH_SET.map(({ chapter }) => chapter))], CHAPTER_WORDS],
    ];
    for (const [keys, words] of pairs) expect(Object.keys(words).sort()).toEqual([...keys].sort());
  });

  it('no sentence accuses, certifies or promises that a capacitor is empty', () => {
    const unfair = /is illegal|\bfake\b|\bpassed\b|will kill|\blie\b|certified|discharged after|guarantee/i;
    expect(EVERY_SENTENCE.filter((sentence) => unfair.test(sentence))).toEqual([]);
  });

  it('every place for a quantity in a sentence names a unit that is kept, or a way of showing', () => {
    const shown = ['word', 'percent', 'hours', 'minutes', 'milliamperes', 'millimetres'];
    for (const [name, templates] of Object.entries(TEMPLATES))
      for (const [key, template] of Object.entries(templates))
        for (const [, , how] of template.matchAll(/\{([A-Za-z0-9]+)(?:\|([^}]+))?\}/g))
          expect(how === undefined || shown.includes(how) || isKeptUnit(how), `${name}.${key}`).toBe(true);
  });

  it('every remark and warning that the core makes by name has a sentence', () => {
    const warns = ['src/core/assess/find-warnings.ts', 'src/core/assess/stack-warnings.ts'];
    const remarks = remarksInCore();
    for (const { path, keys } of remarks)
      for (const key of keys) expect(Object.keys(warns.includes(path) ? WARNINGS : NOTES), `${path}: ${key}`).toContain(key);
    expect(remarks.flatMap(({ keys }) => keys).length).toBeGreaterThan(250);
  });

  it('no remark is chosen in a way that hides which it can be', () => {
    expect(remarksInCore().flatMap(({ path, expression, keys }) => (keys.length === 0 ? [`${path}: ${expression}`] : []))).toEqual([]);
  });

  it('a key that nobody has written a sentence for is printed itself, with what came along', () => {
    expect(sentenceFor(NOTES, 'aKeyNobodyWrote')).toBe('aKeyNobodyWrote');
    expect(sentenceFor(NOTES, 'aKeyNobodyWrote', { place: 'T1', count: 3 })).toBe('aKeyNobodyWrote (place T1, count 3)');
    expect(sentenceFor(NOTES, 'constructor')).toBe('constructor');
    expect(getCheckWords('shock/unheard-of').title).toBe('shock/unheard-of');
    expect(laboratoryText(['impulse', 'newTest'])).toBe('impulse voltage, newTest');
  });

  it('a quantity in a sentence is printed in the unit people read, and a missing one leaves its place visible', () => {
    expect(
      fillTemplate('{gap|m} at {share|percent}, {time|hours}, {name}, {lost}', { gap: 0.0031, share: 0.25, time: 7200, name: 'T1' }),
    ).toBe('3.1\u00a0mm at 25\u00a0%, 2\u00a0h, T1, {lost}');
  });

  it('where shock and fire differ the worse one is named in the coverage word', () => {
    expect(coverageHeadline({ shock: 'not examined', fire: 'partly examined' })).toEqual({
      worse: 'not examined',
      words: 'Shock not examined',
    });
    expect(coverageHeadline({ shock: 'examined', fire: 'partly examined' })).toEqual({
      worse: 'partly examined',
      words: 'Fire partly examined',
    });
    expect(coverageHeadline({ shock: 'examined', fire: 'examined' })).toEqual({ worse: 'examined', words: 'Examined' });
  });

  it('a rung is worded in full, and the part that is certain is said', () => {
    expect(rungText(CREEPAGE)).toBe('below basic');
    expect(rungText({ ...CREEPAGE, rung: 'undecided', notes: [] })).toBe('undecided');
    expect(rungText({ ...CREEPAGE, rung: 'undecided', notes: [{ key: 'basicMetRestUndecided', args: {} }] })).toBe(
      'basic met, rest undecided',
    );
    expect(rungText({ ...CREEPAGE, rung: 'bridgedOrAbsent', measured: { word: 'absent' } })).toBe('absent');
    expect(rungText({ ...CREEPAGE, rung: 'bridgedOrAbsent', measured: { word: 'ordinaryCeramic' } })).toBe('bridged');
    expect(rungText({ ...CREEPAGE, rung: 'bridgedOrAbsent', measured: null })).toBe('bridged or absent');
  });

  it('an inconclusive finding is said as a probability, or by its word when there is none', () => {
    const finding = findingOf('fire/fuse', { outcome: 'inconclusive', reason: 'withinUncertainty', probability: 0.81 });
    expect(outcomeText(finding)).toBe('81\u00a0% likely to pass');
    expect(outcomeText({ ...finding, probability: null })).toBe('inconclusive');
  });

  it('a probability is never printed as zero or as one hundred percent', () => {
    expect(probabilityText(0)).toBe('under 0.1\u00a0%');
    expect(probabilityText(1)).toBe('over 99.9\u00a0%');
    for (let tenthOfPercent = 0; tenthOfPercent <= 1000; tenthOfPercent += 1)
      expect(probabilityText(tenthOfPercent / 1000)).not.toMatch(/^(0|0\.0|100|100\.0)\u00a0/);
    expect(probabilityText(0.994)).toBe('99.4\u00a0%');
  });

  it('a limit is said in words, not in signs', () => {
    expect(limitText(limitOf('atMost', amountOf(0.0005, 'A'), 'secondary'), 'milliamperes')).toBe('at most 0.5\u00a0mA');
    expect(limitText(limitOf('within', amountOf(4.75, 'V'), 'memory', { to: amountOf(5.25, 'V') }))).toBe('4.75\u00a0V to 5.25\u00a0V');
    expect(limitText(limitOf('oneOf', null, 'memory', { words: ['one Y1', 'two Y2'] }))).toBe('one Y1 or two Y2');
  });

  it('a field of a case is named the way a person would', () => {
    expect(fieldText('/exhibits/sweep-1/table/columns/v/3')).toBe('exhibit sweep-1, column v, row 4');
    expect(fieldText('/days/day-1/under/ambient')).toBe('day day-1, ambient');
    expect(fieldText('/parts/c9/safetyClass')).toBe('part c9, safety class');
    expect(fieldText('not a path')).toBe('not a path');
  });

  it('a plain next measurement takes what it is about behind a colon', () => {
    expect(measurementText('ripple', ['lead'])).toBe('Measure the ripple at full load with the stated bandwidth: lead');
    expect(measurementText('newMeasurement')).toBe('newMeasurement');
  });
});
