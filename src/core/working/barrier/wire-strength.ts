import { enamel } from '../../table/iec-60317-0-1/undated/enamel.ts';
import { lookUp } from '../../table/look-up.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Winding } from '../transformer/stack-facts.ts';
import { BASIC, DOUBLE, fixed, open, type Strength } from './strength.ts';

/** How thick the cover of a wire is against the thickest ordinary enamel (grade 2) of its copper; null where a diameter is missing. */
export function coverOverEnamel(winding: Winding): { ratio: number; overall: Derived; thickest: Derived } | null {
  const { wire, overall } = winding;
  if (wire.at === null || overall.at === null || wire.at.value <= 0) return null;
  const thickest = lookUp(enamel, wire.at, 'grade2', `${winding.field}/thickest-enamel`, 'd_2');
  if (thickest === null || thickest.value <= wire.at.value) return null;
  return { ratio: (overall.at.value - wire.at.value) / (thickest.value - wire.at.value), overall: overall.at, thickest };
}

const ZERO_DEFECT = 2; // fully insulated wire is built two to three times as thick as grade 2; practice of the bench
const PLAIN = 1.2; // within a fifth of grade 2 it is plain enamel, as a caliper reads thin wires

/**
 * What the cover of a wire stands for. Enamel is nothing. Three extruded layers are reinforced. Fully insulated wire looks like enamel and is
 * told by its build; an unexplained thick wire stays open.
 */
export function wireStrength(winding: Winding): Strength {
  const { wireKind, field } = winding;
  const fields = [`${field}/wireKind`];
  const cover = coverOverEnamel(winding);
  const thick = { key: 'wireBuild', args: { name: winding.name, ratio: cover?.ratio ?? 0 } };
  switch (wireKind.state) {
    case 'read':
      break;
    case 'notLooked':
    case 'struck':
    case 'cannotNow':
      return open({ notLooked: true, fields });
    case 'absent':
      return fixed(0, 0, { fields });
    case 'unknown':
      return cover !== null && cover.ratio <= PLAIN
        ? fixed(0, 0, { fields, notes: [thick] })
        : open({ fields, notes: cover === null ? [{ key: 'wireOverallMissing', args: { name: winding.name } }] : [thick] });
  }
  if (wireKind.v === 'tripleInsulated') return fixed(DOUBLE, DOUBLE, { fields });
  if (wireKind.v === 'tapeCovered') return fixed(0, BASIC, { fields });
  if (wireKind.v === 'fullyInsulated') {
    if (cover === null) return open({ fields, notes: [{ key: 'wireOverallMissing', args: { name: winding.name } }] });
    if (cover.ratio >= ZERO_DEFECT) return fixed(DOUBLE, DOUBLE, { fields, notes: [thick] });
    return cover.ratio <= PLAIN ? fixed(0, 0, { fields, notes: [thick] }) : open({ fields, notes: [thick] });
  }
  return cover !== null && cover.ratio >= ZERO_DEFECT ? open({ fields, notes: [thick] }) : fixed(0, 0, { fields });
}

/** The cover of a wire lies in series with everything that leads to it. */
export function withWires(own: Strength, windings: readonly Winding[]): Strength {
  const wires = windings.map(wireStrength);
  const low = wires.reduce((sum, wire) => sum + wire.low, own.low);
  const high = wires.reduce((sum, wire) => sum + wire.high, own.high);
  const solved = wires.some((wire) => wire.low >= DOUBLE);
  const told = wires.filter((wire) => wire.low !== wire.high || wire.low > 0);
  return {
    low,
    high,
    layers: wires.every((wire) => wire.low === 0 && wire.high === 0) ? own.layers : null,
    notLooked: !solved && (own.notLooked || wires.some((wire) => wire.notLooked)),
    // a wire that is reinforced by itself leaves nothing to ask of what lies beside it
    notes: [...(solved ? [] : own.notes), ...told.flatMap(({ notes }) => notes)],
    fields: [...(solved ? [] : own.fields), ...told.flatMap(({ fields }) => fields)],
  };
}
