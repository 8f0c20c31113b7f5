import type { Assessment, ThermalPictureSheet } from '../../core/result/assessment.ts';
import { drawLifeChart, lifeFindings } from '../figure/life-chart.ts';
import { SOAK_NARROW, SOAK_WIDE } from '../figure/soak-curve.ts';
import { celsiusText, drawThermalPicture, THERMAL_NARROW, THERMAL_WIDE } from '../figure/thermal-picture.ts';
import { amountText } from '../words/amount-text.ts';
import { STATE_WORDS } from '../words/case-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { NOTES } from '../words/notes.ts';
import type { FigurePart } from './figure-part.ts';
import type { ReportExtras } from './report-parts.ts';

/** Thermal pictures on which regions were drawn, where their numbers are at hand. */
export function thermalFigures({ pictures = [] }: Assessment, { thermal }: ReportExtras): readonly FigurePart[] {
  return pictures.flatMap((sheet): FigurePart[] => {
    const field = thermal?.get(sheet.exhibit);
    if (field === undefined) return [];
    return [
      {
        wide: drawThermalPicture(sheet, field, THERMAL_WIDE),
        narrow: drawThermalPicture(sheet, field, THERMAL_NARROW),
        title: `Thermal picture, ${sheet.exhibit}`,
        caption: `${sheet.regions.map(regionText).join('; ')}. ${coverText(sheet)} Lines join what the camera shows as equally hot.`,
      },
    ];
  });
}

function regionText({ name, takes, hottest, mean, surface, refused }: ThermalPictureSheet['regions'][number], index: number): string {
  const shown = takes === 'mean' ? `${celsiusText(mean)} on average` : `${celsiusText(hottest)} at the hottest`;
  const read =
    surface === null
      ? refused === null
        ? 'not read'
        : sentenceFor(NOTES, refused, {}).toLowerCase().replace(/\.$/, '')
      : `its surface ${amountText(surface)}`;
  return `${index + 1} ${name}: shown as ${shown}, ${read}`;
}

function coverText({ state, cover }: ThermalPictureSheet): string {
  const under = STATE_WORDS[state];
  const said = `${under.charAt(0).toUpperCase()}${under.slice(1)}`;
  if (cover === 'open') return `${said}, cover open: closed it is at least as hot.`;
  return cover === 'openedBefore' ? `${said}, cover just taken off: closed it is at least as hot.` : `${said}.`;
}

/** How long the electrolytic capacitors are expected to last. */
export function lifeFigures(assessment: Assessment): readonly FigurePart[] {
  if (lifeFindings(assessment).length === 0) return [];
  return [
    {
      wide: drawLifeChart(assessment, SOAK_WIDE),
      narrow: drawLifeChart(assessment, SOAK_NARROW),
      title: 'Expected life of the capacitors',
      caption:
        'from new at the duty of the reading, never what is left. Filled: in the room of the reading, with its 95 % band. Hollow: at the highest ambient. Stroke: two years of day and night. No maker answers for more than 15 years (a).',
    },
  ];
}
