/**
 * What a browser is told about the page.
 *
 * Everything comes from this server and nothing from the page's text, so an injected
 * script or a stray address has nowhere to run and nowhere to send. Style set from
 * script (as React, Pixi and the charts do) is not inline style and is not hindered.
 */
export const SECURITY_HEADERS = {
  'content-security-policy': [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "media-src 'self' blob:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; '),
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
} as const;

const YEAR_S = 31_536_000;

/** Built files carry a hash of their content in the name; every other file is asked for again. */
export function cacheControl(path: string): string {
  return /[\\/]built[\\/]/.test(path) ? `public, max-age=${YEAR_S}, immutable` : 'no-cache';
}
