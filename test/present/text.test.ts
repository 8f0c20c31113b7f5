import { describe, expect, it } from 'vitest';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { explainCheck, explainStep } from '../../src/present/text/explain.ts';
import { NARROWEST, summaryText } from '../../src/present/text/summary.ts';
import { columnsOf, toTerminal, wrapText } from '../../src/present/text/terminal-text.ts';
import { assessmentOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';

const FULL = fullAssessment();
const PLAIN = { colour: false, width: 100 } as const;
const withoutColour = (text: string): string => text.replace(/\u001b\[[\d;]*m/g, '');

function textOf(answer: ReturnType<typeof explainStep>): string {
  if (typeof answer !== 'string') throw new Error(`refused: ${answer.code}`);
  return answer;
}

describe('the summary', () => {
  it('shows both halves on the same lines', () => {
    const line = summaryText(FULL, PLAIN)
      .split('\n')
      .find((one) => one.includes('Dangerous'));
    expect(line).toContain('✕ Dangerous');
    expect(line).toContain('◩ Partly examined');
  });

  it('counts the cells and draws one sign for each check that applies', () => {
    const text = summaryText(FULL, PLAIN);
    expect(text).toMatch(/shock [■◩▨]{15} 4 of 15/);
    expect(text).toMatch(/fire {2}[■◩▨]{19} 2 of 19/);
  });

  it('says what decided, with reading, limit and grade', () => {
    const text = summaryText(FULL, PLAIN);
    expect(text).toContain('1.30 ± 0.10 mm; the limit is at least 5 mm, reinforced (secondary copy)');
    expect(text).toContain('Also Unsafe');
    expect(text).toContain('✕ 6 fail');
    expect(text).toContain('electric strength');
    expect(text).toContain('INVENTED');
  });

  it('says the same without colour as with it', () => {
    expect(withoutColour(summaryText(FULL, { ...PLAIN, colour: true }))).toBe(summaryText(FULL, PLAIN));
    expect(summaryText(FULL, PLAIN)).not.toContain('\u001b');
  });

  it('keeps to the width of the terminal, down to the narrowest that holds two halves', () => {
    for (const width of [20, NARROWEST, 60, 80, 100, 140])
      for (const assessment of [FULL, assessmentOf()])
        for (const line of summaryText(assessment, { colour: false, width }).split('\n'))
          expect(columnsOf(line)).toBeLessThanOrEqual(Math.max(width, NARROWEST));
  });

  it('of an empty case gives no verdict and frames what nobody looked at as heavily as a danger', () => {
    const text = summaryText(assessmentOf(), PLAIN);
    expect(text).toContain('No verdict yet');
    expect(text).toMatch(/┃ ▨ Not examined/);
    expect(summaryText(FULL, PLAIN)).toMatch(/┃ ✕ Dangerous/);
    expect(text).not.toContain('Nothing found wrong');
  });

  it('lets no name of a case move the cursor or colour the screen', () => {
    const assessment = assessmentOf({ case: { ...FULL.case, name: 'Fell\u001b[2J\r\n12', sample: 'A\u202e' } });
    expect(summaryText(assessment, PLAIN)).not.toMatch(/[\u001b\r\u202e]/);
    expect(toTerminal('a\u0007b\nc')).toBe('a\ufffdb c');
  });
});

describe('the explanation of a number', () => {
  it('goes from symbol over formula and numbers to the result, and down to the field that was read', () => {
    const lines = textOf(explainStep(FULL, 'touch/bridging-current', { colour: false }))
      .split('\n')
      .map((line) => line.trim());
    const at = lines.indexOf('I = 2π · f · C_Y · V');
    expect(at).toBeGreaterThan(0);
    expect(lines.slice(at + 1, at + 3)).toEqual(['= 2π · 50 Hz · 2.2 nF · 264 V', '= 0.182 ± 0.020 mA']);
    expect(lines).toContain('read from: /parts/c5/measured');
    expect(lines.some((line) => line.startsWith('source:') && line.endsWith('(reasoned)'))).toBe(true);
  });

  it('draws the share of each contribution as a bar of that length', () => {
    const text = textOf(explainStep(FULL, 'load/lead/12v/held-current', { colour: false }));
    expect(text).toMatch(/percent of reading, meter 1 {2}█{14} {8}68 %/);
    expect(text).toMatch(/aKeyNobodyWrote \(size 3\) {5}\?/);
  });

  it('gives question, reading, limit, decision and derivation of a check, and of one finding alone', () => {
    const check = textOf(explainCheck(FULL, 'shock/creepage'));
    expect(check).toContain('second winding to first');
    expect(check).toContain('bulk plus to output minus');
    const finding = textOf(explainCheck(FULL, 'shock/creepage@edge'));
    expect(finding).not.toContain('bulk plus to output minus');
    expect(finding).toContain('read from: /exhibits/gap-1/value');
    expect(finding).toContain('decision  The probability that the limit is met is under 0.1 %.');
  });

  it('gives the conditions of a touch current, and none for a distance', () => {
    expect(textOf(explainCheck(FULL, 'shock/touch-current'))).toContain('under     mains 230 V, 50 Hz, direct supply, plug way B');
    expect(textOf(explainCheck(FULL, 'shock/creepage'))).not.toContain('  under  ');
  });

  it('of an id that does not exist is refused with the nearest one', () => {
    const step = explainStep(FULL, 'touch/bridging-curent', { colour: false });
    expect(isRefusal(step) && [step.code, step.suggestion]).toEqual(['no-such-step', 'touch/bridging-current']);
    const check = explainCheck(FULL, 'shock/creepag');
    expect(isRefusal(check) && [check.code, check.suggestion]).toEqual(['no-such-step', 'shock/creepage']);
    const none = explainStep({ ...assessmentOf(), findings: [] }, 'anything', { colour: false });
    expect(isRefusal(none) && none.suggestion).toBe(undefined);
  });

  it('says the same without colour as with it', () => {
    expect(withoutColour(textOf(explainCheck(FULL, 'shock/touch-current', { colour: true })))).toBe(
      textOf(explainCheck(FULL, 'shock/touch-current', { colour: false })),
    );
  });
});

describe('wrapping', () => {
  it('loses no letter and cuts a word that is longer than the line', () => {
    expect(wrapText('one two threefourfive', 5)).toEqual(['one', 'two', 'three', 'fourf', 'ive']);
  });
});
