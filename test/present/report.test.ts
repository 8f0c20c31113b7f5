import { describe, expect, it } from 'vitest';
import { BENCH_SET, LABORATORY } from '../../src/core/check/bench-set.ts';
import type { Assessment } from '../../src/core/result/assessment.ts';
import { digestOfBytes } from '../../src/core/result/digest.ts';
import { escapeText } from '../../src/present/markup/markup.ts';
import { cssString } from '../../src/present/report/css-string.ts';
import { renderReport } from '../../src/present/report/render-report.ts';
import { getCheckWords } from '../../src/present/words/check-words.ts';
import { CAUTIONS, INVENTED, ONE_SAMPLE } from '../../src/present/words/fixed-sentences.ts';
import { LABORATORY_WORDS } from '../../src/present/words/laboratory-words.ts';
import { amountOf, assessmentOf, findingOf, limitOf, sourceOf, stepOf } from './build-assessment.ts';
import { fullAssessment } from './sample-assessment.ts';
import { CURVE } from './sample-findings.ts';

/** What a reader sees: the page without its style and its tags. */
function readable(page: string): string {
  return page
    .replace(/<style>[\s\S]*?<\/style>/, '')
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ');
}

const FULL = renderReport(fullAssessment(), { fields: { '/exhibits/gap-1/value': 'gap 1, value' } });
const EMPTY = renderReport(assessmentOf());

describe('the report', () => {
  it('of the same assessment has the same bytes', () => {
    expect(renderReport(fullAssessment(), { fields: { '/exhibits/gap-1/value': 'gap 1, value' } }) === FULL).toBe(true);
  });

  it('has no script, no handler, no inline style attribute and nothing that is loaded', () => {
    for (const page of [FULL, EMPTY]) {
      expect(page).not.toMatch(/<script|<iframe|<object|<embed|<link|<img|<base|<form/i);
      expect(page).not.toMatch(/<[^>]*\son[a-z]+\s*=/i);
      expect(page).not.toMatch(/<[^>]*\sstyle\s*=/i);
      expect(page).not.toMatch(/https?:|@import|url\((?!data:font)/i);
      expect([...page.matchAll(/href="([^"]*)"/g)].every(([, target]) => target!.startsWith('#'))).toBe(true);
    }
  });

  it('allows itself exactly the style it carries', () => {
    const style = /<style>([\s\S]*?)<\/style>/.exec(FULL)?.[1] ?? '';
    const hash = Buffer.from(digestOfBytes(new TextEncoder().encode(style)), 'hex').toString('base64');
    const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(FULL)?.[1]?.replaceAll('&#39;', "'");
    expect(policy).toBe(`default-src 'none'; style-src 'sha256-${hash}'; font-src data:; base-uri 'none'; form-action 'none'`);
  });

  it('leads every link to a place that exists, and gives no two places one name', () => {
    const ids = [...FULL.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = [...FULL.matchAll(/href="#([^"]*)"/g)].map(([, target]) => target);
    expect(targets.filter((target) => !ids.includes(target))).toEqual([]);
    expect(targets.length).toBeGreaterThan(20);
  });

  it('links a step to what it uses and back', () => {
    const step = (id: string): string => new RegExp(`<article class="step[a-z ]*" id="${id}"[\\s\\S]*?</article>`).exec(FULL)?.[0] ?? '';
    expect(step('step-touch_2f_bridging-current')).toContain('href="#step-parts_2f_bridging"');
    expect(step('step-parts_2f_bridging')).toContain('href="#step-touch_2f_bridging-current"');
    expect(step('step-touch_2f_bridging-current')).toContain('href="#finding-shock_2f_touch-current_40_b"');
  });

  it('prints formula, numbers and result on lines of their own', () => {
    const text = readable(FULL);
    expect(text).toContain('2π · f · C Y · V');
    expect(text).toContain('2π · 50\u00a0Hz · 2.2\u00a0nF · 264\u00a0V'.replace(/\u00a0/g, ' '));
    expect(text).toContain('0.182 ± 0.020 mA');
  });

  it('says both halves, what decided with its limit and grade, and what else would apply', () => {
    const text = readable(FULL);
    for (const said of [
      'Dangerous',
      'Partly examined',
      '4 of 15',
      '2 of 19',
      'below basic',
      'from a secondary copy',
      'Also Unsafe',
      'Also Below its claims',
      'changed from the default',
    ])
      expect(text).toContain(said);
  });

  it('gives findings of one kind their question and what they share once, and each its reading, limit, decision, remarks and origin', () => {
    const group = readable(/<section class="group" aria-label="Creepage">[\s\S]*?<\/section>/.exec(FULL)?.[0] ?? '');
    for (const said of [
      getCheckWords('shock/creepage').question,
      'Limit from: Invented rules for adapters; 2021; table 1 secondary copy',
      'at least 2.5 mm, basic',
      'at least 6.4 mm, row of the table that covers it',
      'from memory',
    ])
      expect(group.split(said)).toHaveLength(2);
    const finding = readable(/<article class="find one" id="finding-shock_2f_creepage_40_edge"[\s\S]*?<\/article>/.exec(FULL)?.[0] ?? '');
    for (const said of [
      'second winding to first, over the winding edge',
      '1.30 ± 0.10 mm',
      'at least 5 mm, reinforced',
      'under 0.1 %',
      'The working voltage was not measured',
      'origin of the value, step 8',
      'origin of the limit, step 7',
      'gap 1, value',
    ])
      expect(finding).toContain(said);
  });

  it('gives a finding that stands alone everything in its own place', () => {
    const finding = readable(/<article class="find" id="finding-shock_2f_touch-current_40_b"[\s\S]*?<\/article>/.exec(FULL)?.[0] ?? '');
    for (const said of [
      getCheckWords('shock/touch-current').question,
      '0.180 ± 0.020 mA',
      'at most 0.5 mA, first limit of touch current',
      'Invented rules for adapters; 2021; table 1',
      'over 99.9 %',
      'read under mains 230 V, 50 Hz, direct supply, plug way B',
      'origin of the value, step 4',
    ])
      expect(finding).toContain(said);
  });

  it('keeps a refused reading, struck through, with the reason', () => {
    const finding = /<article class="find" id="finding-shock_2f_working-voltage"[\s\S]*?<\/article>/.exec(FULL)?.[0] ?? '';
    expect(finding).toMatch(/<s class="refused">.*240 ± 6/);
    expect(finding).toContain('the reading cannot count as evidence');
  });

  it('prints a remark that has no sentence as its key', () => {
    expect(readable(FULL)).toContain('aKeyNobodyWrote');
  });

  it('names what cannot be judged without a laboratory, the cautions and the one sample, also when nothing was found', () => {
    for (const page of [FULL, EMPTY]) {
      const text = readable(page);
      for (const key of LABORATORY) expect(text).toContain(LABORATORY_WORDS[key]);
      for (const caution of CAUTIONS) expect(text).toContain(caution);
      expect(text).toContain(ONE_SAMPLE);
      expect(text).not.toContain('discharged after');
    }
  });

  it('marks invented data loudly, and only invented data', () => {
    expect(readable(FULL)).toContain(INVENTED);
    expect(FULL).toContain('<p class="invented">');
    const real = fullAssessment();
    expect(renderReport({ ...real, case: { ...real.case, invented: false } })).not.toMatch(/invented unit/i);
  });

  it('of an empty case says that there is no verdict, and lists every check of the bench set by name as not examined', () => {
    const section = /<section aria-labelledby="part-unexamined">[\s\S]*?<\/section>/.exec(EMPTY)?.[0] ?? '';
    for (const { id } of BENCH_SET) expect(section).toContain(`${escapeText(getCheckWords(id).title)} <i>`);
    expect(readable(EMPTY)).toContain('No verdict yet');
    expect(EMPTY).toContain('<div class="half cv-none">');
    expect(EMPTY).toContain('<div class="half void">');
    expect(readable(EMPTY)).not.toContain('Nothing found wrong');
    expect(EMPTY).not.toMatch(/class="m-pass/);
  });

  it('gives each reason why something was not examined once, with its chapters under it', () => {
    const section = /<section aria-labelledby="part-unexamined">[\s\S]*?<\/section>/.exec(EMPTY)?.[0] ?? '';
    const reasons = [...section.matchAll(/<div class="chap"><h3>([^<]+)<\/h3>/g)].map(([, reason]) => reason);
    expect(reasons.length).toBeGreaterThan(0);
    expect(new Set(reasons).size).toBe(reasons.length);
  });

  it('lists the checks of the bench set that the assessment does not mention at all', () => {
    const page = renderReport({ ...assessmentOf(), findings: [] });
    expect(page).toContain(`${BENCH_SET.length} of ${BENCH_SET.length} checks`);
  });

  it('says what is in doubt, and never the clear word beside it', () => {
    const finding = findingOf('fire/fuse', {
      outcome: 'fail',
      reason: 'notMet',
      headline: false,
      measured: amountOf(180, 'A', 1),
      limit: limitOf('atLeast', amountOf(200, 'A'), 'memory'),
      margin: 1.11,
      probability: 0,
    });
    const text = readable(
      renderReport(
        assessmentOf(
          { findings: [finding] },
          {
            failure: 'Nothing found wrong',
            doubtful: 'Unsafe',
            doubtfulBy: ['fire/fuse'],
            coverage: { shock: 'not examined', fire: 'partly examined' },
          },
        ),
      ),
    );
    expect(text).toContain('Unsafe, in doubt');
    expect(text).toContain('would be Unsafe , on a limit from memory');
    expect(text).not.toContain('Nothing found wrong');
    expect(text).toContain('Shock not examined');
  });

  it('lets no text of a case become an element, an attribute, a link or a style', () => {
    const evil = `<script>alert(1)</script>"'><img src=x onerror=alert(1)></style><style>*{display:none}</style>javascript:alert(1)\u202egnp.exe\u0000`;
    const step = stepOf(`${evil}/step`, {
      name: evil,
      symbol: evil,
      value: 1,
      unit: 'V',
      u: 0.1,
      field: evil,
      source: { ...sourceOf('memory', evil), publication: evil, alsoBy: [evil], disagrees: [evil] },
      notes: [{ key: evil, args: { [evil]: evil } }],
      budget: [{ leaf: evil, means: evil, args: { a: evil }, u: 1, share: 0.5 }],
      formula: 'f',
      uses: [{ step: evil, symbol: 'x', sensitivity: null }],
    });
    const assessed: Assessment = assessmentOf(
      {
        case: { id: evil, product: evil, name: evil, sample: evil, sha256: evil, invented: true },
        tool: evil,
        setting: { [evil]: { value: evil, from: 'case', source: null } },
        steps: [step],
        formulas: { f: { tex: evil, text: `x = ${evil}`, validity: evil, symbol: evil, means: evil, inputs: [] } },
        findings: [
          findingOf('shock/creepage', {
            id: evil,
            subject: evil,
            about: evil,
            outcome: 'fail',
            reason: 'notMet',
            measured: { word: evil },
            limit: limitOf('oneOf', null, 'memory', { name: evil, words: [evil] }),
            step: step.id,
            fields: [evil],
            notes: [{ key: evil, args: { a: evil } }],
          }),
          findingOf('fire/fuse', { subject: evil, about: evil }),
          findingOf('fire/inrush', { about: evil, outcome: 'notApplicable', reason: 'doesNotApply' }),
        ],
        curves: [{ ...CURVE, exhibit: evil, port: evil, level: evil, ends: evil, held: evil }],
        next: [
          {
            id: evil,
            measure: evil,
            about: [evil],
            settles: [evil],
            best: 'Unsafe',
            worst: 'Unsafe',
            hazard: [evil],
            stop: [{ of: evil, about: evil, at: amountOf(1, 'V'), step: evil }],
            before: null,
          },
        ],
        lastChance: [{ before: 'opening', measure: [evil] }],
        claims: [{ claim: evil, claimed: amountOf(1, 'A'), measured: amountOf(1, 'A'), share: 1, probability: 1, finding: evil }],
        unjudged: [{ exhibit: evil, kind: evil }],
        stale: [{ computed: evil, recipe: evil }],
        laboratory: [evil],
        warnings: [{ key: evil, at: evil, args: { a: evil } }],
      },
      { failure: 'Dangerous', decidedBy: [evil], also: [{ failure: 'Unsafe', by: [evil] }], doubtful: 'Unsafe', doubtfulBy: [evil] },
    );
    const page = renderReport(assessed, { fields: { [evil]: evil } });
    expect(page).not.toMatch(/<script|<img/i);
    expect(page.match(/<style>/g)).toHaveLength(1);
    expect(page.match(/<\/style>/g)).toHaveLength(1);
    expect(page).not.toMatch(/<[^>"]*("[^"]*"[^>"]*)*\sonerror\s*=/i);
    expect(page).not.toMatch(/href="(?!#)/);
    expect(page).not.toMatch(/[\u0000\u202e]/);
    expect(page).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
  });

  it('writes a name into its style so that it can end neither the text nor the style', () => {
    expect(cssString('A"; } </style>\n\\')).toBe('"A\\22 \\3b  \\7d  \\3c \\2f style\\3e \\a \\5c "');
  });
});
