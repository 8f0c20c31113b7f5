import { describe, expect, it } from 'vitest';
import { SURFACES } from '../../src/core/evidence/sample.ts';
import type { Finding } from '../../src/core/result/assessment.ts';
import { surfaceEmissivity } from '../../src/core/table/camera-makers/2026/surface-emissivity.ts';
import { findingOf, judge, noteKeys } from './build-case.ts';
import { face, type PlaceInput, spot, usbPort, WARM } from './evidence-pieces.ts';

// Plastic may be 77 °C for a touch of 1 to 10 s (IEC 62368-1 table 38, TS1, secondary).
function seen(surface: PlaceInput['surface'], celsius = '60 °C ± 1 K', more: Partial<PlaceInput> = {}): Finding {
  const rows = [{ id: 'one', place: 'face', value: celsius, by: 'infrared', cameraEmissivity: '0.95', reflected: '25 °C ± 0 K' }] as const;
  const place = { ...face(), ...(surface === undefined ? {} : { surface }), ...more };
  return findingOf(
    judge({
      ports: [usbPort()],
      places: [place],
      exhibits: [spot('face', celsius, { rows: [...rows], under: { ...WARM, loads: [...WARM.loads] } })],
    }),
    'burn/enclosure-temperature@face',
  );
}
const celsiusOf = ({ measured }: Finding): number => (measured !== null && 'value' in measured ? measured.value - 273.15 : Number.NaN);

describe('a surface under a camera whose emissivity nobody stated', () => {
  it('is looked up by what it is: plastic radiates 0.94, so 60 °C at 0.95 is a third of a kelvin more', () => {
    const finding = seen('plastic');
    expect(finding.outcome).toBe('pass');
    expect(celsiusOf(finding)).toBeGreaterThan(60.1);
    expect(celsiusOf(finding)).toBeLessThan(60.6);
  });

  it('tells how far the two models of the camera lie apart, and counts it as doubt', () => {
    const judged = judge({
      ports: [usbPort()],
      places: [{ ...face(), surface: 'partOnBoard' }],
      exhibits: [
        spot('face', '60 °C ± 1 K', {
          rows: [{ id: 'one', place: 'face', value: '60 °C ± 1 K', by: 'infrared', cameraEmissivity: '0.95', reflected: '25 °C ± 0 K' }],
        }),
      ],
    });
    const step = judged.steps.find(({ formula }) => formula === 'thermal/true-temperature-in-band')!;
    expect(step.notes.map(({ key }) => key)).toContain('cameraModels');
    expect(step.budget.map(({ means }) => means)).toContain('cameraBand');
  });

  it.each(['metalOnBoard', 'copper', 'tinned', 'solder', 'bareAluminium', 'oxidisedAluminium', 'anodisedAluminium'] as const)(
    'bare metal (%s) is refused: tape or paint it',
    (surface) => {
      const finding = seen(surface);
      expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'refusedEvidence' });
      expect(noteKeys(finding)).toContain('bareMetal');
    },
  );

  it('an emissivity that was stated outranks the list, and a surface that nobody named stays unknown', () => {
    expect(celsiusOf(seen('copper', undefined, { emissivity: '0.95 ± 0.02' }))).toBeCloseTo(60, 2);
    expect(noteKeys(seen(undefined))).toContain('emissivityUnknown');
  });

  it('every surface that a case can name is in the list', () => {
    expect(surfaceEmissivity.rows.map(([key]) => key).sort()).toEqual([...SURFACES].sort());
  });
});
