import { describe, expect, it } from 'vitest';
import { drawable, firstFrom, nearest, Pyramid } from '../src/lib/pyramid';

/** Repeatable numbers between 0 and 1. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function bench(size: number, seed: number, gaps: number) {
  const next = numbers(seed);
  let t = -5;
  const time = Float64Array.from({ length: size }, () => (t += 0.01 + next()));
  const values = Float32Array.from({ length: size }, () => (next() < gaps ? NaN : 100 * next()));
  return { time, values, line: new Pyramid(values) };
}

const extremes = (values: Iterable<number | null>): [number, number] => {
  let low = Infinity;
  let high = -Infinity;
  for (const v of values) {
    if (v !== null && v === v) {
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
  }
  return [low, high];
};

describe('pyramid', () => {
  it('shows every sample where they fit, with one more on either side', () => {
    const time = Float64Array.from([0, 1, 2, 3, 4, 5]);
    const line = new Pyramid(Float32Array.from([5, NaN, 7, 6, 1, 2]));
    expect(drawable(time, [line], 1.5, 3, 100)).toEqual({ time_s: [1, 2, 3, 4], lines: [[null, 7, 6, 1]] });
  });

  it('loses no peak at any scale, and shows nothing that is not there', () => {
    const { time, values, line } = bench(5000, 1, 0.1);
    const next = numbers(2);
    for (let i = 0; i < 200; i++) {
      const a = -5 + 2500 * next();
      const b = a + 2600 * next();
      const most = 20 + Math.floor(500 * next());
      const shown = drawable(time, [line], a, b, most);
      const inside = values.subarray(firstFrom(time, a), firstFrom(time, b));
      const [low, high] = extremes(inside);
      const [drawnLow, drawnHigh] = extremes(shown.lines[0] ?? []);
      expect(drawnLow).toBeLessThanOrEqual(low);
      expect(drawnHigh).toBeGreaterThanOrEqual(high);
      expect(shown.time_s.length).toBeLessThanOrEqual(most + 6);
      expect(shown.time_s.length).toBe(shown.lines[0]?.length);
      for (const v of shown.lines[0] ?? []) {
        expect(v === null || values.includes(v)).toBe(true);
      }
      for (let k = 1; k < shown.time_s.length; k++) {
        expect(shown.time_s[k] as number).toBeGreaterThanOrEqual(shown.time_s[k - 1] as number);
      }
    }
  });

  it('keeps a gap that is wider than what it draws together', () => {
    const time = Float64Array.from({ length: 4096 }, (_, i) => i);
    const line = new Pyramid(Float32Array.from({ length: 4096 }, (_, i) => (i >= 1024 && i < 2048 ? NaN : i)));
    const shown = drawable(time, [line], 0, 4096, 64);
    const gone = shown.time_s.filter((_, i) => shown.lines[0]?.[i] === null);
    expect(Math.min(...gone)).toBe(1024);
    expect(Math.max(...gone)).toBe(2047);
  });

  it('knows the range of all, and of none', () => {
    expect(new Pyramid(Float32Array.from([3, NaN, -2, 8])).range()).toEqual([-2, 8]);
    expect(new Pyramid(Float32Array.from([NaN, NaN, NaN])).range()).toBeNull();
    expect(new Pyramid(new Float32Array(0)).range()).toBeNull();
    expect(drawable(new Float64Array(0), [new Pyramid(new Float32Array(0))], 0, 1, 10)).toEqual({ time_s: [], lines: [[]] });
  });

  it('finds times', () => {
    const time = [0, 1, 1, 4];
    expect(firstFrom(time, 1)).toBe(1);
    expect(firstFrom(time, 9)).toBe(4);
    expect(nearest(time, 2)).toBe(2);
    expect(nearest(time, 3)).toBe(3);
    expect(nearest(time, -7)).toBe(0);
    expect(nearest([], 1)).toBe(-1);
  });

  it('makes a million samples ready and cuts them to a screen without being noticed', () => {
    const { time, line, values } = bench(1_000_000, 3, 0);
    const begun = performance.now();
    const again = new Pyramid(values);
    const built = performance.now();
    drawable(time, [again], -5, 1e6, 2800);
    const cut = performance.now();
    expect(line.range()).toEqual(again.range());
    // A frame at 60 per second is 16.7 ms; measured about 15 and 1 ms, with room for a busy machine.
    expect(built - begun).toBeLessThan(250);
    expect(cut - built).toBeLessThan(50);
  });
});
