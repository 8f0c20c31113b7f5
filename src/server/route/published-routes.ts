import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import { listPublished, publish, readPublished } from '../../app/casebook/publish.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
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
}
