import { hrefOf } from '../shell/route.ts';

/**
 * Where learners come in. The server knows how it is found on its network; the page itself was
 * perhaps opened as `localhost`, which is of no use to a telephone.
 */
export function joinAddress(addresses: readonly string[], code: string): string {
  return `${baseOf(addresses)}/${hrefOf({ page: 'join', code })}`;
}

/** To be typed: without scheme and without what follows, since the page asks for the code. */
export function typedAddress(addresses: readonly string[]): string {
  return baseOf(addresses).replace(/^https?:\/\//, '');
}

function baseOf(addresses: readonly string[]): string {
  const own = location.origin;
  const isOpenAddress = !/^https?:\/\/(localhost|127\.|\[::1\])/.test(own);
  const base = isOpenAddress ? own : (addresses[0] ?? own);
  return base.replace(/\/+$/, '');
}
