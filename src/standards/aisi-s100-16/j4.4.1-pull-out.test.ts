import { describe, expect, test } from 'vitest';
import { inch, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { pullOut } from './j4.4.1-pull-out.ts';

// Framing associations' screw table, basis S100 E4.4 (the same equation), ASD with safety factor 3.0,
// printed to whole pounds, hence 0.5 lb.
const rows = [
  { sheet: '18 mil', tc: 0.0188, screw: '#6', d: 0.138, Fu2: 33_000, allowable: 24, origin: 'published' },
  { sheet: '18 mil', tc: 0.0188, screw: '#8', d: 0.164, Fu2: 33_000, allowable: 29, origin: 'published' },
  { sheet: '18 mil', tc: 0.0188, screw: '#10', d: 0.19, Fu2: 33_000, allowable: 33, origin: 'published' },
  { sheet: '27 mil', tc: 0.0283, screw: '1/4', d: 0.25, Fu2: 33_000, allowable: 66, origin: 'published' },
] as const;

describe('pull-out, S100-16 J4.4.1', () => {
  for (const row of rows)
    test(`${row.screw} in ${row.sheet} sheet: ${row.allowable} lb (${row.origin})`, () => {
      const nominal = pullOut({ tc: inch(row.tc), d: inch(row.d), Fu2: psi(row.Fu2) });
      expect(isRefusal(nominal) ? nominal : Math.abs(nominal / 3 - row.allowable)).toBeLessThanOrEqual(0.5);
    });

  test('a 5/16 in screw is outside the section: strength by test only', () => {
    const outcome = pullOut({ tc: inch(0.06), d: inch(0.3125), Fu2: psi(65_000) });
    expect(isRefusal(outcome) && [outcome.code, outcome.input]).toEqual(['outside-limits', 'd']);
  });
});
