import { amount, type Unit } from './units';

/** A point of a curve in the page's own units: where, and how much of the fan in percent. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** As typed: where, and how much. */
export type Pair = readonly [string, string];

const PAIR = /\[\s*([^\[\],]+?)\s*,\s*([^\[\],]+?)\s*\]/g;

/** The pairs of a typed curve, such as [[94 degC, 25 %], [106 degC, 100 %]]. */
export const pairsOf = (typed: string): readonly Pair[] => [...typed.matchAll(PAIR)].map((m) => [m[1] ?? '', m[2] ?? '']);

export const textOf = (pairs: readonly Pair[]): string => `[${pairs.map(([x, y]) => `[${x}, ${y}]`).join(', ')}]`;

/** A typed curve as it is drawn, or null where the page cannot tell. */
export function pointsOf(typed: string, unit: Unit): readonly Point[] | null {
  const points = pairsOf(typed).map(([x, y]) => ({ x: amount(x, unit), y: amount(y, '%') }));
  const known = points.filter((p): p is Point => p.x !== null && p.y !== null);
  return known.length === points.length && points.length > 0 ? known : null;
}

/** With one cell typed anew; the others stay as they were typed. */
export const withCell = (pairs: readonly Pair[], at: number, cell: 0 | 1, typed: string): readonly Pair[] =>
  pairs.map((pair, i) => (i !== at ? pair : cell === 0 ? [typed, pair[1]] : [pair[0], typed]));

export const withoutPair = (pairs: readonly Pair[], at: number): readonly Pair[] => pairs.filter((_, i) => i !== at);

const clamp = (v: number, low: number, high: number): number => Math.min(Math.max(v, low), Math.max(low, high));

/**
 * Where a point may go: not past its neighbours, no closer to them than the controller can tell apart, and, where a curve must not fall,
 * not below the one before or above the one behind.
 */
export function kept(points: readonly Point[], at: number, to: Point, apart: number, rises: boolean): Point {
  const before = points[at - 1];
  const behind = points[at + 1];
  return {
    x: clamp(to.x, before ? before.x + apart : -Infinity, behind ? behind.x - apart : Infinity),
    y: clamp(to.y, rises && before ? before.y : 0, rises && behind ? behind.y : 100),
  };
}

/** A point in the middle of the widest gap, and its place; null where there is no room for one. */
export function inserted(points: readonly Point[], apart: number): { readonly at: number; readonly point: Point } | null {
  let best: { at: number; wide: number } | null = null;
  for (let i = 1; i < points.length; i++) {
    const wide = (points[i]?.x ?? 0) - (points[i - 1]?.x ?? 0);
    if (wide >= 2 * apart && wide > (best?.wide ?? 0)) {
      best = { at: i, wide };
    }
  }
  const [a, b] = best ? [points[best.at - 1], points[best.at]] : [];
  return best && a && b ? { at: best.at, point: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 } } : null;
}

/** How much a curve asks for at a place: straight between its points, held beyond them. */
export function demandAt(points: readonly Point[], x: number): number {
  const behind = points.findIndex((p) => p.x > x);
  const b = points[behind];
  const a = points[behind - 1];
  if (!b) {
    return points.at(-1)?.y ?? 0;
  }
  return a ? a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) : b.y;
}
