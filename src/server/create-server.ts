import { OpenAPIHono } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import { HTTPException } from 'hono/http-exception';
import { MOST_CASE_BYTES } from '../app/case-source.ts';
import { CasebookRefused } from '../app/casebook/casebook-refused.ts';
import { guardAccess } from './access.ts';
import { servePages } from './pages.ts';
import { safeHeaders } from './policy.ts';
import { answerProblem, problemOf, toProblem } from './problem.ts';
import { accessRoutes } from './route/access-routes.ts';
import { caseRoutes } from './route/case-routes.ts';
import { casebookRoutes } from './route/casebook-routes.ts';
import { eventRoute } from './route/event-route.ts';
import { fileRoutes } from './route/file-routes.ts';
import { publishedRoutes } from './route/published-routes.ts';
import { runRoutes } from './route/run-routes.ts';
import type { Workspace } from './workspace.ts';

const VERSION_OF_INTERFACE = '1';
const UNSUPPORTED_MEDIA = 415; // RFC 9110, 15.5.16

/** The local server: thin routes over the desk and the store, guarded before anything is looked at. */
export function createServer(workspace: Workspace): OpenAPIHono {
  const app = new OpenAPIHono({
    defaultHook: (result) => {
      if (result.success) return;
      const [issue] = result.error.issues;
      const place = issue === undefined ? '' : `/${issue.path.map(String).join('/')}`;
      return answerProblem(
        toProblem(422, 'not-understood', `${place === '/' ? 'The request' : place}: ${issue?.message ?? 'not understood'}.`, place),
      );
    },
  });
  app.use(safeHeaders);
  app.use(guardAccess(workspace.access));
  app.use('/api/*', async (context, next) => {
    // files and archives have limits of their own and are never held in memory
    const streams = context.req.path === '/api/unpack' || context.req.path.endsWith('/files');
    return streams ? next() : limit(context, next);
  });
  accessRoutes(app, workspace);
  casebookRoutes(app, workspace);
  caseRoutes(app, workspace);
  eventRoute(app, workspace);
  fileRoutes(app, workspace);
  publishedRoutes(app, workspace);
  runRoutes(app, workspace);
  app.doc31('/api/openapi.json', {
    openapi: '3.1.0',
    info: { title: 'Mainsworthy', version: VERSION_OF_INTERFACE, description: 'The local workspace: cases, evidence, Assessments.' },
  });
  app.all('/api/*', (context) => answerProblem(toProblem(404, 'no-such-page', `There is nothing at ${context.req.path}.`)));
  app.get('*', servePages(workspace.pages));
  app.onError((error) => {
    if (error instanceof CasebookRefused) return answerProblem(problemOf(error.refusal));
    if (error instanceof SyntaxError || error.message.includes('Malformed JSON'))
      return answerProblem(toProblem(400, 'not-json', 'The body is not JSON.'));
    if (error instanceof HTTPException && error.status === UNSUPPORTED_MEDIA)
      return answerProblem(toProblem(error.status, 'not-json', 'The body has to be JSON, and to say so in its content type.'));
    console.error(error);
    return answerProblem(toProblem(500, 'defect', 'A defect of the tool, not of your input; what was entered before is kept.'));
  });
  return app;
}

const limit = bodyLimit({
  maxSize: MOST_CASE_BYTES,
  onError: () => answerProblem(toProblem(413, 'too-large', `The body is larger than ${MOST_CASE_BYTES} bytes.`)),
});
