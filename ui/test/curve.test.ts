import { describe, expect, it } from 'vitest';
import { demandAt, inserted, kept, pairsOf, pointsOf, textOf, withCell, withoutPair } from '../src/lib/curve';

const TYPED = '[[94 degC, 25 %], [212 degF, 60 %], [106 degC, 1]]';

describe('a typed curve', () => {
  it('is taken apart and put together as it was typed', () => {
    const pairs = pairsOf(TYPED);
    expect(pairs).toEqual([['94 degC', '25 %'], ['212 degF', '60 %'], ['106 degC', '1']]);
    expect(textOf(pairs)).toBe(TYPED);
    expect(textOf(withCell(pairs, 1, 1, '55 %'))).toBe('[[94 degC, 25 %], [212 degF, 55 %], [106 degC, 1]]');
    expect(textOf(withoutPair(pairs, 0))).toBe('[[212 degF, 60 %], [106 degC, 1]]');
  });

  // 212 degF = 100 degC: boiling water on both scales.
  it('is drawn from whatever units it was typed in', () => {
    expect(pointsOf(TYPED, 'degC')).toEqual([{ x: 94, y: 25 }, { x: 100, y: 60 }, { x: 106, y: 100 }]);
    expect(pointsOf('[[94 turns, 25 %], [100 degC, 60 %]]', 'degC')).toBeNull();
    expect(pointsOf('', 'degC')).toBeNull();
  });
});

describe('a point in the hand', () => {
  const points = [{ x: 94, y: 25 }, { x: 100, y: 60 }, { x: 106, y: 100 }];

  it('stays between its neighbours, as far from them as the controller tells apart', () => {
    expect(kept(points, 1, { x: 120, y: 50 }, 0.2, true)).toEqual({ x: 105.8, y: 50 });
    expect(kept(points, 1, { x: 90, y: 50 }, 0.2, true).x).toBeCloseTo(94.2, 12);
    expect(kept(points, 0, { x: 60, y: 10 }, 0.2, true)).toEqual({ x: 60, y: 10 });
  });

  it('does not make a rising curve fall, nor ask for less than nothing or more than all', () => {
    expect(kept(points, 1, { x: 100, y: 10 }, 0.2, true).y).toBe(25);
    expect(kept(points, 2, { x: 106, y: 130 }, 0.2, true).y).toBe(100);
    expect(kept(points, 1, { x: 100, y: 10 }, 0.2, false).y).toBe(10);
    expect(kept(points, 1, { x: 100, y: -4 }, 0.2, false).y).toBe(0);
  });
});

describe('a curve', () => {
  const points = [{ x: 90, y: 20 }, { x: 100, y: 40 }, { x: 102, y: 100 }];

  it('is straight between its points and held beyond them', () => {
    expect([80, 90, 95, 100, 101, 102, 120].map((x) => demandAt(points, x))).toEqual([20, 20, 30, 40, 70, 100, 100]);
  });

  it('gets a new point in its widest gap', () => {
    expect(inserted(points, 0.2)).toEqual({ at: 1, point: { x: 95, y: 30 } });
    expect(inserted([{ x: 90, y: 20 }, { x: 90.3, y: 40 }], 0.2)).toBeNull();
    expect(inserted([{ x: 90, y: 20 }], 0.2)).toBeNull();
  });
});
