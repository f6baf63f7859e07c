import { describe, expect, it } from 'vitest';
import { refusal } from '../src/lib/typed';

describe('typed values', () => {
  it('refuses a bare number where a unit is needed, and says which', () => {
    expect(refusal('2200', '2150 kg')).toBe('Which unit? Type it behind the number, as in "2200 kg".');
    expect(refusal(' 15.5 ', '14 /in')).toContain('15.5 /in');
    expect(refusal('2200 kg', '2150 kg')).toBeNull();
    expect(refusal('4850 lb', '2150 kg')).toBeNull();
  });

  it('lets ratios, words and shares pass', () => {
    expect(refusal('3.7', '3.42')).toBeNull();
    expect(refusal('0.5', '50 %')).toBeNull();
    expect(refusal('diesel', 'petrol')).toBeNull();
    expect(refusal('[1, 2]', '[3, 4]')).toBeNull();
  });

  it('refuses nothing at all', () => {
    expect(refusal('  ', '2150 kg')).toContain('Nothing typed');
  });
});
