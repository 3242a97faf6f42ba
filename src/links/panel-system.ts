/**
 * The panel system itself: only a tested uplift table of that panel can prove it. Between two tested spacings the
 * clip force (not the pressure) is interpolated, within one way of failing. Nothing is extrapolated: outside the
 * tested spacings, or between rows that failed differently, the panel is unproven.
 */
import type { PanelInput, UpliftTest } from '../job/cover-input.ts';
import { known } from '../job/stated.ts';
import { convert, type Foot, type Inch, inch, ratio } from '../quantities/quantity.ts';
import { equation } from '../trace/equation.ts';
import type { Trace } from '../trace/step.ts';
import { LRFD_OVER_ASD } from './own-test.ts';
import type { Capacity } from './verdict.ts';

const clipForce = equation({
  clause: 'tested uplift',
  gives: 'F',
  unit: 'lbf',
  from: { p: 'psf', w: 'ft', s: 'ft' },
  is: 'p * w * s',
});
const between = equation({
  clause: 'tested uplift, interpolated in clip force',
  gives: 'F',
  unit: 'lbf',
  from: { F1: 'lbf', F2: 'lbf', s1: 'ft', s2: 'ft', s: 'ft' },
  is: 'F1 + (F2 - F1) * (s - s1) / (s2 - s1)',
});
const allowable = equation({
  clause: 'tested uplift',
  gives: 'pa',
  unit: 'psf',
  from: { F: 'lbf', w: 'ft', s: 'ft', n: '1', Ω: '1' },
  is: 'n * F / (w * s * Ω)',
});

export function panelSystemCapacity(
  panel: PanelInput,
  spacing_in: number,
  method: 'ASD' | 'LRFD',
  trace?: Trace,
): Capacity {
  const base = {
    link: 'panel system',
    of: 'pressure',
    unit: 'psf',
    evidence: 'published test',
    remarks: [],
  } as const;
  const test = known(panel.upliftTest);
  if (!test) {
    const asked = panel.upliftTest?.standing === 'asked' ? ` (asked: ${panel.upliftTest.question})` : '';
    return {
      ...base,
      value: undefined,
      cites: 'no tested uplift',
      because: `no tested uplift table of this panel system is at hand${asked}; the fasteners alone do not prove the panel`,
    };
  }
  const rows = [...test.rows].sort((a, b) => a.spacing - b.spacing);
  const force = forceAt(rows, panel.coverage, spacing_in, trace);
  if (typeof force === 'string') return { ...base, value: undefined, cites: test.source, because: force };
  const n = ratio(method === 'LRFD' ? LRFD_OVER_ASD : 1);
  const value = allowable(
    { F: force, w: feet(panel.coverage), s: feet(inch(spacing_in)), n, Ω: ratio(test.safetyFactor) },
    trace,
  );
  return {
    ...base,
    value,
    cites: `${test.source}, safety factor ${test.safetyFactor}`,
    ...(trace ? { trace } : {}),
  };
}

const feet = (length: Inch): Foot => convert(length, 'in', 'ft');

type Row = UpliftTest['rows'][number];

function forceAt(
  rows: readonly Row[],
  coverage: PanelInput['coverage'],
  spacing: number,
  trace: Trace | undefined,
) {
  const exact = rows.find((row) => Math.abs(row.spacing - spacing) < 1e-6);
  if (exact) return clipForce({ p: exact.ultimate, w: feet(coverage), s: feet(exact.spacing) }, trace);
  const above = rows.findIndex((row) => row.spacing > spacing);
  const [low, high] = [rows[above - 1], rows[above]];
  if (!low || !high)
    return `tested from ${rows[0]?.spacing} to ${rows.at(-1)?.spacing} in of clip spacing only; ${Number(spacing.toFixed(2))} in lies outside`;
  if (low.failure !== high.failure)
    return `the tests at ${low.spacing} in (${low.failure}) and ${high.spacing} in (${high.failure}) failed in different ways; nothing is interpolated between them`;
  const force = (row: Row) => clipForce({ p: row.ultimate, w: feet(coverage), s: feet(row.spacing) }, trace);
  return between(
    {
      F1: force(low),
      F2: force(high),
      s1: feet(low.spacing),
      s2: feet(high.spacing),
      s: feet(inch(spacing)),
    },
    trace,
  );
}
