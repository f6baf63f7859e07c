import { signal } from '@preact/signals';

/** What the server tells every page of a shop. */
export interface Told {
  readonly job: unknown;
  readonly runs: unknown;
  readonly sheet: { readonly build: string; readonly version: string };
  readonly proof: { readonly build: string };
  /** Told by this page: the line is there (again), or was refused; whatever was told in between is to be read. */
  readonly joined: null;
}

type Kind = keyof Told;
type Listener = (said: never) => void;

const KINDS = ['job', 'runs', 'sheet', 'proof'] as const;
/** Before a line that the server closed is tried again, in ms. */
const AGAIN = 4000;

/** False while nothing is heard of the server. */
export const hearing = signal(true);

const listeners = new Map<Kind, Set<Listener>>();
let source: EventSource | null = null;

function tell(kind: Kind, said: unknown): void {
  listeners.get(kind)?.forEach((listener) => listener(said as never));
}

function join(): void {
  source = new EventSource('api/events');
  source.onopen = () => {
    hearing.value = true;
    tell('joined', null);
  };
  source.onerror = () => {
    hearing.value = false;
    // A lost line is joined again by the browser, a refused one is not.
    if (source?.readyState === EventSource.CLOSED) {
      tell('joined', null);
      window.setTimeout(() => {
        if (!document.hidden && source?.readyState === EventSource.CLOSED) {
          join();
        }
      }, AGAIN);
    }
  };
  for (const kind of KINDS) {
    source.addEventListener(kind, (event) => tell(kind, JSON.parse((event as MessageEvent<string>).data)));
  }
}

// A browser has few lines to one server: a page nobody looks at gives its own back.
document.addEventListener('visibilitychange', () => {
  if (document.hidden) {
    source?.close();
  } else if (source?.readyState === EventSource.CLOSED) {
    join();
  }
});

/** Listens from now on; the answer ends it. The line opens with the first listener and stays. */
export function listen<K extends Kind>(kind: K, listener: (said: Told[K]) => void): () => void {
  const all = listeners.get(kind) ?? new Set();
  listeners.set(kind, all.add(listener as Listener));
  if (!source) {
    join();
  } else if (kind === 'joined' && source.readyState === EventSource.OPEN) {
    (listener as (said: null) => void)(null);
  }
  return () => {
    all.delete(listener as Listener);
  };
}
