import { signal } from '@preact/signals';

/** The ways of one build; each is a view of its own. */
export type Way = 'sheet' | 'prediction' | 'proof';
export type Route = { readonly view: 'shop' } | { readonly view: 'build'; readonly id: string; readonly way: Way };

function read(): Route {
  const found = /^#\/build\/([^/]+)(?:\/(prediction|proof))?$/.exec(window.location.hash);
  return found?.[1] ? { view: 'build', id: decodeURIComponent(found[1]), way: (found[2] ?? 'sheet') as Way } : { view: 'shop' };
}

export const route = signal<Route>(read());

window.addEventListener('hashchange', () => {
  // The skip link's own target is no place to go.
  if (window.location.hash === '' || window.location.hash.startsWith('#/')) {
    route.value = read();
    window.scrollTo(0, 0);
  }
});

export const buildLink = (id: string, way: Way = 'sheet'): string => `#/build/${encodeURIComponent(id)}${way === 'sheet' ? '' : `/${way}`}`;
