import type { MiddlewareHandler } from 'hono';
import { isLoopbackName } from './access.ts';

/**
 * Content-security policy of a page: its own files with a nonce of this answer, no inline script or style, nothing from anywhere else.
 * What the figures need is adopted by script as a style sheet, which needs no exception.
 */
export function pagePolicy(nonce: string): string {
  return [
    "default-src 'none'",
    `script-src 'nonce-${nonce}' 'strict-dynamic'`,
    `style-src 'self' 'nonce-${nonce}'`,
    "font-src 'self'",
    "img-src 'self' blob:",
    "connect-src 'self'",
    "worker-src 'self'",
    "form-action 'self'",
    "base-uri 'none'",
    "frame-ancestors 'none'",
  ].join('; ');
}

/** A script of our own that runs beside the page: it may compute and answer, and ask nobody. */
export const SCRIPT_POLICY = "default-src 'none'; frame-ancestors 'none'";

/** What is no page of ours may do nothing at all. */
export const INERT_POLICY = "default-src 'none'; frame-ancestors 'none'; sandbox";

/** The report says by the hash of its one style what it may use; the header says the same and that nobody may frame it. */
export function reportPolicy(report: string): string {
  const own = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(report)?.[1] ?? "default-src 'none'";
  return `${own.replaceAll('&#39;', "'")}; frame-ancestors 'none'`;
}

/** Headers of every answer. No demand for encryption: on loopback there is none. */
export const safeHeaders: MiddlewareHandler = async (context, next) => {
  await next();
  const { headers } = context.res;
  headers.set('x-content-type-options', 'nosniff');
  headers.set('referrer-policy', 'no-referrer');
  // browsers heed it where nobody can sit in between, and complain of it elsewhere
  if (isLoopbackName(context.req.header('host') ?? '')) headers.set('cross-origin-opener-policy', 'same-origin');
  headers.set('cross-origin-resource-policy', 'same-origin');
  headers.set('permissions-policy', 'camera=(self), geolocation=(), microphone=(), usb=(), screen-wake-lock=(self)');
  if (!headers.has('content-security-policy')) headers.set('content-security-policy', INERT_POLICY);
  if (!headers.has('cache-control')) headers.set('cache-control', 'no-store');
};
