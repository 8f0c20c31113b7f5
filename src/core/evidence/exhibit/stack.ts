import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { side } from '../sample.ts';
import { id, quantity, words } from '../typed.ts';
import { value } from '../value.ts';

/** One wire end on its way to a pin: what it passes over, and what stands between. */
const lead = z.strictObject({
  id,
  end: z.enum(['start', 'finish']).optional(),
  /** Layers of this stack that it crosses; an empty list says that somebody followed it and it crosses none. */
  crosses: z.array(id),
  sleeved: value(z.boolean()).optional(),
  /** Wall of the sleeve. */
  wall: value(quantity('length')).optional(),
  photo: id.optional(),
});

const winding = z.strictObject({
  id,
  photo: id.optional(),
  is: z.literal('winding'),
  name: words,
  turns: value(quantity('ratio')),
  layers: value(quantity('ratio')).optional(),
  wire: value(quantity('length')).optional(),
  overall: value(quantity('length')).optional(),
  strands: value(quantity('ratio')).optional(),
  wireKind: value(z.enum(['enamelled', 'fullyInsulated', 'tripleInsulated', 'tapeCovered'])),
  /**
   * Pins of the part, start first. Where the part says which nets its pins stand on, the winding stands there too; what is no pin of the part may
   * be the conductor that the wire end goes to.
   */
  pins: z.tuple([value(id), value(id)]).optional(),
  /** Side of the barrier; without it the nets of its pins say it. */
  side: value(side).optional(),
  role: value(z.enum(['primary', 'secondary', 'auxiliary', 'screen'])).optional(),
  /** From the last turn to the wall of the former, at either end. */
  margins: z.tuple([value(quantity('length')), value(quantity('length'))]).optional(),
  /** Shortest way over the surface from this winding to the core. */
  toCore: value(quantity('length')).optional(),
  leads: z.array(lead).optional(),
  resistance: value(quantity('resistance')).optional(),
});

const insulation = z.strictObject({
  id,
  photo: id.optional(),
  is: z.literal('insulation'),
  material: value(words).optional(),
  layers: value(quantity('ratio')),
  each: value(quantity('length')).optional(),
  covers: value(z.enum(['whole', 'stopsShort'])),
  margins: z.tuple([value(quantity('length')), value(quantity('length'))]).optional(),
  sleeved: value(z.boolean()).optional(),
  /** How far it stops before the wall of the former, where it does. */
  short: value(quantity('length')).optional(),
  /** Folded up the wall of the former at both ends, so that no way leads around its edge. */
  folded: value(z.boolean()).optional(),
  overlap: value(quantity('length')).optional(),
});

/** Windings and insulation of a transformer in the order in which they come off, outside in. */
export const stack = z.strictObject({
  ...base,
  kind: z.literal('stack'),
  part: id,
  core: value(words),
  gap: value(quantity('length')).optional(),
  gapWhere: value(z.enum(['centreLeg', 'allLegs'])).optional(),
  inductance: value(quantity('inductance')).optional(),
  leakage: value(quantity('inductance')).optional(),
  outsideIn: z.array(z.discriminatedUnion('is', [winding, insulation])),
  /** The core as a conductor of the case, where distances name it. */
  coreConductor: id.optional(),
  coreArea: value(quantity('area')).optional(),
  coreLength: value(quantity('length')).optional(),
  ferrite: value(words).optional(),
  /** Room for the winding: along the leg, and from former to outer leg. */
  window: value(z.strictObject({ width: quantity('length'), height: quantity('length') })).optional(),
  former: value(z.strictObject({ tube: quantity('length'), wall: quantity('length') })).optional(),
  meanTurn: value(quantity('length')).optional(),
  bath: value(z.enum(['varnish', 'resin'])).optional(),
  /** Primary over secondary as the waveforms show it. */
  ratioSeen: value(quantity('ratio')).optional(),
  /** How the switch is driven. Formulas of one law are never used for a unit of another, nor for one whose law nobody named. */
  law: value(z.enum(['fixedFrequency', 'valleySwitched', 'selfOscillating', 'primaryCurrent'])).optional(),
  frequency: value(quantity('frequency')).optional(),
  /** Current in the primary at which the switch opens. */
  peakCurrent: value(quantity('current')).optional(),
  longestOn: value(quantity('ratio')).optional(),
  /** Voltage above the rail to which leakage is clamped. */
  clamp: value(quantity('voltage')).optional(),
  /** Of the switch, as its sheet gives it at the temperature it has: while closed, and how long its current takes to fall and to rise. */
  switchResistance: value(quantity('resistance')).optional(),
  fallTime: value(quantity('time')).optional(),
  riseTime: value(quantity('time')).optional(),
  switchPart: id.optional(),
  rectifierPart: id.optional(),
});
