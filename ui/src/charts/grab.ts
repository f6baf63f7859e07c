import type { Place } from '../api/types';
import type { Part } from '../lib/parts';

/** Which edges follow the hand: -1 the left or lower one, 1 the right or upper one, 0 none. Both 0: the whole part. */
export interface Hold {
  readonly x: -1 | 0 | 1;
  readonly y: -1 | 0 | 1;
}

/** Where a part may go, in mm. */
export interface Bounds {
  readonly width_mm: number;
  readonly height_mm: number;
  readonly smallest_mm: number;
}

const WIDEST = 2500;
const TALLEST = 2000;

/** The face follows the radiator unless it has its own size, so the radiator may grow over it. */
export function boundsOf(part: Part, hold: Hold, face: { readonly width_mm: number; readonly height_mm: number }): Bounds {
  return part.id === 'radiator' && (hold.x !== 0 || hold.y !== 0)
    ? { width_mm: WIDEST, height_mm: TALLEST, smallest_mm: 100 }
    : { width_mm: face.width_mm, height_mm: face.height_mm, smallest_mm: 20 };
}

const clamp = (v: number, low: number, high: number): number => Math.min(Math.max(v, low), Math.max(low, high));

/** On the grid, once the hand has gone far enough for it; a slight slant of a level drag moves nothing up or down. */
function caught(start: number, by: number, grid: number): number {
  if (grid === 0) {
    return start + by;
  }
  return Math.abs(by) < grid / 2 ? start : Math.round((start + by) / grid) * grid;
}

/** One direction: start and length after the hand went `by`. */
function along(
  start: number, length: number, hold: -1 | 0 | 1, by: number, grid: number, end: number, smallest: number, whole: boolean,
): [number, number] {
  if (hold === 1) {
    const far = clamp(caught(start + length, by, grid), start + smallest, end);
    return [start, far - start];
  }
  if (hold === -1) {
    const near = clamp(caught(start, by, grid), 0, start + length - smallest);
    return [near, start + length - near];
  }
  return whole ? [clamp(caught(start, by, grid), 0, end - length), length] : [start, length];
}

/** A part after the hand moved by dx to the right and dy upwards, in mm, caught on a grid. */
export function moved(part: Place, hold: Hold, dx: number, dy: number, grid: number, bounds: Bounds): Place {
  const whole = hold.x === 0 && hold.y === 0;
  const [left, width] = along(
    part.left_mm, part.width_mm, hold.x, dx, grid, bounds.width_mm, bounds.smallest_mm, whole,
  );
  const [bottom, height] = along(
    part.bottom_mm, part.height_mm, hold.y, dy, grid, bounds.height_mm, bounds.smallest_mm, whole,
  );
  return { left_mm: left, bottom_mm: bottom, width_mm: width, height_mm: height };
}

/** Corners and edges a part can be held by, as far as its keys may be changed. */
export function holdsOf(part: Part, edges: boolean): readonly Hold[] {
  const { left, bottom, width, height } = part.edit;
  const xs: (-1 | 0 | 1)[] = [...(left && width ? [-1 as const] : []), 0, ...(width ? [1 as const] : [])];
  const ys: (-1 | 0 | 1)[] = [...(bottom && height ? [-1 as const] : []), 0, ...(height ? [1 as const] : [])];
  return ys
    .flatMap((y) => xs.map((x) => ({ x, y })))
    .filter(({ x, y }) => (x !== 0 && y !== 0) || (edges && (x !== 0 || y !== 0)));
}

export const movable = (part: Part): boolean => part.edit.left !== undefined || part.edit.bottom !== undefined;
