import { z } from 'zod';
import { id, quantity, words } from './typed.ts';
import { value } from './value.ts';

/** One socket or lead; `levels` holds negotiated voltages beside the first. */
export const port = z.strictObject({
  id,
  name: words.optional(),
  kind: value(z.enum(['usbA', 'usbC', 'microB', 'barrel', 'bare', 'other'])),
  captive: value(z.strictObject({ length: quantity('length'), wire: words.optional() })).optional(),
  levels: z.array(
    z.strictObject({
      id,
      voltage: quantity('voltage'),
      printed: value(quantity('current')).optional(),
      from: z.enum(['label', 'listing', 'box']).optional(),
      range: z.strictObject({ from: quantity('voltage'), to: quantity('voltage') }).optional(),
    }),
  ),
  sharesWith: z.array(id).optional(),
});
export type Port = z.infer<typeof port>;

export const side = z.enum(['mains', 'output', 'earth', 'touchable', 'floating']);
export type Side = z.infer<typeof side>;

/** Nets, core, heat sinks, pins, enclosure: distances, barrier, nets and simulation terminals all name these. */
export const conductor = z.strictObject({
  id,
  name: words,
  side: value(side),
  /** On the mains side: stands before the first part that opens, so that an arc to another such conductor is fed by the socket. */
  beforeFuse: z.boolean().optional(),
  alias: z.array(words).optional(),
});
export type Conductor = z.infer<typeof conductor>;

export const PART_KINDS = [
  'resistor',
  'fusibleResistor',
  'fuse',
  'ntc',
  'varistor',
  'ceramicCapacitor',
  'filmCapacitor',
  'electrolyticCapacitor',
  'capacitor',
  'inductor',
  'commonModeChoke',
  'diode',
  'bridgeRectifier',
  'zener',
  'led',
  'bipolarTransistor',
  'mosfet',
  'transformer',
  'controller',
  'shuntReference',
  'optocoupler',
  'negotiationChip',
  'connector',
  'jumper',
  'heatSink',
  'load',
  'other',
] as const;
export const partKind = z.enum(PART_KINDS);

export const part = z.strictObject({
  id,
  ref: words,
  kind: value(partKind),
  asTyped: words.optional(),
  package: value(words).optional(),
  marking: value(words).optional(),
  value: value(words).optional(),
  measured: value(words).optional(),
  /** Of a capacitor, as measured; `how` of the reading says at which frequency. No check reads it. */
  seriesResistance: value(quantity('resistance')).optional(),
  rating: z
    .strictObject({
      voltage: value(quantity('voltage')).optional(),
      current: value(quantity('current')).optional(),
      power: value(quantity('power')).optional(),
      temperature: value(quantity('temperature')).optional(),
      ripple: value(quantity('current')).optional(),
      life: value(quantity('time')).optional(),
      meltingI2t: value(quantity('meltingIntegral')).optional(),
      /** Of a resistor: the single pulse it stands. */
      energy: value(quantity('energy')).optional(),
      tolerance: value(quantity('ratio')).optional(),
    })
    .optional(),
  safetyClass: value(z.enum(['X1', 'X2', 'X3', 'Y1', 'Y2', 'Y3', 'Y4'])).optional(),
  identity: value(z.enum(['established', 'claimed'])).optional(),
  /** Names as in the circuit lines: "A", "K", "+"; of a transformer "P.1" for the dot end of winding P. */
  pins: z.array(z.strictObject({ pin: words, net: value(id) })).optional(),
  /** Said to stand across the barrier. */
  crosses: z.boolean().optional(),
  /** Of a transformer, as traced; the stack has them as unwound. */
  windings: z.array(z.strictObject({ name: words, turns: value(quantity('ratio')).optional() })).optional(),
  law: value(z.looseObject({ law: words })).optional(),
  photo: id.optional(),
});
export type Part = z.infer<typeof part>;

const pixel = z.tuple([z.number(), z.number()]);

/**
 * A spot of solder on a board photo. `pin` is one of the pins of `part`, which tells its net; `net` stands here only while the part is not known.
 * `at`: pixels of the photo, right and down.
 */
export const pad = z.strictObject({ id, photo: id, at: pixel, part: id.optional(), pin: words.optional(), net: id.optional() });
export type Pad = z.infer<typeof pad>;

export const SURFACES = [
  'plastic',
  'paper',
  'glass',
  'ceramic',
  'mattPaint',
  'varnish',
  'partOnBoard',
  'epoxy',
  'solderMask',
  'tapeVinyl',
  'tapePolyimide',
  'sleeve',
  'ferrite',
  'metalOnBoard',
  'bareAluminium',
  'oxidisedAluminium',
  'anodisedAluminium',
  'copper',
  'tinned',
  'solder',
] as const;

export const SUBSTANCES = [
  'polycarbonate',
  'polycarbonateAbs',
  'abs',
  'polystyrene',
  'polyamideGlass',
  'pbtGlass',
  'petGlass',
  'phenolic',
  'polyesterTape',
  'polyimideTape',
  'pvcTape',
  'shrinkSleeve',
  'glassSleeve',
  'pvcWire',
] as const;

/** Somewhere a temperature was read. */
export const place = z.strictObject({
  id,
  name: words,
  part: id.optional(),
  outside: z.boolean().optional(),
  material: value(z.enum(['plastic', 'metal', 'glass', 'wood'])).optional(),
  emissivity: value(quantity('ratio')).optional(),
  /** What a camera looks at there; its emissivity is then looked up where none is stated. */
  surface: value(z.enum(SURFACES)).optional(),
  /** What plastic, tape, sleeve or wire it is, and the temperature that is printed on it or in its sheet. */
  substance: value(z.enum(SUBSTANCES)).optional(),
  bears: value(quantity('temperature')).optional(),
  windingClass: value(z.enum(['A', 'E', 'B', 'F', 'H'])).optional(),
  /** The place lies on the printed board: its laminate. */
  laminate: value(z.enum(['fr4', 'fr4HighCti', 'fr1', 'fr2', 'cem1', 'cem3'])).optional(),
});
export type Place = z.infer<typeof place>;
