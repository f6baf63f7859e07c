import { describe, expect, it } from 'vitest';
import type { Core, Stack } from '../src/api/types';
import { boundsOf, holdsOf, moved } from '../src/charts/grab';
import { changesTo, drawable, laidOver, partsOf, reordered, type Part } from '../src/lib/parts';

const whole = { x: 0, y: 0 } as const;

function core(id: string, layer: number, last = false): Core {
  const key = `stack.${id}`;
  const places = { left: `${key}.left`, bottom: `${key}.bottom`, width: `${key}.width`, height: `${key}.height` };
  return {
    id, title: id, layer, left_mm: 100, bottom_mm: 50, width_mm: 300, height_mm: 200, depth_mm: 19, air_speed_m_s: 2, air_degC: 45,
    edit: last ? places : { ...places, layer: `${key}.layer` },
  };
}

function stack(...cores: Core[]): Stack {
  return {
    width_mm: 800, height_mm: 600, cores, openings: [],
    shroud: { left_mm: 0, bottom_mm: 0, width_mm: 800, height_mm: 600, gap_mm2: 0, edit: {} },
    fans: 1, fan_diameter_mm: 500, flap_area_mm2: 0, edit: {},
  };
}

const face = { width_mm: 800, height_mm: 600 };

function partOf(c: Core): Part {
  const [part] = partsOf(stack(c));
  if (!part) {
    throw new Error('no part');
  }
  return part;
}

describe('moving', () => {
  const part = partOf(core('condenser', 1));

  it('is caught on the grid and stays inside the face', () => {
    const bounds = boundsOf(part, whole, face);
    expect(moved(part, whole, 12.4, 0, 5, bounds).left_mm).toBe(110);
    expect(moved(part, whole, 9999, -9999, 5, bounds)).toEqual({ left_mm: 500, bottom_mm: 0, width_mm: 300, height_mm: 200 });
  });

  it('does not follow a slight slant', () => {
    const odd = { ...part, bottom_mm: 53 };
    expect(moved(odd, whole, 40, 2, 5, boundsOf(odd, whole, face))).toMatchObject({ left_mm: 140, bottom_mm: 53 });
    expect(moved(odd, whole, 40, 3, 5, boundsOf(odd, whole, face))).toMatchObject({ left_mm: 140, bottom_mm: 55 });
  });

  it('resizes by the edge that is held and leaves the other where it is', () => {
    const right = { x: 1, y: 1 } as const;
    expect(moved(part, right, 50, 20, 5, boundsOf(part, right, face))).toEqual({ left_mm: 100, bottom_mm: 50, width_mm: 350, height_mm: 270 - 50 });
    const left = { x: -1, y: 0 } as const;
    expect(moved(part, left, -50, 0, 5, boundsOf(part, left, face))).toEqual({ left_mm: 50, bottom_mm: 50, width_mm: 350, height_mm: 200 });
    expect(moved(part, left, 9999, 0, 5, boundsOf(part, left, face)).width_mm).toBe(20);
  });

  it('lets the radiator outgrow the face, for the face follows it, but not leave it', () => {
    const radiator = partOf({ ...core('radiator', 9, true) });
    const right = { x: 1, y: 0 } as const;
    expect(moved(radiator, right, 900, 0, 5, boundsOf(radiator, right, face)).width_mm).toBe(1200);
    expect(moved(radiator, whole, 900, 0, 5, boundsOf(radiator, whole, face)).left_mm).toBe(500);
  });

  it('types only what changed, in the chosen units', () => {
    expect(changesTo(part, { ...part, left_mm: 127 }, 'us')).toEqual({ 'stack.condenser.left': '5 in' });
    expect(changesTo(part, part, 'metric')).toEqual({});
  });

  it('offers no handle for a side that cannot be changed', () => {
    expect(holdsOf({ ...part, edit: {} }, true)).toEqual([]);
    expect(holdsOf(part, false)).toHaveLength(4);
    expect(holdsOf(part, true)).toHaveLength(8);
  });
});

describe('laying changes over an answer', () => {
  it('moves what was typed and leaves what cannot be read', () => {
    const laid = laidOver(stack(core('condenser', 2)), {
      'stack.condenser.left': '10 in', 'stack.condenser.width': 'wide', 'stack.condenser.layer': '1',
    });
    expect(laid.cores[0]).toMatchObject({ left_mm: 254, width_mm: 300, layer: 1 });
  });
});

describe('layers', () => {
  const all = stack(core('cooler', 1), core('condenser', 2), core('radiator', 99, true));

  it('swaps with the neighbour', () => {
    expect(reordered(all, 'cooler', 1)).toEqual({ 'stack.cooler.layer': '2', 'stack.condenser.layer': '1' });
  });

  it('cannot go before the first, behind the radiator, or move the radiator', () => {
    expect(reordered(all, 'cooler', -1)).toBeNull();
    expect(reordered(all, 'condenser', 1)).toBeNull();
    expect(reordered(all, 'radiator', -1)).toBeNull();
  });

  it('gives one of two that stand beside each other a layer of its own', () => {
    const beside = stack(core('cooler', 1), core('condenser', 1), core('radiator', 99, true));
    expect(reordered(beside, 'cooler', 1)).toEqual({ 'stack.cooler.layer': '2' });
    expect(reordered(beside, 'cooler', -1)).toEqual({ 'stack.condenser.layer': '2' });
  });
});

describe('sizes that cannot be', () => {
  it('are left out of the drawing; what merely does not fit is drawn', () => {
    const said = (key: string, sheet_key: string) => ({ severity: 'fault' as const, key, message: '', sheet_key });
    const changes = { 'radiator.depth': '900 mm', 'stack.condenser.left': '700 mm' };
    expect(drawable(changes, [said('out-of-range', 'radiator.depth'), said('value-wrong', 'stack.condenser.left')]))
      .toEqual({ 'stack.condenser.left': '700 mm' });
  });
});
