import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import { CasebookRefused } from '../../app/casebook/casebook-refused.ts';
import type { CaseQuery } from '../../app/casebook/casebook-store.ts';
import { noSuchCase } from '../../app/casebook/no-such-case.ts';
import { unpack } from '../../app/casebook/unpack.ts';
import { toForm, toReadingForm } from '../../present/workspace/form.ts';
import { answer, answerProblem, problemOf } from '../problem.ts';
import { anything, caseHead, caseId, casePage } from '../schema.ts';
import { type Spooled, spool } from '../spool.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

const MOST_ROWS = 200; // of one answer; a long list asks again as it is scrolled
const MOST_PACK_BYTES = 2 * 1024 ** 3; // 2 GiB
const many = z.union([z.string(), z.array(z.string())]).optional();

const query = z.object({
  search: z.string().max(200).optional(),
  failure: many,
  coverage: many,
  hazard: many,
  kind: many,
  claim: many,
  archived: z.enum(['true', 'false']).optional(),
  sort: z.string().max(120).optional().openapi({ description: 'verdict, changed, name, leastExamined, or margin:<check>' }),
  counted: z.enum(['true', 'false']).optional().openapi({ description: 'false: without counts of hazards, kinds and claims' }),
  places: z.string().max(120).optional().openapi({ description: 'a check: where every case stands on it' }),
  from: z.coerce.number().int().nonnegative().default(0),
  count: z.coerce.number().int().min(0).max(MOST_ROWS).default(50),
});

/** The list of cases, and what is done to a case as a whole. */
export function casebookRoutes(app: OpenAPIHono, { store, desk, now }: Workspace): void {
  app.openapi(
    described({ method: 'get', path: '/api/casebook', summary: 'Cases that fit, with counts for the filters', query, gives: casePage }),
    async (context) => {
      await settled(desk);
      return answer(context, await store.cases.find(toQuery(validIn<z.infer<typeof query>>(context, 'query'))));
    },
  );

  app.openapi(described({ method: 'get', path: '/api/form', summary: 'What can be entered where', gives: anything }), (context) =>
    answer(context, { case: toForm(), reading: toReadingForm() }),
  );

  const named = z.object({ name: z.string().trim().min(1).max(120), by: z.string().min(1).max(80), copyOf: z.string().max(80).optional() });
  app.openapi(
    described({ method: 'post', path: '/api/cases', summary: 'A new case, or a copy of one', body: named, gives: caseHead }),
    async (context) => answer(context, await desk.create(validIn<z.infer<typeof named>>(context, 'json'))),
  );

  const archiving = z.object({ archived: z.boolean() });
  app.openapi(
    described({
      method: 'put',
      path: '/api/cases/{id}/archived',
      summary: 'Put a case away, or take it out again',
      params: caseId,
      body: archiving,
      gives: caseHead,
    }),
    async (context) => {
      const { id } = validIn<{ id: string }>(context, 'param');
      const { archived } = validIn<z.infer<typeof archiving>>(context, 'json');
      return answer(context, (await store.cases.setArchived(id, archived ? now() : null)) ?? noSuchCase(id));
    },
  );

  app.openapi(
    described({
      method: 'delete',
      path: '/api/cases/{id}',
      summary: 'Take a case out of every list; it can be brought back',
      params: caseId,
      gives: null,
    }),
    async (context) => {
      const { id } = validIn<{ id: string }>(context, 'param');
      return (await store.cases.remove(id, now())) ? context.body(null, 204) : answerProblem(problemOf(noSuchCase(id)));
    },
  );

  app.openapi(
    described({ method: 'post', path: '/api/cases/{id}/restore', summary: 'Bring a removed case back', params: caseId, gives: caseHead }),
    async (context) => {
      const { id } = validIn<{ id: string }>(context, 'param');
      return answer(context, (await store.cases.restore(id)) ?? noSuchCase(id));
    },
  );

  app.openapi(
    described({
      method: 'post',
      path: '/api/unpack',
      summary: 'Take in a packed case; the body is the archive',
      bytes: {
        media: ['application/zip', 'application/octet-stream'],
        most: MOST_PACK_BYTES,
        means: `An archive as the workspace packs it, at most ${MOST_PACK_BYTES} bytes; taken whole or not at all.`,
      },
      gives: caseHead,
    }),
    async (context) => {
      const spooled = await spool(context.req.raw.body, MOST_PACK_BYTES, context.req.header('content-length'));
      if ('refused' in spooled) return answerProblem(problemOf(spooled));
      return answer(context, await taken(spooled, (archive) => unpack(store, archive, now())));
    },
  );
}

/** The list shows what was just entered; where the disk has no room for that, it shows what stood before. */
async function settled(desk: Workspace['desk']): Promise<void> {
  try {
    await desk.settle();
  } catch (error) {
    if (!(error instanceof CasebookRefused)) throw error;
  }
}

async function taken<T>(spooled: Spooled, work: (spooled: Spooled) => Promise<T>): Promise<T> {
  try {
    return await work(spooled);
  } finally {
    await spooled.remove();
  }
}

function toQuery(asked: z.infer<typeof query>): CaseQuery {
  const list = (value: string | string[] | undefined): string[] | undefined => (value === undefined ? undefined : [value].flat());
  const { sort } = asked;
  return {
    search: asked.search,
    failure: list(asked.failure),
    coverage: list(asked.coverage),
    hazard: list(asked.hazard),
    kind: list(asked.kind),
    claim: list(asked.claim),
    archived: asked.archived === 'true',
    sort: sort?.startsWith('margin:') === true ? { margin: sort.slice('margin:'.length) } : isSort(sort) ? sort : undefined,
    ...(asked.counted === 'false' ? { counted: false } : {}),
    ...(asked.places === undefined ? {} : { places: asked.places }),
    from: asked.from,
    count: asked.count,
  };
}

function isSort(sort: string | undefined): sort is 'verdict' | 'changed' | 'name' | 'leastExamined' {
  return ['verdict', 'changed', 'name', 'leastExamined'].includes(sort ?? '');
}
