/** Least and greatest of pairs, of pairs of pairs and so on; NaN where all samples below are. */
interface Level {
  readonly low: Float32Array;
  readonly high: Float32Array;
}

/** What a plot draws: one time column and, for each line, a value or a gap at each time. */
export interface Drawable {
  readonly time_s: readonly number[];
  readonly lines: readonly (readonly (number | null)[])[];
}

const lesser = (a: number, b: number): number => (a < b || b !== b ? a : b);
const greater = (a: number, b: number): number => (a > b || b !== b ? a : b);

function above(below: Level): Level {
  const size = (below.low.length + 1) >> 1;
  const low = new Float32Array(size);
  const high = new Float32Array(size);
  for (let i = 0; i < size; i++) {
    const a = 2 * i;
    const b = a + 1 < below.low.length ? a + 1 : a;
    low[i] = lesser(below.low[a] as number, below.low[b] as number);
    high[i] = greater(below.high[a] as number, below.high[b] as number);
  }
  return { low, high };
}

/** Samples of one line, ready to be drawn at any scale without losing a peak. */
export class Pyramid {
  private readonly levels: readonly Level[];

  constructor(readonly values: Float32Array) {
    const levels: Level[] = [{ low: values, high: values }];
    for (let last = levels[0]; last && last.low.length > 1; last = levels.at(-1)) {
      levels.push(above(last));
    }
    this.levels = levels;
  }

  /** Of all samples; null without one. */
  range(): readonly [number, number] | null {
    const top = this.levels.at(-1);
    const low = top?.low[0] ?? NaN;
    return low === low ? [low, top?.high[0] ?? low] : null;
  }

  /** Least and greatest of the samples from bucket * 2^level on, in the order they rise or fall. */
  put(level: number, bucket: number, into: (number | null)[]): void {
    const at = this.levels[level];
    const low = at?.low[bucket] ?? NaN;
    if (!at || low !== low) {
      into.push(null, null);
      return;
    }
    const high = at.high[bucket] as number;
    const first = this.values[bucket << level] as number;
    const last = this.values[Math.min(((bucket + 1) << level) - 1, this.values.length - 1)] as number;
    if (first <= last) {
      into.push(low, high);
    } else {
      into.push(high, low);
    }
  }
}

/** Index of the first time that is not before t. */
export function firstFrom(time_s: ArrayLike<number>, t: number): number {
  let low = 0;
  let high = time_s.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((time_s[middle] as number) < t) {
      low = middle + 1;
    } else {
      high = middle;
    }
  }
  return low;
}

/** Index of the time nearest to t, -1 without any. */
export function nearest(time_s: ArrayLike<number>, t: number): number {
  const after = Math.min(firstFrom(time_s, t), time_s.length - 1);
  const before = after - 1;
  return before >= 0 && t - (time_s[before] as number) < (time_s[after] as number) - t ? before : after;
}

/**
 * The part of some lines between two times, with one sample more on either side, in at most about `most` points: as
 * they are where they fit, else least and greatest of every few.
 */
export function drawable(time_s: Float64Array, lines: readonly Pyramid[], from_s: number, to_s: number, most: number): Drawable {
  const first = Math.max(0, firstFrom(time_s, from_s) - 1);
  const end = Math.min(time_s.length, firstFrom(time_s, to_s) + 2);
  if (end - first <= most) {
    return asTheyAre(time_s, lines, first, end);
  }
  const level = Math.ceil(Math.log2((2 * (end - first)) / most));
  const bucket = first >> level;
  const beyond = ((end - 1) >> level) + 1;
  const time: number[] = [];
  for (let b = bucket; b < beyond; b++) {
    time.push(time_s[b << level] as number, time_s[Math.min(((b + 1) << level) - 1, time_s.length - 1)] as number);
  }
  return {
    time_s: time,
    lines: lines.map((line) => {
      const values: (number | null)[] = [];
      for (let b = bucket; b < beyond; b++) {
        line.put(level, b, values);
      }
      return values;
    }),
  };
}

function asTheyAre(time_s: Float64Array, lines: readonly Pyramid[], first: number, end: number): Drawable {
  return {
    time_s: Array.from(time_s.subarray(first, end)),
    lines: lines.map((line) => Array.from(line.values.subarray(first, end), (v) => (v === v ? v : null))),
  };
}
