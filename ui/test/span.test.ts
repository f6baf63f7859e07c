import { describe, expect, it } from 'vitest';
import { clock, inside, keyed, panned, pinched, zoomed } from '../src/lib/span';

const WHOLE = { from: -10, to: 90 };

describe('span', () => {
  it('stays within the whole', () => {
    expect(panned({ from: 0, to: 10 }, -50, WHOLE)).toEqual({ from: -10, to: 0 });
    expect(panned({ from: 0, to: 10 }, 500, WHOLE)).toEqual({ from: 80, to: 90 });
    expect(inside({ from: -100, to: 900 }, WHOLE)).toEqual(WHOLE);
    expect(inside({ from: 5, to: 5 }, { from: 5, to: 5 })).toEqual({ from: 5, to: 5 });
  });

  it('comes closer around a time that stays', () => {
    expect(zoomed({ from: 0, to: 40 }, 0.5, 10, WHOLE)).toEqual({ from: 5, to: 25 });
    expect(zoomed({ from: 0, to: 40 }, 100, 10, WHOLE)).toEqual(WHOLE);
    const closest = zoomed({ from: 0, to: 40 }, 1e-9, 10, WHOLE);
    expect(closest.to - closest.from).toBeCloseTo(0.5, 9);
  });

  it('keeps the times under two fingers under them', () => {
    const { from, to } = pinched([20, 40], [0.25, 0.75], WHOLE);
    expect(from).toBeCloseTo(10, 9);
    expect(to).toBeCloseTo(50, 9);
  });

  it('goes by keys', () => {
    const span = { from: 20, to: 40 };
    expect(keyed('ArrowRight', span, WHOLE)).toEqual({ from: 22, to: 42 });
    expect(keyed('PageUp', span, WHOLE)).toEqual({ from: 0, to: 20 });
    expect(keyed('End', span, WHOLE)).toEqual({ from: 70, to: 90 });
    expect(keyed('+', { from: 22, to: 38 }, WHOLE)).toEqual({ from: 25, to: 35 });
    expect(keyed('0', span, WHOLE)).toEqual(WHOLE);
    expect(keyed('a', span, WHOLE)).toBeNull();
  });

  it('reads times as people say them', () => {
    expect(clock(0)).toBe('0:00');
    expect(clock(245)).toBe('4:05');
    expect(clock(3845)).toBe('1:04:05');
    expect(clock(-5)).toBe('-0:05');
    expect(clock(59.96, 1)).toBe('1:00.0');
    expect(clock(1.25, 2)).toBe('0:01.25');
  });
});
