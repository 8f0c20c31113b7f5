import { describe, expect, it } from 'vitest';
import type { CaseSource } from '../../src/app/case-source.ts';
import { resultsOf } from '../../src/app/results-of.ts';
import { fitSoak, type KeptFit } from '../../src/app/soak/fit-soak.ts';
import { keepFit } from '../../src/app/soak/keep-fit.ts';
import { assess } from '../../src/core/assess/assess.ts';
import type { CaseInput } from '../../src/core/evidence/case.ts';
import { isRefusal, type Refusal, refuse, sentence } from '../../src/core/quantity/refusal.ts';
import { toCanonical } from '../../src/core/result/canonical.ts';
import { digestOfBytes } from '../../src/core/result/digest.ts';
import { buildCase, caseJson, findingOf } from '../truth/build-case.ts';
import { face, TRANSFORMER, usbPort, WARM, winding } from '../truth/evidence-pieces.ts';

const ROWS = 121;
const EACH_S = 60;
const heated = (end: number, rise: number, tau: number) => (t: number) => end - rise * Math.exp(-t / tau);
const shown = (celsius: number): string => celsius.toFixed(1);

/** A log of case and winding in degrees Celsius, invented, and the case that names it. */
function soakCase(csv: string, settled?: Record<string, string>): { json: Record<string, unknown>; source: CaseSource } {
  const bytes = new TextEncoder().encode(csv);
  const file = {
    id: 'log',
    path: 'log.csv',
    sha256: digestOfBytes(bytes),
    bytes: bytes.length,
    media: 'text/csv',
    ...(settled === undefined ? {} : { settled }),
  };
  const patch: Partial<CaseInput> = {
    ports: [usbPort()],
    parts: [TRANSFORMER],
    places: [winding('B'), face()],
    exhibits: [
      {
        id: 'soak-1',
        kind: 'soak',
        under: { ...WARM, loads: [...WARM.loads] },
        table: {
          file: 'log',
          columns: [
            { id: 'face', role: 'temperature', of: 'face', from: 'case' },
            { id: 'winding', role: 'temperature', of: 'winding', from: 'winding' },
          ],
        },
      },
    ],
    files: [file],
  };
  const source: CaseSource = {
    readCase: async () => new TextEncoder().encode(JSON.stringify(caseJson(patch))),
    readFile: async (path) => (path === 'log.csv' ? bytes : refuse('file-missing', path, 'a file that is there')),
  };
  return { json: caseJson(patch), source };
}

function csvOf(row: (i: number) => string, head = 't [s];case [°C];winding [°C]', rows = ROWS): string {
  return `${[head, ...Array.from({ length: rows }, (_, i) => row(i))].join('\n')}\n`;
}
const face57 = heated(57, 32, 1500);
const winding90 = heated(90, 65, 1300);
const GOOD = csvOf((i) => `${i * EACH_S};${shown(face57(i * EACH_S))};${shown(winding90(i * EACH_S))}`);

async function fitted(csv: string, soak = 'soak-1', settled?: Record<string, string>): Promise<KeptFit | Refusal> {
  const { json, source } = soakCase(csv, settled);
  return fitSoak(buildCase(json), source, soak, 1);
}
async function refusedBy(csv: string, settled?: Record<string, string>): Promise<Refusal> {
  const found = await fitted(csv, 'soak-1', settled);
  if (!isRefusal(found)) throw new Error('it was not refused');
  return found;
}

/** The case with the fit kept in it, judged. */
async function judged(change: (kept: CaseInput) => void = () => undefined) {
  const { json, source } = soakCase(GOOD);
  const fit = await fitted(GOOD);
  if (isRefusal(fit)) throw new Error(sentence(fit));
  const document = JSON.parse(keepFit(JSON.stringify(json), fit)) as CaseInput;
  change(document);
  const one = buildCase(document);
  const results = await resultsOf(one, {
    ...source,
    readFile: async (path) => (path === fit.attachment.path ? fit.bytes : source.readFile(path)),
  });
  return assess(one, new Map(), results);
}

describe('a soak that was fitted and kept', () => {
  it('is judged by its end, scaled to the highest ambient for a part and as read for what a hand touches', async () => {
    const assessment = await judged();
    const part = findingOf(assessment, 'fire/winding-temperature@winding');
    // 90 + 1.075 × 15 = 106.1 °C against 110; no instrument is named, so a tenth of the permitted rise is blind
    expect(part).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown', state: 'labelLoad' });
    expect('value' in part.measured! ? part.measured.value - 273.15 : 0).toBeCloseTo(106.1, 1);
    expect(findingOf(assessment, 'burn/enclosure-temperature@face')).toMatchObject({ outcome: 'pass' });
    expect(assessment.stale).toEqual([]);
    expect(assessment.unjudged).toEqual([]);
    expect(findingOf(assessment, 'fire/thermal-runaway@soak-1-winding')).toMatchObject({ outcome: 'pass', state: 'labelLoad' });
  });

  it('tells the temperature at which to end the test and when that is reached', async () => {
    const { soaks } = await judged();
    const part = soaks.find(({ column }) => column === 'winding')!;
    expect(part.stop!.at - 273.15).toBeCloseTo(105, 6); // class B bears 110 °C by thermocouple, less 5 K
    expect(part.stop!.reachedAtS).toBeNull();
    const limit = part.limits.find(({ finding }) => finding.startsWith('fire/winding'))!;
    expect(limit.at - 273.15).toBeCloseTo(110 - 1.075 * 15, 6); // 110 °C at 40 °C, at the ambient of the log
    expect(soaks.find(({ column }) => column === 'face')!.stop!.at - 273.15).toBeCloseTo(95, 6);
  });

  it('is stale once its log, or what the case says of it, is another: nothing is judged by it', async () => {
    const assessment = await judged((kept) => {
      const [soak] = kept.exhibits!;
      if (soak?.kind === 'soak') soak.table.columns[1]!.of = 'face';
    });
    expect(assessment.stale).toEqual([{ computed: 'heating-soak-1', recipe: 'soak/heating-curve/1' }]);
    expect(assessment.soaks).toEqual([]);
    expect(assessment.unjudged).toEqual([{ exhibit: 'soak-1', kind: 'soak' }]);
    expect(findingOf(assessment, 'fire/winding-temperature').outcome).toBe('notAssessed');
  });

  it('comes out the same twice, and the second takes the place of the first in the case', async () => {
    const [one, two] = [await fitted(GOOD), await fitted(GOOD)];
    if (isRefusal(one) || isRefusal(two)) throw new Error('refused');
    expect(toCanonical(one.curves)).toEqual(toCanonical(two.curves));
    const { json } = soakCase(GOOD);
    const once = keepFit(JSON.stringify(json, null, 2), one);
    expect(keepFit(once, two)).toBe(once);
    expect((JSON.parse(once) as CaseInput).files).toHaveLength(2);
  });

  it('a soak at a third of the load settles nothing about use', async () => {
    const assessment = await judged((kept) => {
      const [soak] = kept.exhibits!;
      soak!.under!.loads = [{ port: 'usb', level: '5v', draws: '0.5 A' }];
    });
    expect(findingOf(assessment, 'fire/thermal-runaway@soak-1-winding')).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(findingOf(assessment, 'burn/enclosure-temperature@face').outcome).toBe('notAssessed');
  });
});

describe('logs that cannot be used are refused in one sentence', () => {
  const winding90At = (i: number): string => `${shown(face57(i * EACH_S))};${shown(winding90(i * EACH_S))}`;

  it('a clock that goes back', async () => {
    const refusal = await refusedBy(csvOf((i) => `${(i === 60 ? 10 : i) * EACH_S};${winding90At(i)}`));
    expect(['soak-runs-backwards', 'file-in-doubt']).toContain(refusal.code);
    expect(sentence(refusal)).toMatch(/back/);
  });

  it('a time that stands twice', async () => {
    const refusal = await refusedBy(csvOf((i) => `${(i === 60 ? 59 : i) * EACH_S};${winding90At(i)}`));
    expect(refusal).toMatchObject({ code: 'soak-time-twice', place: '/exhibits/soak-1/table' });
    expect(sentence(refusal)).toContain('3540 s twice');
  });

  it('a file without times, a column that is not there, a soak that is not there', async () => {
    expect((await refusedBy(csvOf((i) => winding90At(i % 40), 'case [°C];winding [°C]', 40))).code).toBe('soak-no-time');
    expect((await refusedBy(csvOf((i) => `${i * EACH_S};${winding90At(i)}`, 't [s];lid [°C];winding [°C]'))).code).toBe('column-missing');
    expect(await fitted(GOOD, 'soak-9')).toMatchObject({ code: 'no-such-soak', expected: 'one of soak-1' });
  });

  it('a channel without a unit is asked about, not guessed', async () => {
    const refusal = await refusedBy(csvOf((i) => `${i * EACH_S};${winding90At(i)}`, 't [s];case;winding [°C]'));
    expect(['unit-not-stated', 'file-in-doubt']).toContain(refusal.code);
  });

  it('a channel in °F is read as what it says: the end is the same', async () => {
    const inF = (celsius: number): string => ((celsius * 9) / 5 + 32).toFixed(1);
    const csv = csvOf((i) => `${i * EACH_S};${inF(face57(i * EACH_S))};${shown(winding90(i * EACH_S))}`, 't [s];case [°F];winding [°C]');
    const found = await fitted(csv);
    if (isRefusal(found)) throw new Error(sentence(found));
    const end = found.curves.channels[0]!.fit!.outputs[0]!;
    expect(end.value - 273.15).toBeCloseTo(57, 1);
  });

  it('three minutes say so in the result, and nothing is judged by them', async () => {
    const found = await fitted(csvOf((i) => `${i * 3};${shown(face57(i * 3))};${shown(winding90(i * 3))}`, undefined, 61));
    if (isRefusal(found)) throw new Error(sentence(found));
    for (const channel of found.curves.channels) expect(channel).toMatchObject({ outcome: 'refused', refusal: { code: 'soak-too-short' } });
  });

  it('rows typed by hand are fitted like a file', async () => {
    const { json, source } = soakCase(GOOD);
    const [soak] = (json as CaseInput).exhibits!;
    if (soak?.kind !== 'soak') throw new Error('no soak');
    delete soak.table.file;
    soak.table.columns = [
      { id: 't', unit: 'min' },
      { id: 'face', unit: '°C', role: 'temperature', of: 'face' },
    ];
    soak.table.rows = Array.from({ length: 25 }, (_, i) => ({ id: `r${i}`, cells: [String(i * 5), shown(face57(i * 300))] }));
    const found = await fitSoak(buildCase(json), source, 'soak-1', 1);
    if (isRefusal(found)) throw new Error(sentence(found));
    expect(found.curves.channels[0]!.fit!.outputs[0]!.value - 273.15).toBeCloseTo(57, 1);
  });
});
