import { expect, test } from 'vitest';
import { type Capacity, check, misfit, worst } from './verdict.ts';

const capacity = (value: number | undefined): Capacity => ({
  link: 'clip',
  of: 'place',
  unit: 'lbf',
  value,
  evidence: 'own test',
  cites: 'test',
  remarks: [],
});

test('a link holds up to its capacity and not a pound beyond', () => {
  expect(check(capacity(100), 100).verdict).toBe('holds');
  expect(check(capacity(100), 100.01).verdict).toBe('falls short');
  expect(check(capacity(100), 60).ratio).toBeCloseTo(0.6, 12);
});
test('no capacity or no load is unproven, never a pass', () => {
  expect(check(capacity(undefined), 1).verdict).toBe('unproven');
  expect(check(capacity(100), undefined).verdict).toBe('unproven');
});
test('no uplift at all holds', () =>
  expect(check(capacity(100), 0)).toMatchObject({ verdict: 'holds', ratio: 0 }));
test('the worst verdict of a chain counts, and no check proves nothing', () => {
  expect(worst(['holds', 'unproven', 'holds'])).toBe('unproven');
  expect(worst(['holds', 'unproven', 'falls short'])).toBe('falls short');
  expect(worst(['holds', 'holds'])).toBe('holds');
  expect(worst([])).toBe('unproven');
});
test('a misfit falls short with its reason', () =>
  expect(misfit('too long')).toMatchObject({ verdict: 'falls short', capacity: { because: 'too long' } }));
