import type { Context } from 'hono';

/** A part of a request that its route has checked already; the schema of the route gives the type. */
export function validIn<T>(context: Context, part: 'json' | 'param' | 'query'): T {
  return (context.req.valid as (part: string) => unknown).call(context.req, part) as T;
}
