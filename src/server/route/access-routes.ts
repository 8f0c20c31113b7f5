import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import { renderSVG } from 'uqr';
import { refuse } from '../../core/quantity/refusal.ts';
import { isLoopbackName, TOKEN_QUERY } from '../access.ts';
import { answer, answerProblem, problemOf } from '../problem.ts';
import { caseId } from '../schema.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

/** Whether other machines can reach the server, and the way of a phone into one case as a picture to point its camera at. */
export function accessRoutes(app: OpenAPIHono, { access }: Workspace): void {
  const told = z.object({ phones: z.boolean().openapi({ description: 'A phone in the same network can open a case.' }) }).openapi('Reach');
  const reached = (): string | undefined => access.hosts.find((host) => !isLoopbackName(host));

  app.openapi(described({ method: 'get', path: '/api/access', summary: 'Who can reach this server', gives: told }), (context) =>
    answer(context, { phones: access.token !== null && reached() !== undefined }),
  );

  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/phone',
      summary: 'The link for a phone as a QR code; it carries the access token, which no script is told',
      params: caseId,
      gives: 'image/svg+xml',
    }),
    (context) => {
      const host = reached();
      if (access.token === null || host === undefined)
        return answerProblem(
          problemOf(refuse('no-such-page', 'a link for a phone', 'a server that other machines reach, started with --host')),
        );
      const { id } = validIn<{ id: string }>(context, 'param');
      const link = `http://${host}/capture/${encodeURIComponent(id)}?${TOKEN_QUERY}=${encodeURIComponent(access.token)}`;
      return new Response(renderSVG(link), { headers: { 'content-type': 'image/svg+xml' } });
    },
  );
}
