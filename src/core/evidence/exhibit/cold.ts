import { z } from 'zod';
import { base } from '../exhibit-base.ts';
import { id, quantity } from '../typed.ts';
import { value } from '../value.ts';

const between = z.tuple([id, id]);

/**
 * Before power: resistance, capacitance or insulation resistance between two conductors; and, last of all, how it bore a high test voltage.
 * Of that `value` is the voltage it held for the whole time, or at which it broke down.
 */
export const cold = z.discriminatedUnion('quantity', [
  z.strictObject({ ...base, kind: z.literal('cold'), quantity: z.literal('resistance'), between, value: value(quantity('resistance')) }),
  z.strictObject({ ...base, kind: z.literal('cold'), quantity: z.literal('capacitance'), between, value: value(quantity('capacitance')) }),
  z.strictObject({
    ...base,
    kind: z.literal('cold'),
    quantity: z.literal('insulation'),
    between,
    value: value(quantity('resistance')),
    testVoltage: quantity('voltage').optional(),
  }),
  z.strictObject({
    ...base,
    kind: z.literal('cold'),
    quantity: z.literal('strength'),
    between,
    value: value(quantity('voltage')),
    form: z.enum(['dc', 'ac']),
    outcome: z.enum(['held', 'brokeDown']),
    lasted: quantity('time').optional(),
  }),
]);
