import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inch, psi } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { aisiS10016 } from './edition.ts';
import { headRows, washerRows } from './j4.4.2-pull-over.table.ts';
import { pullOver, pullOverDiameter } from './j4.4.2-pull-over.ts';

const d = inch(0.216);
const head = {
  bearing: 'head alone',
  pull: 'all round',
  d,
  dh: inch(0.415),
  t1: inch(0.0239),
  Fu1: psi(65_000),
} as const;
const washer = { ...head, bearing: 'solid washer', dw: inch(0.625), tw: inch(0.05) } as const;

const within = (value: unknown, printed: number): void =>
  expect(Math.abs(Number(value) - printed)).toBeLessThanOrEqual(0.06);

describe('pull-over, S100-16 J4.4.2', () => {
  test('the tables are not empty', () => expect([headRows.length, washerRows.length]).toEqual([3, 3]));
  // Printed to 0.1 lb and 0.0001 in.
  const rows = [
    ...headRows.map((row) => ({ row, values: { ...head, dh: inch(row.dh) } })),
    ...washerRows.map((row) => ({
      row,
      values: {
        ...head,
        bearing: row.name.startsWith('domed') ? ('domed washer' as const) : ('solid washer' as const),
        dh: inch(row.dh),
        dw: inch(row.dw),
        tw: inch(row.tw),
      },
    })),
  ];
  for (const { row, values } of rows)
    test(`${row.name}: ${row.nominal} lb nominal (computed)`, () => {
      const sheet = { ...values, t1: inch(row.t1), Fu1: psi(row.Fu1) };
      expect(Math.abs(Number(pullOverDiameter(sheet)) - row.dwe)).toBeLessThanOrEqual(0.00006);
      within(pullOver(sheet), row.nominal);
      within(aisiS10016.pullOver(sheet, 'ASD'), row.ASD);
      within(aisiS10016.pullOver({ ...sheet, pull: 'one side' }, 'ASD'), row.half);
    });

  test('24 ga panel under a 0.4 in pancake head: 310.7 lb allowable (published, an engineering note)', () => {
    within(aisiS10016.pullOver({ ...head, dh: inch(0.4) }, 'ASD'), 310.7);
  });
  test('0.0566 in sheet of 65 ksi under 0.4 in: 2207 lb, 735.8 lb allowable (computed)', () => {
    const values = { ...head, dh: inch(0.4), t1: inch(0.0566) };
    expect(Math.abs(Number(pullOver(values)) - 2207)).toBeLessThanOrEqual(0.6);
    within(aisiS10016.pullOver(values, 'ASD'), 735.8);
  });

  test('a washer never counts for more than its own diameter; head and domed washer end at 3/4 in', () => {
    expect(pullOverDiameter({ ...washer, dw: inch(0.45) })).toBe(0.45);
    expect(pullOverDiameter({ ...head, dh: inch(0.9) })).toBe(0.75);
    const wide = { ...washer, dh: inch(0.8), dw: inch(1) };
    expect(pullOverDiameter({ ...wide, bearing: 'domed washer' })).toBe(0.75);
    expect(Number(pullOverDiameter(wide))).toBeCloseTo(0.9239, 9);
  });
  test('a recalled cap or washer limit is said in the working', () => {
    const trace: Trace = [];
    pullOver({ ...washer, bearing: 'domed washer' }, trace);
    expect(
      trace
        .filter((step) => step.kind === 'note')
        .map((step) => step.text)
        .join(' '),
    ).toMatch(/recalled.*recalled/);
  });

  const refused: readonly (readonly [string, Parameters<typeof pullOver>[0], string])[] = [
    ['a head below 5/16 in', { ...head, dh: inch(0.312) }, 'dh'],
    ['a washer below 5/16 in', { ...washer, dw: inch(0.3) }, 'dw'],
    [
      'a washer of 0.049 in on sheet thicker than 0.027 in',
      { ...washer, t1: inch(0.0271), tw: inch(0.049) },
      'tw',
    ],
    ['a washer of 0.023 in on thin sheet', { ...washer, t1: inch(0.027), tw: inch(0.023) }, 'tw'],
    ['a washer of unknown thickness', { ...head, bearing: 'solid washer', dw: inch(0.5) }, 'tw'],
    ['a washer of unknown diameter', { ...head, bearing: 'domed washer', tw: inch(0.05) }, 'dw'],
    ['a 5/16 in screw', { ...head, d: inch(0.3125) }, 'd'],
    ['a countersunk head', { ...head, bearing: 'countersunk' as 'head alone' }, 'bearing'],
    ['a sheet without thickness', { ...head, t1: inch(0) }, 't1'],
    ['a sheet without strength', { ...head, Fu1: psi(-1) }, 'Fu1'],
  ];
  for (const [name, values, input] of refused)
    test(`${name} is refused`, () => {
      const outcome = pullOver(values);
      expect(isRefusal(outcome) && outcome.input).toBe(input);
    });
  test('a washer of 0.024 in counts on sheet of 0.027 in, one of 0.050 in on thicker sheet', () => {
    expect(isRefusal(pullOver({ ...washer, t1: inch(0.027), tw: inch(0.024) }))).toBe(false);
    expect(isRefusal(pullOver({ ...washer, t1: inch(0.0271), tw: inch(0.05) }))).toBe(false);
  });

  test('thicker sheet, wider head or washer never lowers it', () => {
    const t = fc.double({ min: 0.01, max: 0.1, noNaN: true });
    const more = fc.double({ min: 1, max: 2, noNaN: true });
    fc.assert(
      fc.property(t, more, fc.double({ min: 0.32, max: 0.9, noNaN: true }), (t1, k, dh) => {
        const at = (change: object) => Number(pullOver({ ...head, t1: inch(t1), dh: inch(dh), ...change }));
        expect(at({ t1: inch(t1 * k) })).toBeGreaterThanOrEqual(at({}));
        expect(at({ dh: inch(dh * k) })).toBeGreaterThanOrEqual(at({}));
        expect(at({ pull: 'one side' })).toBe(at({}) / 2);
      }),
    );
  });
});
