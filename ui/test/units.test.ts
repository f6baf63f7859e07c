import { describe, expect, it } from 'vitest';
import { amount, between, caught, change, figure, grid, inUnit, millimetres, roomTo, typedAmount, typedLength, withUnit } from '../src/lib/units';

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
    expect(roomTo(3, 'turns', 'us')).toBe('3.0 turns');
  });

  it('reads and writes lengths as people type them', () => {
    expect(millimetres('14 in')).toBeCloseTo(355.6, 9);
    expect(millimetres('12.5cm')).toBe(125);
    expect(millimetres('120')).toBeNull();
    expect(millimetres('wide')).toBeNull();
    expect(typedLength(355.6, 'us')).toBe('14 in');
    expect(typedLength(355.6, 'mixed')).toBe('355.6 mm');
  });

  // 1 lb = 0.45359237 kg, 1 Btu(IT) = 1055.05585262 J: NIST SP 811, appendix B.
  it('converts what recordings and unknowns come in', () => {
    expect(inUnit(0.45359237, 'kg/s', 'us')).toBeCloseTo(60, 12);
    expect(inUnit(453.59237 / 60, 'g/s', 'us')).toBeCloseTo(1, 12);
    expect(inUnit(4.4482216152605, 'N', 'us')).toBeCloseTo(1, 12);
    expect(inUnit(30.48, 'm', 'us')).toBeCloseTo(100, 12);
    // 1 Btu/(h degF) = 0.527 528 W/K, 1 Btu/degF = 1.899 101 kJ/K: the same source.
    expect(inUnit(0.527528, 'W/K', 'us')).toBeCloseTo(1, 5);
    expect(inUnit(1899.101, 'J/K', 'us')).toBeCloseTo(1, 5);
    expect(inUnit(0.527528, 'W/K/(m/s)', 'us')).toBeCloseTo(0.44704, 5);
    expect(inUnit(144000, 'J/K', 'metric')).toBe(144);
  });

  it('says ranges and figures of any size', () => {
    expect(between(39.06, 44, 'degC', 'metric')).toBe('39.1 to 44.0 degC');
    expect(between(39, 44, 'degC', 'us')).toBe('102.2 to 111.2 degF');
    expect(figure(0.00531811, '1', 'metric')).toBe('0.0053');
    expect(figure(144000, 'J/K', 'metric')).toBe('144 kJ/K');
    expect(figure(2981.59, 'W/K', 'mixed')).toBe('2982 W/K');
    expect(figure(3.91694, 'furlong', 'us')).toBe('3.92 furlong');
  });

  // 1 psi = 6.894757293168 kPa and 1 mile = 1609.344 m by definition: NIST SP 811.
  it('reads the values of a schedule in whatever unit they were typed', () => {
    expect(amount('212 degF', 'degC')).toBeCloseTo(100, 12);
    expect(amount('9 degF', 'K')).toBeCloseTo(5, 12);
    expect(amount('1600 kPa abs', 'bar abs')).toBeCloseTo(16, 12);
    expect(amount('100 psia', 'bar abs')).toBeCloseTo(6.894757293168, 12);
    expect(amount('50 psi', 'bar')).toBeCloseTo(3.447378646584, 12);
    expect(amount('10 mph', 'km/h')).toBeCloseTo(16.09344, 12);
    expect(amount('0.25', '%')).toBe(25);
    expect(amount('25', 'degC')).toBeNull();
    expect(amount('16 bar', 'bar abs')).toBeNull();
    expect(amount('some', '%')).toBeNull();
  });

  it('catches on what is round in the units that were chosen', () => {
    expect(typedAmount(caught(93.87, 'degC', 'metric', false), 'degC', 'metric')).toBe('94 degC');
    expect(typedAmount(caught(93.87, 'degC', 'metric', true), 'degC', 'metric')).toBe('93.9 degC');
    expect(typedAmount(caught(93.87, 'degC', 'us', false), 'degC', 'us')).toBe('201 degF');
    expect(typedAmount(caught(16.04, 'bar abs', 'mixed', false), 'bar abs', 'mixed')).toBe('233 psia');
    expect(typedAmount(caught(3, 'bar', 'us', false), 'bar', 'us')).toBe('44 psi');
    expect(grid('degC', 'us', false)).toBeCloseTo(1 / 1.8, 12);
  });
});
