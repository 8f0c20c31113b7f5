import type { OpenAPIHono } from '@hono/zod-openapi';
import { streamSSE } from 'hono/streaming';
import { caseId } from '../schema.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

const ALIVE_MS = 15_000; // a comment now and then, so that a dead connection is noticed

/** What other tabs do to a case, as it happens. */
export function eventRoute(app: OpenAPIHono, { desk, stopping }: Workspace): void {
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/events',
      summary: 'Revisions of a case as they are written',
      params: caseId,
      gives: 'text/event-stream',
    }),
    (context) => {
      const { id } = validIn<{ id: string }>(context, 'param');
      return streamSSE(context, async (stream) => {
        const gone = new AbortController();
        const ended = new Promise<void>((resolve) => {
          stream.onAbort(resolve);
          // a tab that went away leaves nothing behind on the signal that lives as long as the server
          stopping.addEventListener('abort', () => resolve(), { once: true, signal: gone.signal });
        });
        const stop = desk.listen(
          id,
          (news) => void stream.writeSSE({ event: 'revision', id: String(news.revision), data: JSON.stringify(news) }),
        );
        const alive = setInterval(() => void stream.write(': still here\n\n'), ALIVE_MS);
        await ended;
        gone.abort();
        clearInterval(alive);
        stop();
      });
    },
  );
}
