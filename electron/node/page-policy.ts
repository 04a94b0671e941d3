/** What the page may load and do, the same on every host that serves it. */
export const PAGE_POLICY = [
  "default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self' blob: corenose:", "font-src 'self'", "connect-src 'self'",
  "base-uri 'none'", "form-action 'none'", "frame-ancestors 'none'",
].join('; ');

/** Sent with every answer of a host, good or bad. */
export const PAGE_HEADERS = {
  'content-security-policy': PAGE_POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
} as const;
