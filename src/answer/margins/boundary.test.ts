import { expect, test } from 'vitest';
import type { ScheduleLine } from '../../choose/schedule.ts';
import { check } from '../../links/verdict.ts';
import { marginOf } from './boundary.ts';

/** A line of one link with a load and a capacity. */
function lineOf(load: number | undefined, capacity: number): ScheduleLine {
  const one = check(
    {
      link: 'pull-out',
      of: 'fastener',
      unit: 'lbf',
      value: capacity,
      evidence: 'assumed',
      cites: 'made up for this test',
      remarks: [],
    },
    load,
  );
  return { checks: [one], governing: 0, verdict: one.verdict, ratio: one.ratio } as unknown as ScheduleLine;
}

test('the bound is the last value that holds, to half a percent', () => {
  const margin = marginOf({ present: 10, low: 1, high: 100, eases: 'down', at: (x) => lineOf(x * x, 777) });
  if (margin.kind !== 'holds' || !margin.most) throw new Error('it holds at 10');
  const exact = Math.sqrt(777);
  expect(margin.most.value).toBeLessThanOrEqual(exact);
  expect(margin.most.value).toBeGreaterThan(exact * 0.995);
  expect([margin.most.by, margin.least, margin.steady]).toEqual(['pull-out', undefined, true]);
});

test('a line that falls short starts to hold where it eases', () => {
  const at = (x: number) => lineOf(100 / x, 7);
  const margin = marginOf({ present: 2, low: 1, high: 100, eases: 'up', at });
  if (margin.kind !== 'starts') throw new Error('it falls short at 2');
  expect(margin.from).toBe('below');
  expect(margin.value).toBeGreaterThanOrEqual(100 / 7);
  expect(margin.value).toBeLessThan((100 / 7) * 1.005);
});

test('a line that holds again farther on is not called steady', () => {
  const at = (x: number) => lineOf(x > 20 && x < 40 ? 2 : 1 + x / 1000, 1.9);
  const margin = marginOf({ present: 10, low: 1, high: 100, eases: 'down', at });
  expect(margin).toMatchObject({ kind: 'holds', steady: false });
});

test('a bound that lies on the end of the range is not told as one', () => {
  const at = (x: number) => lineOf(x, 1000);
  expect(marginOf({ present: 10, low: 1, high: 100, eases: 'down', at })).toEqual({
    kind: 'holds',
    steady: true,
  });
});

test('what does not depend on the quantity has no margin in it', () => {
  const margin = marginOf({ present: 10, low: 1, high: 100, eases: 'down', at: () => lineOf(1, 2) });
  expect(margin).toEqual({ kind: 'none', because: 'no link of the line depends on it' });
});

test('what falls short at every value says what decides it', () => {
  const margin = marginOf({ present: 10, low: 1, high: 100, eases: 'down', at: (x) => lineOf(200 + x, 2) });
  expect(margin).toMatchObject({ kind: 'none', because: expect.stringContaining('pull-out') });
});

test('of an unproven line the links that can be judged have a margin of their own', () => {
  const open = lineOf(undefined, 5).checks;
  const at = (x: number): ScheduleLine => {
    const known = lineOf(x, 50);
    return { ...known, checks: [...open, ...known.checks], verdict: 'unproven' };
  };
  const margin = marginOf({ present: 10, low: 1, high: 100, eases: 'down', at });
  if (margin.kind !== 'none' || margin.judged?.kind !== 'holds') throw new Error('one link can be judged');
  expect(margin.judged.most?.value).toBeCloseTo(50, 0);
});
