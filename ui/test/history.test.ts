import { describe, expect, it } from 'vitest';
import { back, BLANK, forth, grow, step } from '../src/lib/history';

describe('history', () => {
  it('goes back and forth', () => {
    const two = step(step(BLANK, { a: '1 mm' }), { a: '2 mm' });
    expect(back(two).now).toEqual({ a: '1 mm' });
    expect(back(back(two)).now).toEqual({});
    expect(back(back(back(two))).now).toEqual({});
    expect(forth(back(two))).toEqual(two);
    expect(forth(two)).toBe(two);
  });

  it('loses what was taken back when something new is done', () => {
    const other = step(back(step(BLANK, { a: '1 mm' })), { b: '2 mm' });
    expect(other.future).toEqual([]);
    expect(back(other).now).toEqual({});
  });

  it('takes a run of presses back as one', () => {
    const run = grow(grow(step(BLANK, { a: '5 mm' }), { a: '10 mm' }), { a: '15 mm' });
    expect(back(run).now).toEqual({});
  });
});
