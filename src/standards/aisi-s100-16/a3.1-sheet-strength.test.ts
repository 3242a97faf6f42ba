import { describe, expect, test } from 'vitest';
import { psi, quantity } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { effectiveTensileStrength, effectiveYieldStrength } from './a3.1-sheet-strength.ts';

const ksi = (value: number) => psi(value * 1000);

describe('strengths of sheet steel for design, S100-16 A3.1', () => {
  // Rule published (handbook chapter on cold-formed steel); numbers computed, exact.
  for (const { name, Fy, Fu, yields, breaks } of [
    { name: 'A653 SS grade 80', Fy: 80, Fu: 82, yields: 60, breaks: 61.5 },
    { name: 'A792 SS grade 80', Fy: 80, Fu: 82, yields: 60, breaks: 61.5 },
    { name: 'A1008 SS grade 80', Fy: 80, Fu: 82, yields: 60, breaks: 61.5 },
    { name: 'grade 80 certified at 83/85 ksi', Fy: 83, Fu: 85, yields: 60, breaks: 62 },
    { name: 'grade 80 certified at 95/100 ksi', Fy: 95, Fu: 100, yields: 60, breaks: 62 },
  ])
    test(`${name} counts ${yields}/${breaks} ksi`, () => {
      const steel = { ductility: 'grade 80', Fy: ksi(Fy), Fu: ksi(Fu) } as const;
      expect(effectiveTensileStrength(steel)).toBe(breaks * 1000);
      expect(effectiveYieldStrength(steel)).toBe(yields * 1000);
    });

  test('steel of normal ductility counts as specified, with or without a stated yield strength', () => {
    expect(effectiveTensileStrength({ ductility: 'normal', Fu: ksi(65), Fy: ksi(50) })).toBe(65_000);
    expect(effectiveTensileStrength({ ductility: 'normal', Fu: ksi(65) })).toBe(65_000);
  });
  test('an elongation of 3 to 10 % counts nine tenths, and the working says that is recalled', () => {
    const trace: Trace = [];
    const steel = { ductility: 'low', Fy: ksi(70), Fu: ksi(80), elongation: quantity(9, '%') } as const;
    expect(effectiveTensileStrength(steel, trace)).toBeCloseTo(72_000, 9);
    expect(effectiveYieldStrength(steel)).toBeCloseTo(63_000, 9);
    expect(trace.some((step) => step.kind === 'note' && step.text.includes('recalled'))).toBe(true);
  });

  test('a measured 85.6/89.2 ksi (ratio 1.042) is not of normal ductility (published limit 1.08)', () => {
    const outcome = effectiveTensileStrength({ ductility: 'normal', Fy: ksi(85.6), Fu: ksi(89.2) });
    expect(isRefusal(outcome) && outcome.input).toBe('Fu/Fy');
    expect(isRefusal(outcome) && Number(outcome.value)).toBeCloseTo(1.042, 3);
    expect(effectiveTensileStrength({ ductility: 'normal', Fy: ksi(50), Fu: ksi(54) })).toBe(54_000);
  });
  for (const [name, steel, input] of [
    [
      'normal steel of 9.9 % elongation',
      { ductility: 'normal', Fu: ksi(65), elongation: quantity(9.9, '%') },
      'elongation',
    ],
    [
      'low-ductility steel of 10 %',
      { ductility: 'low', Fu: ksi(65), elongation: quantity(10, '%') },
      'elongation',
    ],
    [
      'low-ductility steel below 3 %',
      { ductility: 'low', Fu: ksi(65), elongation: quantity(2.9, '%') },
      'elongation',
    ],
    ['tensile below yield strength', { ductility: 'grade 80', Fy: ksi(80), Fu: ksi(79) }, 'Fu/Fy'],
    ['an unknown class', { ductility: 'unknown' as 'low', Fu: ksi(65) }, 'ductility'],
    ['no strength', { ductility: 'normal', Fu: ksi(0) }, 'Fu'],
  ] as const)
    test(`${name} is refused`, () => {
      const outcome = effectiveTensileStrength(steel);
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
});
