import { createRoute, z } from '@hono/zod-openapi';
import { problem } from '../schema.ts';

type Method = 'get' | 'post' | 'put' | 'delete';

interface Described {
  readonly method: Method;
  readonly path: string;
  readonly summary: string;
  readonly params?: z.ZodObject;
  readonly query?: z.ZodObject;
  readonly body?: z.ZodType;
  /** Of a success: a JSON shape, or another media type. */
  readonly gives: z.ZodType | string | null;
}

/** One route with its shapes, as it stands in the description of the whole interface. Every route can also answer a problem. */
export function described({ method, path, summary, params, query, body, gives }: Described) {
  const success =
    gives === null
      ? { 204: { description: 'done' } }
      : typeof gives === 'string'
        ? { 200: { description: summary, content: { [gives]: { schema: z.any() } } } }
        : { 200: { description: summary, content: { 'application/json': { schema: gives } } } };
  return createRoute({
    method,
    path,
    summary,
    request: {
      ...(params === undefined ? {} : { params }),
      ...(query === undefined ? {} : { query }),
      ...(body === undefined ? {} : { body: { required: true, content: { 'application/json': { schema: body } } } }),
    },
    responses: {
      ...success,
      default: { description: 'what stands in the way', content: { 'application/problem+json': { schema: problem } } },
    },
  });
}
