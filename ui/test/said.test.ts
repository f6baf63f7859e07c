import { describe, expect, it } from 'vitest';
import { bytes, ceilingWords, ends, eventMark, eventName, holdsOn, intervalWords, isLoud, kinds, minutes, moment, reachOf } from '../src/lib/said';

const numbers = (degC: number | null, inside = true) => ({ degC, interval90: [null, null] as const, binding_limit: 'coolant', inside_searched_range: inside });

describe('what is said of a proof', () => {
  it('says intervals in words, also where the search ended', () => {
    expect(intervalWords([39.06, 44], 'metric')).toBe('39.1 to 44.0 degC');
    expect(intervalWords([-20, 80], 'metric')).toBe('below -20.0 to above 80.0 degC');
    expect(intervalWords([null, 41], 'mixed')).toBe('below -4.0 to 105.8 degF');
    expect(ends([null, null])).toEqual({ low: -20, high: 80 });
  });

  it('is not certain where the design day lies inside the interval', () => {
    expect(holdsOn(42, [42, 50])).toBe(true);
    expect(holdsOn(42, [30, 41.9])).toBe(false);
    expect(holdsOn(42, [41, 43])).toBeNull();
    expect(holdsOn(42, [null, 43])).toBeNull();
  });

  it('says a ceiling beyond what was searched as one', () => {
    expect(ceilingWords(numbers(41.1), 'metric')).toBe('41.1 degC');
    expect(ceilingWords(numbers(80, false), 'us')).toBe('above 176.0 degF');
    expect(ceilingWords(numbers(-20, false), 'metric')).toBe('below -20.0 degC');
    expect(reachOf(numbers(null, false))).toBe('above');
  });

  it('keeps open what asks for something, also a cause that is not certain', () => {
    expect(isLoud({ severity: 'warning' })).toBe(true);
    expect(isLoud({ severity: 'note', values: { odds: 3 } })).toBe(true);
    expect(isLoud({ severity: 'note', values: { odds: null } })).toBe(false);
    expect(isLoud({ severity: 'note' })).toBe(false);
  });

  it('counts notes by kind', () => {
    expect(kinds(['samples-blank', 'time-slips', 'samples-blank'])).toBe('samples blank (2), time slips');
  });

  it('names events, also new ones', () => {
    expect(eventName('thermostat_open')).toBe('thermostat opens');
    expect(eventMark('fan_off')).toEqual({ letter: 'F', filled: false });
    expect(eventMark('thermostat_open')).toEqual({ letter: 'T', filled: true });
  });

  it('says sizes and times', () => {
    expect([bytes(900), bytes(240881), bytes(48e6)]).toEqual(['900 B', '241 kB', '48.0 MB']);
    expect([minutes(45), minutes(480)]).toEqual(['45 s', '8 min']);
    expect(moment('2026-01-02T03:04:05')).toBe('2026-01-02 03:04');
  });
});
