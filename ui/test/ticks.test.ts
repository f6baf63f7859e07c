import { describe, expect, it } from 'vitest';
import { roundTicks } from '../src/lib/ticks';

describe('ticks of a scale', () => {
  it('are round in the unit they are read in', () => {
    expect(roundTicks(-20, 80, 5)).toEqual([-20, 0, 20, 40, 60, 80]);
    expect(roundTicks(-4, 176, 5)).toEqual([0, 40, 80, 120, 160]);
    expect(roundTicks(0, 1, 4)).toEqual([0, 0.4, 0.8]);
    expect(roundTicks(-4.000000001, 176.000000001, 5)).toEqual([0, 40, 80, 120, 160]);
  });
});
