/** The ways of one build; each is a view of its own. */
export type Way = 'sheet' | 'prediction' | 'schedule' | 'proof';
export type Route = { readonly view: 'shop' } | { readonly view: 'build'; readonly id: string; readonly way: Way };

/** What an address leads to; one that cannot be read leads to the shop. */
export function placeOf(hash: string): Route {
  const found = /^#\/build\/([^/]+)(?:\/(prediction|schedule|proof))?$/.exec(hash);
  try {
    return found?.[1] ? { view: 'build', id: decodeURIComponent(found[1]), way: (found[2] ?? 'sheet') as Way } : { view: 'shop' };
  } catch {
    return { view: 'shop' };
  }
}
