import type { SiUnit } from '../quantity/unit.ts';
import type { Grade } from '../source/grade.ts';
import { findSeries } from './e-series.ts';
import { getMarkingSource } from './marking-sources.ts';
import type { NoteKey, Part, Reading, ReadingKind, SchemeSlug, Tolerance } from './reading.ts';

/** SI unit of what a kind of part is marked with. */
export const UNIT_OF_PART: Readonly<Record<Part, SiUnit>> = { resistor: 'Ω', capacitor: 'F', inductor: 'H', diode: 'V' };
const IN_SERIES: readonly ReadingKind[] = ['resistor', 'capacitor', 'inductor']; // parts made in the values of IEC 60063

/** One reading of a value, with what the mark does not say left null. A resistor of 0 Ω is a jumper; a value outside every series says so. */
export function buildReading(
  part: Part,
  value: number,
  scheme: SchemeSlug,
  more: {
    readonly tolerance?: Tolerance | null;
    readonly temperatureCoefficient?: number | null;
    readonly voltage?: number | null;
    readonly grades?: readonly Grade[];
    readonly notes?: readonly NoteKey[];
  } = {},
): Reading {
  const kind: ReadingKind = part === 'resistor' && value === 0 ? 'jumper' : part;
  const series = IN_SERIES.includes(kind) ? findSeries(value) : null;
  const notes = [...(more.notes ?? [])];
  if (series === null && IN_SERIES.includes(kind)) notes.push('in-no-series');
  return {
    kind,
    value,
    unit: UNIT_OF_PART[part],
    tolerance: more.tolerance ?? null,
    temperatureCoefficient: more.temperatureCoefficient ?? null,
    voltage: more.voltage ?? null,
    safetyClasses: [],
    series,
    scheme,
    source: getMarkingSource(scheme, ...(more.grades ?? [])),
    notes,
  };
}
