import { describe, expect, it } from 'vitest';
import { change, inUnit, millimetres, roomTo, typedLength, withUnit } from '../src/lib/units';

describe('units', () => {
  // 1 in = 25.4 mm and 1 mile = 1609.344 m by definition; 1 psi = 6.894757293168 kPa: NIST SP 811.
  it('converts with the defined factors', () => {
    expect(inUnit(25.4, 'mm', 'us')).toBe(1);
    expect(inUnit(1.609344, 'km/h', 'us')).toBe(1);
    expect(inUnit(6.894757293168, 'kPa', 'us')).toBe(1);
    expect(inUnit(0.3048, 'm/s', 'us')).toBeCloseTo(60, 12);
    expect(inUnit(100, 'degC', 'us')).toBeCloseTo(212, 12);
    expect(inUnit(-40, 'degC', 'mixed')).toBeCloseTo(-40, 12);
    expect(inUnit(645.16, 'mm2', 'us')).toBeCloseTo(1, 12);
  });

  it('keeps the rest metric where units are mixed', () => {
    expect(withUnit(120, 'mm', 'mixed')).toBe('120 mm');
    expect(withUnit(2.14, 'm/s', 'mixed')).toBe('2.1 m/s');
    expect(withUnit(42.8, 'degC', 'mixed')).toBe('109.0 degF');
    expect(withUnit(29, 'bar', 'mixed')).toBe('421 psi');
  });

  it('treats a difference as a difference', () => {
    expect(change(2.1, 'metric')).toBe('+2.1 K');
    expect(change(-1, 'us')).toBe('-1.8 degF');
    expect(change(-0.01, 'metric')).toBe('0.0 K');
    expect(roomTo(17.5, 'degC', 'us')).toBe('31.5 degF');
    expect(roomTo(3, 'rpm', 'us')).toBe('3.0 rpm');
  });

  it('reads and writes lengths as people type them', () => {
    expect(millimetres('14 in')).toBeCloseTo(355.6, 9);
    expect(millimetres('12.5cm')).toBe(125);
    expect(millimetres('120')).toBeNull();
    expect(millimetres('wide')).toBeNull();
    expect(typedLength(355.6, 'us')).toBe('14 in');
    expect(typedLength(355.6, 'mixed')).toBe('355.6 mm');
  });
});
