import { describe, expect, it } from 'vitest';
import { atColumn, constants, held, inUnitOf, taken, wishOf } from '../src/lib/mapping';
import { rolesOf, suggested, withRole } from '../src/lib/roles';

const START = [
  { channel: 'coolant_temperature', position: 3, unit: 'degC', constant: null, why: 'by its name' },
  { channel: 'barometer', position: null, unit: null, constant: '101 kPa abs' },
];

describe('mapping', () => {
  it('gives a channel to one column at most, and a column one channel', () => {
    const moved = taken(START, 5, 'coolant_temperature');
    expect(atColumn(moved, 3)).toBeUndefined();
    expect(atColumn(moved, 5)?.channel).toBe('coolant_temperature');
    const other = taken(moved, 5, 'barometer');
    expect(other).toEqual([{ channel: 'barometer', position: 5, unit: null, constant: null }]);
    expect(taken(other, 5, '')).toEqual([]);
  });

  it('sets units and constants', () => {
    expect(atColumn(inUnitOf(START, 3, 'degF'), 3)?.unit).toBe('degF');
    expect(atColumn(inUnitOf(START, 3, ''), 3)?.unit).toBeNull();
    expect(constants(held(START, 'coolant_temperature', '90 degC'))).toHaveLength(2);
    expect(constants(held(START, 'barometer', ''))).toHaveLength(0);
  });

  it('sends what was chosen, not why', () => {
    const wish = wishOf('v', { time: { position: 1, unit: 's', clock: null, step: null }, channels: START, facts: { heater: 'off' } });
    expect(wish.channels[0]).toEqual({ channel: 'coolant_temperature', position: 3, unit: 'degC', constant: null });
  });
});

describe('roles', () => {
  const names = ['heron-mild', 'heron-morning', 'oxbow-mild'];

  it('are suggested by name, or as the last proof had them', () => {
    expect(rolesOf(names, {}, suggested('heron', names, null))).toEqual({ 'heron-mild': 'fit', 'heron-morning': 'predict', 'oxbow-mild': 'none' });
    const last = { fit: ['heron-morning'], predict: [] };
    expect(rolesOf(names, {}, suggested('heron', names, last))).toEqual({ 'heron-mild': 'none', 'heron-morning': 'fit', 'oxbow-mild': 'none' });
  });

  it('are what a person chose', () => {
    const roles = rolesOf(names, { 'oxbow-mild': 'fit', gone: 'fit' }, suggested('heron', names, null));
    expect(withRole(roles, 'fit')).toEqual(['heron-mild', 'oxbow-mild']);
  });
});
