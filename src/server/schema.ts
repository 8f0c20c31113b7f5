import { z } from '@hono/zod-openapi';

/** Shapes of what the server takes and gives, as OpenAPI names them. What only passes through is described, not checked again. */
const json = z.any().openapi({ description: 'Any JSON value.' });

export const problem = z
  .object({
    type: z.string(),
    title: z.string(),
    status: z.number().int(),
    detail: z.string().openapi({ description: 'One sentence.' }),
    code: z.string().openapi({ description: 'Stable, kebab-case.' }),
    place: z.string().openapi({ description: 'The field of the case it is about, or empty.' }),
  })
  .openapi('Problem');

export const caseHead = z
  .object({
    id: z.string(),
    revision: z.number().int(),
    created: z.string(),
    changed: z.string(),
    archived: z.string().nullable(),
    removed: z.string().nullable(),
  })
  .openapi('CaseHead');

const args = z.record(z.string(), z.union([z.string(), z.number()]));
const stepName = z.object({ key: z.string().max(40), args }).openapi('StepName');
/** A choice of the two: nullable beside a name would make the name itself nullable everywhere. */
const nextStep = z.union([stepName, z.null()]);

export const change = z
  .object({
    at: z.string().max(400).openapi({ description: 'Place by ids, "/case/exhibits/sweep-1/order".', example: '/case/sample' }),
    was: json.optional(),
    to: json.optional(),
    after: z.string().nullable().optional(),
  })
  .openapi('Change');

const MOST_CHANGES = 5000; // a paste of a thousand rows of five cells

export const edit = z
  .object({
    by: z.string().min(1).max(80),
    base: z.number().int().nonnegative(),
    step: z.string().min(1).max(120),
    name: stepName,
    changes: z.array(change).min(1).max(MOST_CHANGES),
  })
  .openapi('Edit');

export const editAnswer = z
  .object({
    revision: z.number().int(),
    changes: z.array(change),
    conflicts: z.array(z.object({ at: z.string(), mine: json.optional(), theirs: json.optional() })),
    view: json,
    undo: nextStep,
    redo: nextStep,
  })
  .openapi('EditAnswer');

export const casePage = z
  .object({
    total: z.number().int(),
    counts: z.record(z.string(), z.record(z.string(), z.number())),
    rows: z.array(z.object({ head: caseHead, summary: json })),
  })
  .openapi('CasePage');

export const caseAtDesk = z
  .object({
    head: caseHead,
    state: json,
    view: json,
    undo: nextStep,
    redo: nextStep,
    screen: z.record(z.string(), z.string()),
  })
  .openapi('CaseAtDesk');

export const takenFile = z
  .object({
    sha256: z.string(),
    bytes: z.number().int(),
    media: z.string(),
    name: z.string(),
    understood: json.optional(),
    notUnderstood: z.string().optional(),
  })
  .openapi('TakenFile');

export const caseId = z.object({
  id: z
    .string()
    .max(80)
    .openapi({ param: { name: 'id', in: 'path' }, example: 'fell-12' }),
});
export const anything = json;
