/**
 * Chromium knows no scheme of ours, and its automation cannot answer for one. The stand-in shows `corenose://app/x` as `https://app.corenose.invalid/x`, which
 * is secure and an origin of its own too, and turns every address back before the program sees it.
 */
const SUFFIX = '.corenose.invalid';

export function shown(address: string): string {
  const { protocol, host, pathname, search, hash } = new URL(address);
  return protocol === 'corenose:' ? `https://${host}${SUFFIX}${pathname}${search}${hash}` : address;
}

export function meant(address: string): string {
  if (!URL.canParse(address)) return address;
  const { protocol, host, pathname, search, hash } = new URL(address);
  return protocol === 'https:' && host.endsWith(SUFFIX) ? `corenose://${host.slice(0, -SUFFIX.length)}${pathname}${search}${hash}` : address;
}
