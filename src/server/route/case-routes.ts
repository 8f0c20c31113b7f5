import { ReadableStream } from 'node:stream/web';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { Edit, Foresee } from '../../app/casebook/desk.ts';
import { pack } from '../../app/casebook/pack.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { toSvgFile } from '../../present/figure/to-svg-file.ts';
import { PAPERS, renderDrawingSheet } from '../../present/schematic/render-drawing-sheet.ts';
import { SCHEMATIC_CSS } from '../../present/schematic/schematic-style.ts';
import { answerLines } from '../answer-lines.ts';
import { withoutPlace } from '../photo/without-place.ts';
import { toPictureBytes } from '../picture-bytes.ts';
import { reportPolicy } from '../policy.ts';
import { answer, answerProblem, problemOf } from '../problem.ts';
import { anything, caseAtDesk, caseId, edit, editAnswer } from '../schema.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

const by = z.object({ by: z.string().min(1).max(80) });
const MOST_TRACE = 100_000; // characters of circuit lines: thousands of parts
const MOST_SCREEN = 40_000; // characters of one kept position, panel or text that was not taken yet: the lines of a large board

/** One case: opened, changed, asked where a number comes from, printed, packed. */
export function caseRoutes(app: OpenAPIHono, { store, desk }: Workspace): void {
  app.openapi(
    described({ method: 'get', path: '/api/cases/{id}', summary: 'A case as it stands, judged', params: caseId, gives: caseAtDesk }),
    async (context) => answer(context, await desk.open(idOf(context))),
  );

  app.openapi(
    described({ method: 'post', path: '/api/cases/{id}/edits', summary: 'Change a case', params: caseId, body: edit, gives: editAnswer }),
    async (context) => answer(context, await desk.edit(idOf(context), validIn<Edit>(context, 'json'))),
  );

  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/undo',
      summary: 'Take the last step back',
      params: caseId,
      body: by,
      gives: editAnswer,
    }),
    async (context) => answer(context, await desk.undo(idOf(context), validIn<z.infer<typeof by>>(context, 'json').by)),
  );

  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/redo',
      summary: 'Bring the last step back',
      params: caseId,
      body: by,
      gives: editAnswer,
    }),
    async (context) => answer(context, await desk.redo(idOf(context), validIn<z.infer<typeof by>>(context, 'json').by)),
  );

  const drawn = z.object({ lines: z.string(), view: anything });
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/circuit',
      summary: 'The traced circuit as lines, and what is known of its parts and nets',
      params: caseId,
      gives: drawn,
    }),
    async (context) => answer(context, await desk.circuit(idOf(context))),
  );

  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/circuit/live',
      summary: 'The schematic as a page shows it, with the place of each part',
      params: caseId,
      gives: z.object({ drawing: anything }),
    }),
    async (context) => answer(context, await desk.liveDrawing(idOf(context))),
  );

  const ground = z.object({ ground: z.enum(['light', 'dark']).default('light') });
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/circuit/drawing',
      summary: 'The schematic as a file of its own',
      params: caseId,
      query: ground,
      gives: 'image/svg+xml',
    }),
    async (context) => {
      const found = await desk.drawing(idOf(context));
      if (isRefusal(found)) return answerProblem(problemOf(found));
      const file = toSvgFile(found.figure, validIn<z.infer<typeof ground>>(context, 'query').ground, SCHEMATIC_CSS);
      return new Response(file, {
        headers: {
          'content-type': 'image/svg+xml; charset=utf-8',
          'content-disposition': `attachment; filename="${fileNameOf(context)}-schematic.svg"`,
        },
      });
    },
  );

  const paper = z.object({ paper: z.enum(PAPERS).default('A4') });
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/circuit/sheet',
      summary: 'The schematic alone on a sheet to be printed',
      params: caseId,
      query: paper,
      gives: 'text/html',
    }),
    async (context) => {
      const found = await desk.drawing(idOf(context));
      if (isRefusal(found)) return answerProblem(problemOf(found));
      const sheet = renderDrawingSheet(found.figure, found.about, validIn<z.infer<typeof paper>>(context, 'query').paper);
      return new Response(sheet, {
        headers: { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': reportPolicy(sheet) },
      });
    },
  );
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/circuit/pdf',
      summary: 'The schematic as one page of a PDF',
      params: caseId,
      query: paper,
      gives: 'application/pdf',
    }),
    async (context) => {
      const found = await desk.drawing(idOf(context));
      if (isRefusal(found)) return answerProblem(problemOf(found));
      const size = validIn<z.infer<typeof paper>>(context, 'query').paper;
      // the library and its fonts are read when the first page is asked for
      const { toDrawingPdf } = await import('../../paper/to-drawing-pdf.ts');
      const file = await toDrawingPdf(found.figure, { about: found.about, paper: size, tool: found.tool, at: new Date() });
      return new Response(file, {
        headers: {
          'content-type': 'application/pdf',
          'content-disposition': `attachment; filename="${fileNameOf(context)}-schematic-${size}.pdf"`,
        },
      });
    },
  );

  const traced = z.object({
    by: z.string().min(1).max(80),
    base: z.number().int().nonnegative(),
    step: z.string().min(1).max(120),
    text: z.string().max(MOST_TRACE),
  });
  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/circuit',
      summary: 'Take circuit lines into a case',
      params: caseId,
      body: traced,
      gives: editAnswer,
    }),
    async (context) => answer(context, await desk.trace(idOf(context), validIn<z.infer<typeof traced>>(context, 'json'))),
  );

  const padded = z.object({
    by: z.string().min(1).max(80),
    base: z.number().int().nonnegative(),
    step: z.string().min(1).max(120),
    pad: z.union([
      z.object({
        id: z.string().max(40),
        photo: z.string().max(40),
        at: z.tuple([z.number(), z.number()]),
        pin: z.string().max(80),
        net: z.string().max(80),
      }),
      z.object({ gone: z.string().max(40) }),
    ]),
  });
  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/pads',
      summary: 'Take a pad that was clicked on a photo into the circuit, or let one go',
      params: caseId,
      body: padded,
      gives: editAnswer,
    }),
    async (context) => answer(context, await desk.pad(idOf(context), validIn<z.infer<typeof padded>>(context, 'json'))),
  );

  const asked = z.object({
    by: z.string().min(1).max(80),
    base: z.number().int().nonnegative(),
    step: z.string().min(1).max(120),
    soak: z.string().max(40),
    withinK: z.number().positive(),
  });
  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/foresee',
      summary:
        'Where a soak is heading, worked out and kept; a line of JSON after each temperature, then the answer or what stands in the way',
      params: caseId,
      body: asked,
      gives: 'application/jsonl',
    }),
    (context) => {
      const [id, ask] = [idOf(context), validIn<Foresee>(context, 'json')];
      return Promise.resolve(answerLines((watch) => desk.foresee(id, ask, watch)));
    },
  );

  const exhibit = caseId.extend({
    exhibit: z
      .string()
      .max(40)
      .openapi({ param: { name: 'exhibit', in: 'path' } }),
  });
  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/pictures/{exhibit}',
      summary: 'A thermal picture: width and height as two 32-bit numbers, then °C as 32-bit floats, row by row, all little-endian',
      params: exhibit,
      gives: 'application/octet-stream',
    }),
    async (context) => {
      const field = await desk.picture(idOf(context), validIn<z.infer<typeof exhibit>>(context, 'param').exhibit);
      return isRefusal(field)
        ? answerProblem(problemOf(field))
        : new Response(toPictureBytes(field) as never, { headers: { 'content-type': 'application/octet-stream' } });
    },
  );

  const step = caseId.extend({
    step: z
      .string()
      .max(400)
      .openapi({ param: { name: 'step', in: 'path' } }),
  });
  app.openapi(
    described({ method: 'get', path: '/api/cases/{id}/steps/{step}', summary: 'Where a number comes from', params: step, gives: anything }),
    async (context) => answer(context, await desk.origin(idOf(context), validIn<z.infer<typeof step>>(context, 'param').step)),
  );

  app.openapi(
    described({ method: 'get', path: '/api/cases/{id}/report', summary: 'The report as one page', params: caseId, gives: 'text/html' }),
    async (context) => {
      const report = await desk.report(idOf(context));
      if (isRefusal(report)) return answerProblem(problemOf(report));
      // the report carries a stricter policy of its own, by the hash of its one style
      return new Response(report, {
        headers: { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': reportPolicy(report) },
      });
    },
  );

  const key = caseId.extend({
    key: z
      .string()
      .regex(/^[\w-]{1,60}$/)
      .openapi({ param: { name: 'key', in: 'path' } }),
  });
  const kept = z.object({ value: z.string().max(MOST_SCREEN).nullable() });
  app.openapi(
    described({
      method: 'put',
      path: '/api/cases/{id}/screen/{key}',
      summary: 'Keep where a panel stands; no evidence',
      params: key,
      body: kept,
      gives: null,
    }),
    async (context) => {
      const { key: name } = validIn<z.infer<typeof key>>(context, 'param');
      await store.cases.writeScreen(idOf(context), name, validIn<z.infer<typeof kept>>(context, 'json').value);
      return context.body(null, 204);
    },
  );

  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/pack',
      summary: 'The case with its files and history as one archive',
      params: caseId,
      gives: 'application/zip',
    }),
    async (context) => {
      const id = idOf(context);
      const archive = await pack(store, id, { withoutPlace });
      if (isRefusal(archive)) return answerProblem(problemOf(archive));
      return new Response(ReadableStream.from(archive) as never, {
        headers: { 'content-type': 'application/zip', 'content-disposition': `attachment; filename="${fileNameOf(context)}.zip"` },
      });
    },
  );
}

function fileNameOf(context: Context): string {
  return idOf(context).replace(/[^\w-]/g, '-');
}

function idOf(context: Context): string {
  return validIn<{ id: string }>(context, 'param').id;
}
