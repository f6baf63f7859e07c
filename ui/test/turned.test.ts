import { describe, expect, it } from 'vitest';
import { inChosen, turnedValues } from '../src/lib/turned';

describe('values of the sheet in chosen units', () => {
  const turned = turnedValues([
    { key: 'radiator.width', typed: '31.5 in', shown: { metric: '800.1 mm', mixed: '800.1 mm' } },
    { key: 'stack.fans', typed: '2' },
  ]);

  it('are as typed without a choice', () => {
    expect(inChosen(turned, 'radiator.width', '31.5 in', null)).toBe('31.5 in');
  });

  it('follow the choice', () => {
    expect(inChosen(turned, 'radiator.width', '31.5 in', 'metric')).toBe('800.1 mm');
    expect(inChosen(turned, 'radiator.width', '31.5 in', 'us')).toBe('31.5 in');
    expect(inChosen(turned, 'stack.fans', '2', 'metric')).toBe('2');
  });

  it('are as typed where the server has not seen them yet', () => {
    expect(inChosen(turned, 'radiator.width', '32 in', 'metric')).toBe('32 in');
  });
});
