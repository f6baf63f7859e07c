import { signal } from '@preact/signals';

export type Route = { readonly view: 'shop' } | { readonly view: 'build'; readonly id: string };

function read(): Route {
  const found = /^#\/build\/([^/]+)$/.exec(window.location.hash);
  return found?.[1] ? { view: 'build', id: decodeURIComponent(found[1]) } : { view: 'shop' };
}

export const route = signal<Route>(read());

window.addEventListener('hashchange', () => {
  // The skip link's own target is no place to go.
  if (window.location.hash === '' || window.location.hash.startsWith('#/')) {
    route.value = read();
    window.scrollTo(0, 0);
  }
});

export const buildLink = (id: string): string => `#/build/${encodeURIComponent(id)}`;
