import { describe, expect, it } from 'vitest';
import { placeOf } from '../src/lib/place';

describe('what an address leads to', () => {
  it('is a build and a way of it', () => {
    expect(placeOf('#/build/heron')).toEqual({ view: 'build', id: 'heron', way: 'sheet' });
    expect(placeOf('#/build/heron/schedule')).toEqual({ view: 'build', id: 'heron', way: 'schedule' });
    expect(placeOf('#/build/heron/proof')).toEqual({ view: 'build', id: 'heron', way: 'proof' });
  });

  it('is the shop for all that means nothing', () => {
    for (const hash of ['', '#/', '#/build/', '#/build/heron/elsewhere', '#/build/%E0%A4%A']) {
      expect(placeOf(hash)).toEqual({ view: 'shop' });
    }
  });
});
