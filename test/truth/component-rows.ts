import { expect, it } from 'vitest';
import type { Finding } from '../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from './build-case.ts';
import { type PartInput, type PlaceInput, spot, usbPort, WARM } from './evidence-pieces.ts';

type Spot = Parameters<typeof spot>;
/** A room at the highest ambient (40 °C, house default): nothing is scaled, the doubt of the reading alone decides, and P can be done by hand. */
export const HOT_ROOM = { ...WARM, ambient: '40 °C ± 0 K', loads: [...WARM.loads] };

/** One temperature at one place on one part. */
export function onPart(
  part: PartInput,
  value: Spot[1],
  more: { place?: Partial<PlaceInput>; under?: NonNullable<Spot[2]>['under'] } = {},
): CasePatch {
  const place: PlaceInput = { id: 'spot', name: 'the spot', part: part.id, ...more.place };
  return { ports: [usbPort()], parts: [part], places: [place], exhibits: [spot('spot', value, { under: more.under ?? HOT_ROOM })] };
}

export interface Rows {
  readonly check: string;
  readonly part: PartInput;
  /** °C: lowest and highest rating of the kind, and a rating printed on the part that lies between. */
  readonly least: number;
  readonly most: number;
  readonly consequence: Finding['consequence'];
  /** A failure by 2 K against the highest sets the headline: its source is better than memory. */
  readonly headlined: boolean;
}

/** What holds for every part whose temperature is compared with its rating, or with the span of ratings of its kind. */
export function itStandsItsRating({ check, part, least, most, consequence, headlined }: Rows): void {
  const judged = (value: Spot[1], own: PartInput = part, under?: NonNullable<Spot[2]>['under']): Finding =>
    findingOf(judge(onPart(own, value, under === undefined ? {} : { under })), `${check}@spot`);
  const rated = (celsius: number): PartInput => ({ ...part, rating: { temperature: `${celsius} °C` } });
  const middle = Math.round((least + most) / 2);

  it(`rated ${middle} °C: at it undecided, 2 K below passes, 2 K above fails, two standard uncertainties away`, () => {
    expect(judged(`${middle} °C ± 2 K`, rated(middle))).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    const inside = judged(`${middle - 2} °C ± 2 K`, rated(middle));
    expect(inside).toMatchObject({
      outcome: 'pass',
      reason: 'met',
      state: 'labelLoad',
      limit: { name: 'ratedTemperature', grade: 'official-text' },
    });
    expect(inside.probability).toBeCloseTo(0.977249868, 5);
    expect(inside.margin).toBeCloseTo((middle - 2 - 40) / (middle - 40), 9);
    expect(judged(`${middle + 2} °C ± 2 K`, rated(middle))).toMatchObject({ outcome: 'fail', consequence, headline: true });
  });

  it(`no rating read: below ${least} °C passes, above ${most} °C fails, between them nobody can tell`, () => {
    expect(judged(`${least - 2} °C ± 2 K`)).toMatchObject({ outcome: 'pass', limit: { name: 'lowestRating' } });
    expect(judged(`${middle} °C ± 2 K`)).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
      headline: false,
      probability: null,
    });
    expect(judged(`${most - 2} °C ± 2 K`).outcome).toBe('inconclusive');
    expect(judged(`${most + 2} °C ± 2 K`)).toMatchObject({
      outcome: 'fail',
      consequence,
      headline: headlined,
      limit: { name: 'highestRating' },
    });
    expect(noteKeys(judged(`${middle} °C ± 2 K`))).toContain('ratingNotRead');
  });

  it('a rating that nobody could read is no better than none', () => {
    const smudged = { ...part, rating: { temperature: { state: 'unknown', because: 'smudged' } } } as const;
    expect(judged(`${middle} °C ± 2 K`, smudged).outcome).toBe('inconclusive');
  });

  it('a wide doubt decides nothing; an unknown one nothing near the limit', () => {
    expect(judged(`${middle - 10} °C ± 30 K`, rated(middle)).outcome).toBe('inconclusive');
    expect(judged(`${middle - 2} °C`, rated(middle))).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
  });

  it('bounds are one-sided', () => {
    expect(judged(`> ${middle + 20} °C`, rated(middle)).outcome).toBe('fail');
    expect(judged(`< ${middle - 20} °C`, rated(middle)).outcome).toBe('pass');
    expect(judged(`< ${middle + 20} °C`, rated(middle)).outcome).toBe('inconclusive');
  });

  it('a cooler room is scaled to the highest ambient', () => {
    // 15 K more room, 1.075 K per kelvin: 16.1 K hotter, so 10 K below the rating fails
    const finding = judged(`${middle - 10} °C ± 2 K`, rated(middle), { ...HOT_ROOM, ambient: '25 °C ± 0 K' });
    expect(finding.outcome).toBe('fail');
    expect(noteKeys(finding)).toContain('scaledToHighestAmbient');
  });

  it('with the cover off it can fail and never pass', () => {
    expect(judged('50 °C ± 1 K', rated(middle), { ...HOT_ROOM, cover: 'open' })).toMatchObject({
      outcome: 'inconclusive',
      reason: 'oneSided',
    });
    expect(judged(`${middle + 5} °C ± 1 K`, rated(middle), { ...HOT_ROOM, cover: 'open' }).outcome).toBe('fail');
  });

  itIsNotComparedWhen(check, part);
}

/** What leaves a temperature uncompared, whatever its limit. */
export function itIsNotComparedWhen(check: string, part: PartInput, place: Partial<PlaceInput> = {}): void {
  const judged = (value: Spot[1], under: NonNullable<Spot[2]>['under'] = HOT_ROOM): Finding =>
    findingOf(judge(onPart(part, value, { place, under })), `${check}@spot`);

  it('conditions that nobody wrote down make it not comparable', () => {
    for (const key of ['mains', 'ambient', 'cover', 'minutes', 'loads'] as const) {
      const { [key]: _left, ...under } = HOT_ROOM;
      expect(judged('60 °C ± 1 K', under), key).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    }
  });

  it('nobody looked, could not tell, cannot now, struck', () => {
    expect(findingsOf(judge(), check)).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(judged({ state: 'unknown', because: 'the wire came off' })).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
    expect(judged({ state: 'cannotNow', since: 'burnt' })).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
    expect(judged({ v: '150 °C', struck: 'wire came off' })).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
  });

  it('a temperature of another kind of part asks nothing here', () => {
    const other: PartInput = { id: 'x1', ref: 'X1', kind: 'connector' };
    expect(findingsOf(judge(onPart(other, '60 °C ± 1 K')), check)).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
  });
}
