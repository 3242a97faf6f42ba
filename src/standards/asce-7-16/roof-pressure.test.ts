import { describe, expect, test } from 'vitest';
import { degree, foot, mph, ratio, sqft } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { asdPressures } from './asd-pressure.table.ts';
import { asce716 } from './roof-wind.ts';

const ofSite = (V: number, exposure: 'B' | 'C' | 'D', h: number) => {
  const qh = asce716.velocityPressure({ V: mph(V), exposure, h: foot(h), kzBy: 'table' });
  if (isRefusal(qh)) throw new Error(`refused: ${qh.input}`);
  return qh;
};
const common = { surface: 'roof', enclosure: 'enclosed', parapet: 'none' } as const;

/** Results of the pressure equation, one for each sign of the internal coefficient. */
const netPressures = (trace: Trace): number[] =>
  trace.flatMap((step) =>
    step.kind === 'equation' && step.clause === 'ASCE/SEI 7-16 Eq. 30.3-1' ? [step.value] : [],
  );

describe('net pressure on roofs, ASCE/SEI 7-16', () => {
  // The rows stand before the minimum of 16 psf (9.6 ASD), which governs one of them.
  test.each(asdPressures)(
    '%s at %f degrees, zone %s, %f ft², %f mph: ASD %f psf before the minimum (computed)',
    (shape, theta, zone, A, V, pASD) => {
      const figure = asce716.chooseFigure(shape, degree(theta), foot(30));
      if (isRefusal(figure)) throw new Error('refused');
      const trace: Trace = [];
      const p = asce716.upliftPressure(
        { ...common, figure, zone, A: sqft(A), qh: ofSite(V, 'B', 30) },
        trace,
      );
      // Two decimals, computed with coefficients of four.
      expect(Math.abs(0.6 * Math.min(...netPressures(trace)) - pASD)).toBeLessThanOrEqual(0.05);
      if (isRefusal(p)) throw new Error('refused');
      expect(Math.abs(Number(asce716.asdPressure({ p })) - Math.min(pASD, -9.6))).toBeLessThanOrEqual(0.05);
    },
  );
  test('the table has its rows', () => {
    expect(asdPressures.length).toBe(26);
  });

  // Flat roof, 115 mph, exposure C, 45 ft, 50 ft²: a hand calculation of a public verification note, one decimal.
  const flat = { ...common, figure: '30.3-2A', A: sqft(50), qh: ofSite(115, 'C', 45) } as const;
  const flatRoof = [
    { zone: '1', p: -48.8 },
    { zone: "1'", p: -33.1 },
    { zone: '2', p: -64.7 },
    { zone: '3', p: -80.9 },
  ];
  test.each(flatRoof)('flat roof, zone $zone: $p psf (computed)', ({ zone, p }) => {
    expect(Math.abs(Number(asce716.upliftPressure({ ...flat, zone })) - p)).toBeLessThanOrEqual(0.06);
  });
  test('flat roof downward: 12.6 psf before the minimum, 16 after (computed)', () => {
    const trace: Trace = [];
    expect(asce716.downwardPressure({ ...flat, zone: '1' }, trace)).toBe(16);
    expect(Math.abs(Math.max(...netPressures(trace)) - 12.6)).toBeLessThanOrEqual(0.06);
  });

  test('both signs of the internal coefficient are run and the working shows them', () => {
    const trace: Trace = [];
    const p = asce716.upliftPressure({ ...flat, zone: '3' }, trace);
    const signs = trace.flatMap((step) =>
      step.kind === 'equation' && 'GCpi' in step.inputs ? [step.inputs.GCpi] : [],
    );
    expect(signs).toEqual([0.18, -0.18]);
    expect(trace.at(-1)).toMatchObject({ clause: 'ASCE/SEI 7-16 30.2.2', value: p });
  });
  test('no tracing, the same number', () => {
    expect(asce716.upliftPressure({ ...flat, zone: '3' })).toBe(
      asce716.upliftPressure({ ...flat, zone: '3' }, []),
    );
  });
  test('a parapet makes corners as mild as edges, and pushes edges down as hard as a wall', () => {
    const parapet = 'at least 3 ft all round';
    expect(asce716.upliftPressure({ ...flat, zone: '3', parapet })).toBe(
      asce716.upliftPressure({ ...flat, zone: '2' }),
    );
    const wall = 1.1766 - 0.1766 * Math.log10(50);
    expect(Number(asce716.downwardPressure({ ...flat, zone: '2', parapet }))).toBeCloseTo(
      flat.qh * (wall + 0.18),
      1,
    );
    expect(asce716.downwardPressure({ ...flat, zone: '1', parapet })).toBe(16);
  });
  test('over 60 ft the equation of that height is cited and the number is that of q = qi = qh', () => {
    const trace: Trace = [];
    const p = asce716.upliftPressure({ ...flat, figure: '30.5-1', zone: '3', A: sqft(10) }, trace);
    expect(Number(p)).toBeCloseTo(flat.qh * (-3.2 - 0.18), 9);
    expect(trace.some((step) => step.clause === 'ASCE/SEI 7-16 Eq. 30.5-1')).toBe(true);
  });
  test('over 60 ft suction inside still pushes down, with no external part', () => {
    const high = { ...flat, figure: '30.5-1', zone: '1', enclosure: 'partially enclosed' } as const;
    expect(Number(asce716.downwardPressure(high))).toBeCloseTo(flat.qh * 0.55, 9);
  });
  test('an overhang of a monoslope roof adds the wall below and says so', () => {
    const trace: Trace = [];
    const p = asce716.upliftPressure(
      { ...flat, figure: '30.3-5B', zone: '3', surface: 'overhang', A: sqft(5) },
      trace,
    );
    expect(Number(p)).toBeCloseTo(flat.qh * (-2.9 - 1.0 - 0.18), 9);
    expect(trace.some((step) => step.kind === 'note' && step.text.includes('conservative'))).toBe(true);
  });
  test('uncertain curves say so in the working', () => {
    const trace: Trace = [];
    asce716.upliftPressure({ ...flat, figure: '30.3-2H', zone: '3', theta: degree(40) }, trace);
    expect(trace.filter((step) => step.kind === 'note').length).toBeGreaterThanOrEqual(2);
  });
  test('over 60 ft an overhang is pulled up by roof and wall without relief by a parapet, and refused downward', () => {
    const over = { ...flat, figure: '30.5-1', zone: '3', surface: 'overhang', A: sqft(5) } as const;
    const uplift = asce716.upliftPressure({ ...over, parapet: 'at least 3 ft all round' });
    expect(Number(uplift)).toBeCloseTo(over.qh * (-3.2 - 1.0 - 0.18), 9);
    const outcome = asce716.downwardPressure(over);
    expect(isRefusal(outcome) && [outcome.code, outcome.input]).toEqual(['outside-scope', 'surface']);
  });
  test('an open building is refused: it takes net coefficients', () => {
    const outcome = asce716.upliftPressure({ ...flat, zone: '1', enclosure: 'open' });
    expect(isRefusal(outcome) && [outcome.code, outcome.input]).toEqual(['outside-scope', 'enclosure']);
  });
  test('no area, no answer', () => {
    const outcome = asce716.upliftPressure({ ...flat, zone: '1', A: sqft(0) });
    expect(isRefusal(outcome) && outcome.input).toBe('A');
  });
  test('a hip roof takes h/B into account', () => {
    const hip = { ...flat, figure: '30.3-2E', zone: '3' } as const;
    const [low, high] = [0.5, 0.8].map((hOverB) =>
      Number(asce716.upliftPressure({ ...hip, hOverB: ratio(hOverB) })),
    );
    expect(low).toBeGreaterThan(high ?? 0);
  });
});
