import { describe, expect, it } from 'vitest';
import { limitsOf, roomsOf } from '../src/lib/rooms';

const IDLE = { margins: { supply_V: 1.3, head_pressure_kPa: -120, coolant_K: 4.5 }, must_hold: ['coolant', 'supply'] };
const SOAK = { margins: { boiling_K: 8, altitude_K: 1 }, must_hold: ['boiling'] };

describe('rooms to limits', () => {
  it('stand in the order people look at them, with what must hold', () => {
    expect(roomsOf(IDLE)).toEqual([
      { limit: 'coolant', room: 4.5, unit: 'K', must: true },
      { limit: 'head-pressure', room: -1.2, unit: 'bar', must: false },
      { limit: 'supply', room: 1.3, unit: 'V', must: true },
    ]);
  });

  it('are those that any case has, unknown ones last', () => {
    expect(limitsOf([IDLE, SOAK])).toEqual(['coolant', 'boiling', 'head-pressure', 'supply', 'altitude']);
  });
});
