import { createRoute, z } from '@hono/zod-openapi';
import { problem } from '../schema.ts';

type Method = 'get' | 'post' | 'put' | 'delete';

/** A body of plain bytes: the media types it may be sent as (a file is told apart by its content, not by what is said of it), and its end. */
export interface Bytes {
  readonly media: readonly string[];
  readonly most: number;
  readonly means: string;
}

interface Described {
  readonly method: Method;
  readonly path: string;
  readonly summary: string;
  readonly params?: z.ZodObject;
  readonly query?: z.ZodObject;
  readonly body?: z.ZodType;
  /** A body that is streamed as it comes, instead of JSON. */
  readonly bytes?: Bytes;
  /** Of a success: a JSON shape, or another media type. */
  readonly gives: z.ZodType | string | null;
}

/** One route with its shapes, as it stands in the description of the whole interface. Every route can also answer a problem. */
export function described({ method, path, summary, params, query, body, bytes, gives }: Described) {
  const success =
    gives === null
      ? { 204: { description: 'done' } }
      : typeof gives === 'string'
        ? { 200: { description: summary, content: { [gives]: { schema: schemaOf(gives) } } } }
        : { 200: { description: summary, content: { 'application/json': { schema: gives } } } };
  return createRoute({
    method,
    path,
    summary,
    request: {
      ...(params === undefined ? {} : { params }),
      ...(query === undefined ? {} : { query }),
      ...(body === undefined ? {} : { body: { required: true, content: { 'application/json': { schema: body } } } }),
      ...(bytes === undefined ? {} : { body: bodyOf(bytes) }),
    },
    responses: {
      ...success,
      default: { description: 'what stands in the way', content: { 'application/problem+json': { schema: problem } } },
    },
  });
}

/** OpenAPI 3.1.0, "Considerations for file uploads" (4.8.14.2): bytes have no type, `maxLength` is the end of the stream in octets. */
function bodyOf({ media, most, means }: Bytes) {
  return {
    required: true,
    description: means,
    content: Object.fromEntries(media.map((one) => [one, { schema: { maxLength: most } }])),
  };
}

/** What is no JSON of ours is text, or bytes without a type. */
function schemaOf(media: string) {
  if (media === 'application/json') return z.any();
  return media.startsWith('text/') || media.endsWith('+xml') ? { type: 'string' as const } : {};
}
