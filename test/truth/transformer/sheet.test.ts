import { describe, expect, it } from 'vitest';
import { judge } from '../build-case.ts';
import { electrical, type WOUND } from './electrical-case.ts';

const MU0 = 4e-7 * Math.PI;
const AREA = 19.2e-6; // EE16, TDK catalogue of 1998, as are its 1140 nH for one turn without a gap
const UNGAPPED = 1140e-9;
const forgotten = undefined as never;

function sheetOf(stack: Partial<typeof WOUND> = {}) {
  const [sheet] = judge(electrical({ stack })).transformers ?? [];
  const find = (key: string) => sheet?.numbers.find((one) => one.key === key)?.value;
  return {
    value: (key: string): number | undefined => find(key)?.value,
    doubt: (key: string): number | null | undefined => find(key)?.u,
    missing: (key: string) => sheet?.blocked.find((one) => one.key === key)?.missing,
  };
}

describe('the gap of 100 turns and 1 mH on an EE16', () => {
  it('is what the air must hold back beside the ferrite, less than without it, and in doubt by a quarter of the ferrite', () => {
    const sheet = sheetOf();
    const air = (MU0 * 1e4 * AREA) / 1e-3;
    const ferrite = (MU0 * AREA) / UNGAPPED;
    expect(sheet.value('gapOfInductance')).toBeCloseTo(air - ferrite, 9);
    expect(sheet.doubt('gapOfInductance')! / ferrite).toBeCloseTo(0.25 / Math.sqrt(3), 3);
    expect(sheet.value('gapWithoutCore')).toBeUndefined();
  });

  it('reads back: that gap gives 1 mH', () => {
    const gap = (MU0 * AREA * (1e7 - 1 / UNGAPPED) * 1e3).toFixed(6);
    expect(sheetOf({ gap: `${gap} mm ± 0 mm` }).value('inductanceOfGap')).toBeCloseTo(1e-3, 7);
  });

  it('says that the ferrite is left out where a core is known by its area alone', () => {
    const sheet = sheetOf({ core: 'XX 99', coreArea: '19.2 mm² ± 0 mm²' });
    expect(sheet.value('gapWithoutCore')).toBeCloseTo((MU0 * 1e4 * AREA) / 1e-3, 12);
    expect(sheet.value('gapOfInductance')).toBeUndefined();
  });

  it('takes a usual ferrite over the printed length where no inductance without a gap is printed, an EPC13', () => {
    const [area, length] = [12.5e-6, 30.6e-3];
    const air = (MU0 * 1e4 * area) / 1e-3;
    const gap = sheetOf({ core: 'EPC13' }).value('gapOfInductance')!;
    expect(air - gap).toBeGreaterThan(length / 2200);
    expect(air - gap).toBeLessThan(length / 1100);
  });

  it('is not told where the closed core gives no more than was measured', () => {
    expect(sheetOf({ inductance: '12 mH ± 0 %' }).missing('gapOfInductance')).toEqual(['inductanceBelowClosedCore']);
  });
});

describe('turns that saturation asks for: 1 mH, 0.4 A, 19.2 mm², 0.38 T', () => {
  it('54.8 are 55, whether anybody counted or not', () => {
    expect(1e-3 * 0.4).toBeCloseTo(54.825 * 0.38 * AREA, 8);
    expect(sheetOf().value('leastTurns')).toBe(55);
    expect(sheetOf({ outsideIn: [] }).value('leastTurns')).toBe(55);
    expect(sheetOf({ peakCurrent: forgotten }).missing('leastTurns')).toEqual(['peak']);
  });
});

describe('heat of the switch at 100 kHz, at the limit, from nominal mains', () => {
  const SHEET = { switchResistance: '5 Ω ± 0 Ω', fallTime: '60 ns ± 0 ns' };

  it('of a discontinuous stroke is that of its current and that of opening; it closes without current', () => {
    const sheet = sheetOf(SHEET);
    const rail = sheet.value('valleyAtNominal')!;
    expect(sheet.value('switchClosed')).toBeCloseTo(5 * sheet.value('primaryRms')! ** 2, 9);
    expect(sheet.value('switchOpening')).toBeCloseTo((0.4 * (rail + 150) * 60e-9 * 100e3) / 6, 9);
    expect(sheet.value('switchClosing')).toBeUndefined();
    expect(sheet.missing('switchClosing')).toBeUndefined();
    expect(sheet.value('switchLoss')).toBeCloseTo(sheet.value('switchClosed')! + sheet.value('switchOpening')!, 12);
  });

  it('opens onto the plateau where no clamp was read', () => {
    const sheet = sheetOf({ ...SHEET, clamp: forgotten });
    const rail = sheet.value('valleyAtNominal')!;
    expect(sheet.value('switchOpening')).toBeCloseTo((0.4 * (rail + sheet.value('reflected')!) * 60e-9 * 100e3) / 6, 9);
  });

  it('of a continuous stroke closes onto the current that is left, and is no sum before that time is known', () => {
    const open = sheetOf({ ...SHEET, peakCurrent: '0.7 A ± 0 A' });
    expect(open.missing('switchClosing')).toEqual(['riseTime']);
    expect(open.value('switchLoss')).toBeUndefined();
    const sheet = sheetOf({ ...SHEET, riseTime: '40 ns ± 0 ns', peakCurrent: '0.7 A ± 0 A' });
    const rail = sheet.value('valleyAtNominal')!;
    const start = 2 * sheet.value('middleOfStroke')! - 0.7; // a straight ramp: as far below its middle as its peak is above
    expect(start).toBeGreaterThan(0);
    expect(sheet.value('switchClosing')).toBeCloseTo((start * (rail + sheet.value('reflected')!) * 40e-9 * 100e3) / 6, 9);
  });

  it('says what the sheet of the switch would have to tell', () => {
    expect(sheetOf().missing('switchClosed')).toEqual(['switchResistance']);
    expect(sheetOf().missing('switchOpening')).toEqual(['fallTime']);
  });
});

describe('what a screen shows at the limit', () => {
  it('an on-time of L I over the rail, and a mean current of the power over the rail', () => {
    const sheet = sheetOf();
    const rail = sheet.value('valleyAtNominal')!;
    expect(sheet.value('onTime')).toBeCloseTo((1e-3 * 0.4) / rail, 12);
    expect(sheet.value('railCurrent')).toBeCloseTo(8 / rail, 9);
    expect(sheet.value('middleOfStroke')).toBeUndefined();
  });

  it('3.2 to 3.6 A into a short at a fixed frequency: ten times the peak of 0.4 A through one rectifier or the other', () => {
    const sheet = sheetOf();
    expect(sheet.value('shortedOutput')).toBeCloseTo(3.4, 12);
    expect(sheet.doubt('shortedOutput')! * Math.sqrt(3)).toBeCloseTo(0.2, 9);
    expect(sheetOf({ law: 'valleySwitched' }).value('shortedOutput')).toBeUndefined();
  });
});

describe('copper in the window', () => {
  it('is read against what handbooks reckon a window takes at most: 0.27 to 0.39 of it', () => {
    const window = { width: '10 mm', height: '3 mm' };
    const sheet = sheetOf({ window });
    const copper = (100 * 0.2 ** 2 + 10 * 0.5 ** 2) * (Math.PI / 4);
    expect(sheet.value('fill')).toBeCloseTo(copper / 30, 9);
    expect(sheet.value('fillToExpect')).toBeGreaterThan(0.79 * 0.61 * 0.55);
    expect(sheet.value('fillToExpect')).toBeLessThan(0.855 * 0.61 * 0.75);
    expect(sheetOf().value('fillToExpect')).toBeUndefined();
  });
});
