/** Values to change against the saved sheet, by key. */
export type Changes = Readonly<Record<string, string>>;

/** Where the work stands, what came before it and what was taken back. */
export interface History {
  readonly past: readonly Changes[];
  readonly now: Changes;
  readonly future: readonly Changes[];
}

const MOST = 200;

export const BLANK: History = { past: [], now: {}, future: [] };

export function step(history: History, next: Changes): History {
  return { past: [...history.past, history.now].slice(-MOST), now: next, future: [] };
}

/** The last step grows instead of a new one being made: many presses of one arrow key are one move. */
export function grow(history: History, next: Changes): History {
  return { past: history.past, now: next, future: [] };
}

export function back(history: History): History {
  const before = history.past.at(-1);
  if (!before) {
    return history;
  }
  return { past: history.past.slice(0, -1), now: before, future: [history.now, ...history.future] };
}

export function forth(history: History): History {
  const [after, ...rest] = history.future;
  if (!after) {
    return history;
  }
  return { past: [...history.past, history.now], now: after, future: rest };
}

export function sameChanges(a: Changes, b: Changes): boolean {
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => a[key] === b[key]);
}
