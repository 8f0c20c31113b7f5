import { type OpenAPIHono, z } from '@hono/zod-openapi';
import { streamSSE } from 'hono/streaming';
import { caseId } from '../schema.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

const ALIVE_MS = 15_000; // a comment now and then, so that a dead connection is noticed

/** The tab that listens; what it writes itself it hears in the answer. */
const listening = z.object({ tab: z.string().max(80).optional() });

/** What other tabs do to a case, as it happens. */
export function eventRoute(app: OpenAPIHono, { desk, stopping }: Workspace): void {
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/events',
      summary: 'Revisions of a case as they are written',
      params: caseId,
      query: listening,
      gives: 'text/event-stream',
    }),
    (context) => {
      const { id } = validIn<{ id: string }>(context, 'param');
      const { tab } = validIn<z.infer<typeof listening>>(context, 'query');
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
          tab,
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
