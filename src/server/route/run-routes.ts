import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import { streamSSE } from 'hono/streaming';
import type { LinesAsked, RunState } from '../../app/circuit/run-desk.ts';
import { sentence } from '../../core/quantity/refusal.ts';
import { answer } from '../problem.ts';
import { anything, caseId } from '../schema.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

const name = z.string().min(1).max(120);
const begin = z.object({ kind: z.enum(['points', 'faults']), level: name.nullable(), by: z.string().min(1).max(80) });
const lines = z.union([
  z.object({ level: name, point: name }),
  z.object({ level: name, fault: name, load: z.enum(['none', 'standby', 'full']) }),
]);
const state = z
  .object({
    kind: z.enum(['points', 'faults']),
    level: z.string(),
    done: z.number(),
    of: z.number(),
    ended: z.string().nullable(),
    why: z.array(z.string()),
  })
  .openapi('RunState');
const ALIVE_MS = 15_000; // a comment now and then, so that a dead connection is noticed

/** Runs of the traced circuit: started, watched, stopped, looked at. */
export function runRoutes(app: OpenAPIHono, { runs, stopping }: Workspace): void {
  const idOf = (context: Parameters<typeof validIn>[0]): string => validIn<{ id: string }>(context, 'param').id;

  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/runs',
      summary: 'What was run of the traced circuit',
      params: caseId,
      gives: anything,
    }),
    async (context) => answer(context, await runs.view(idOf(context))),
  );

  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/runs',
      summary: 'Run the traced circuit',
      params: caseId,
      body: begin,
      gives: state,
    }),
    async (context) => {
      const started = await runs.start(idOf(context), validIn<z.infer<typeof begin>>(context, 'json'));
      return answer(context, 'kind' in started ? toTold(started) : started);
    },
  );

  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/runs/stop',
      summary: 'Stop the run that is under way',
      params: caseId,
      gives: null,
    }),
    (context) => {
      runs.stop(idOf(context));
      return context.body(null, 204);
    },
  );

  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/runs/lines',
      summary: 'Lines of a simulated point or fault',
      params: caseId,
      body: lines,
      gives: anything,
    }),
    async (context) => answer(context, await runs.lines(idOf(context), validIn<LinesAsked>(context, 'json'))),
  );

  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/runs/events',
      summary: 'How far a run is, as it goes',
      params: caseId,
      gives: 'text/event-stream',
    }),
    (context) => {
      const id = idOf(context);
      return streamSSE(context, async (stream) => {
        const ended = new Promise<void>((resolve) => {
          stream.onAbort(resolve);
          stopping.addEventListener('abort', () => resolve(), { once: true });
        });
        const send = (one: RunState): void => void stream.writeSSE({ event: 'run', data: JSON.stringify(toTold(one)) });
        const stop = runs.listen(id, send);
        const now = runs.state(id);
        if (now !== null) send(now);
        const alive = setInterval(() => void stream.write(': still here\n\n'), ALIVE_MS);
        await ended;
        clearInterval(alive);
        stop();
      });
    },
  );
}

function toTold({ ended, ...rest }: RunState): z.infer<typeof state> {
  if (ended === null || typeof ended === 'string') return { ...rest, ended, why: [] };
  return { ...rest, ended: 'refused', why: ended.refused.map(sentence) };
}
