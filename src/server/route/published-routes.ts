import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import { describePublishing, listPublished, movedSince, publish, readPublished, reportPublished } from '../../app/casebook/publish.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { reportPolicy } from '../policy.ts';
import { answer, answerProblem, problemOf } from '../problem.ts';
import { caseId } from '../schema.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

/** Published Assessments of a case: numbered, kept as bytes, never changed. */
export function publishedRoutes(app: OpenAPIHono, { store, desk, now }: Workspace): void {
  const published = z
    .object({ number: z.number().int(), revision: z.number().int(), at: z.string(), sha256: z.string() })
    .openapi('Published');
  const path = '/api/cases/{id}/published';

  app.openapi(
    described({ method: 'post', path, summary: 'Publish the case as it is judged now', params: caseId, gives: published }),
    async (context) => answer(context, await publish(store, desk, validIn<{ id: string }>(context, 'param').id, now())),
  );

  app.openapi(
    described({ method: 'get', path, summary: 'What was published of a case', params: caseId, gives: z.array(published) }),
    async (context) => answer(context, await listPublished(store, validIn<{ id: string }>(context, 'param').id)),
  );

  const numbered = caseId.extend({
    number: z.coerce
      .number()
      .int()
      .min(1)
      .openapi({ param: { name: 'number', in: 'path' } }),
  });
  app.openapi(
    described({
      method: 'get',
      path: `${path}/{number}`,
      summary: 'A published Assessment, byte for byte',
      params: numbered,
      gives: 'application/json',
    }),
    async (context) => {
      const { id, number } = validIn<z.infer<typeof numbered>>(context, 'param');
      const kept = await readPublished(store, id, number);
      if (isRefusal(kept)) return answerProblem(problemOf(kept));
      return new Response(kept.bytes as never, { headers: { 'content-type': 'application/json', etag: `"${kept.sha256}"` } });
    },
  );

  const view = z
    .object({
      name: z.string(),
      sample: z.string(),
      invented: z.boolean(),
      failure: z.string(),
      coverage: z.string(),
      caseSha256: z.string(),
      tool: z.string(),
      rules: z.object({ version: z.string(), sha256: z.string() }),
    })
    .openapi('PublishedView');
  const publishing = z
    .object({ now: view.extend({ revision: z.number().int() }), published: z.array(published.extend({ view: z.union([view, z.null()]) })) })
    .openapi('Publishing');
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/publishing',
      summary: 'What is published of a case, and what would be published of it now',
      params: caseId,
      gives: publishing,
    }),
    async (context) => answer(context, await describePublishing(store, desk, validIn<{ id: string }>(context, 'param').id)),
  );

  app.openapi(
    described({
      method: 'get',
      path: `${path}/{number}/report`,
      summary: 'The report of a published Assessment',
      params: numbered,
      gives: 'text/html',
    }),
    async (context) => {
      const { id, number } = validIn<z.infer<typeof numbered>>(context, 'param');
      const report = await reportPublished(store, id, number);
      if (isRefusal(report)) return answerProblem(problemOf(report));
      return new Response(report, {
        headers: { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': reportPolicy(report) },
      });
    },
  );

  const side = z.object({ markSvg: z.string(), words: z.string() });
  const words = z.union([z.object({ was: z.string(), now: z.string() }), z.null()]);
  const moved = z
    .object({
      verdict: words,
      coverage: words,
      rules: z.boolean(),
      tool: z.boolean(),
      rows: z.array(z.object({ id: z.string(), name: z.string(), was: side, now: side })),
    })
    .openapi('Moved');
  app.openapi(
    described({
      method: 'get',
      path: `${path}/{number}/moved`,
      summary: 'What the case says now otherwise than then',
      params: numbered,
      gives: moved,
    }),
    async (context) => {
      const { id, number } = validIn<z.infer<typeof numbered>>(context, 'param');
      return answer(context, await movedSince(store, desk, id, number));
    },
  );
}
