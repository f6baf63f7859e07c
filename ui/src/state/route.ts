import { signal } from '@preact/signals';
import { placeOf, type Route, type Way } from '../lib/place';

export type { Route, Way } from '../lib/place';

function read(): Route {
  return placeOf(window.location.hash);
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
