import type { CaseInput } from '../../../src/core/evidence/case.ts';
import { millimetres } from '../demo-unit.ts';
import type { UnitModel } from '../unit-model.ts';

export type StackInput = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'stack' }>;
type Layer = StackInput['outsideIn'][number];
type Winding = Extract<Layer, { is: 'winding' }>;
type Insulation = Extract<Layer, { is: 'insulation' }>;

/** A winding as it comes off: margins and the way to the core by caliper, the wire by micrometer. */
export function wound(
  model: UnitModel,
  id: string,
  name: string,
  read: { turns: number; rows: number; bare: number; overall: number; marginsMm: [number, number]; toCoreMm: number },
  more: Partial<Winding> & Pick<Winding, 'side' | 'role'>,
): Winding {
  const micrometer = (mm: number): string => `${mm.toFixed(2)} mm ± 0.01 mm`;
  return {
    id,
    is: 'winding',
    name,
    turns: String(read.turns),
    layers: String(read.rows),
    wire: micrometer(read.bare),
    overall: micrometer(read.overall),
    wireKind: 'enamelled',
    margins: [millimetres(model, `${id} margin left`, read.marginsMm[0]), millimetres(model, `${id} margin right`, read.marginsMm[1])],
    toCore: millimetres(model, `${id} to core`, read.toCoreMm),
    leads: [],
    ...more,
  };
}

export function taped(id: string, layers: number, more: Partial<Insulation> = {}): Insulation {
  return {
    id,
    is: 'insulation',
    material: 'yellow polyester tape',
    layers: String(layers),
    each: '0.05 mm ± 0.01 mm',
    covers: 'whole',
    ...more,
  };
}

export const microhenries = (henries: number): string => `${(henries * 1e6).toFixed(henries > 1e-4 ? 0 : 1)} µH ± 2 %`;
