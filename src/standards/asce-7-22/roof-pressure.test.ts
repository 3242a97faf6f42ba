import { describe, expect, test } from 'vitest';
import { degree, foot, mph, psf, sqft } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import type { VelocityPressure } from '../asce-7-curves/edition.ts';
import { asce722 } from './roof-wind.ts';

const ofSite = (V: number, exposure: 'B' | 'C' | 'D', h: number) => {
  const qh = asce722.velocityPressure({ V: mph(V), exposure, h: foot(h), kzBy: 'table' });
  if (isRefusal(qh)) throw new Error(`refused: ${qh.input}`);
  return qh;
};
const common = { surface: 'roof', enclosure: 'enclosed', parapet: 'none' } as const;

// Hand calculations of a public verification note, one decimal.
const hip = { ...common, figure: '30.3-2F', A: sqft(20), qh: ofSite(115, 'C', 25) } as const;
const high = { ...common, figure: '30.4-1', A: sqft(40), qh: ofSite(115, 'B', 85) } as const;
const gable = { ...common, figure: '30.3-2C', A: sqft(30), qh: ofSite(130, 'C', 22) } as const;
const noted = [
  { roof: 'hip 26.6 degrees', at: hip, zone: '1', p: -37.9 },
  { roof: 'hip 26.6 degrees', at: hip, zone: '2', p: -50.8 },
  { roof: 'hip 26.6 degrees', at: hip, zone: '3', p: -50.8 },
  { roof: 'over 60 ft', at: high, zone: '1', p: -36.7 },
  { roof: 'over 60 ft', at: high, zone: '2', p: -58.4 },
  { roof: 'over 60 ft', at: high, zone: '3', p: -80.2 },
  { roof: 'gable 25 degrees', at: gable, zone: '1', p: -47.9 },
  { roof: 'gable 25 degrees', at: gable, zone: '2', p: -69.4 },
  { roof: 'gable 25 degrees', at: gable, zone: '3', p: -81.4 },
];
const overhangs = [
  { roof: 'hip 26.6 degrees', at: hip, zone: '1', p: -63.5 },
  { roof: 'hip 26.6 degrees', at: hip, zone: '2', p: -76.4 },
  { roof: 'gable 25 degrees', at: gable, zone: '1', p: -78.8 },
  { roof: 'gable 25 degrees', at: gable, zone: '2', p: -100.2 },
  { roof: 'gable 25 degrees', at: gable, zone: '3', p: -112.3 },
];

// ASCE guide to the wind provisions of 7-22, worked examples. The velocity pressure (here q Kd) was inferred from the
// first value of each example, so the others test the curves. Flat roof read off the graph there: 0.25 psf.
const guide = [
  { figure: '30.3-2A', qKd: 40.48, within: 0.25, zone: '1', A: 10, p: -76.1 },
  { figure: '30.3-2A', qKd: 40.48, within: 0.25, zone: '2', A: 10, p: -100.4 },
  { figure: '30.3-2A', qKd: 40.48, within: 0.25, zone: '3', A: 10, p: -136.9 },
  { figure: '30.3-2A', qKd: 40.48, within: 0.25, zone: '1', A: 300, p: -51.4 },
  { figure: '30.3-2A', qKd: 40.48, within: 0.25, zone: "1'", A: 300, p: -34.0 },
  { figure: '30.3-2A', qKd: 40.48, within: 0.25, zone: '2', A: 300, p: -68.9 },
  { figure: '30.3-2B', qKd: 29.4, within: 0.15, zone: '1', A: 10, p: -64.1 },
  { figure: '30.3-2B', qKd: 29.4, within: 0.15, zone: '3', A: 10, p: -111.1 },
  { figure: '30.3-2B', qKd: 29.4, within: 0.15, zone: '1', A: 208, p: -24.7 },
  { figure: '30.3-2B', qKd: 29.4, within: 0.15, zone: '2', A: 208, p: -34.7 },
  { figure: '30.3-2B', qKd: 29.4, within: 0.15, zone: '3', A: 208, p: -58.2 },
] as const;

describe('net pressure on roofs, ASCE/SEI 7-22', () => {
  test.each(noted)('$roof, zone $zone: $p psf (computed)', ({ at, zone, p }) => {
    expect(Math.abs(Number(asce722.upliftPressure({ ...at, zone })) - p)).toBeLessThanOrEqual(0.06);
  });
  test.each(overhangs)('overhang of $roof, zone $zone: $p psf (computed)', ({ at, zone, p }) => {
    const uplift = asce722.upliftPressure({ ...at, zone, surface: 'overhang' });
    expect(Math.abs(Number(uplift) - p)).toBeLessThanOrEqual(0.07);
  });
  test.each(guide)(
    'guide example, Fig. $figure, zone $zone at $A ft²: $p psf (published)',
    ({ figure, qKd, within, zone, A, p }) => {
      const qh = psf(qKd / 0.85) as VelocityPressure<'7-22'>;
      const uplift = asce722.upliftPressure({ ...common, figure, zone, A: sqft(A), qh });
      expect(Math.abs(Number(uplift) - p)).toBeLessThanOrEqual(within);
    },
  );
  test('the tables have their rows', () => {
    expect([noted.length, overhangs.length, guide.length]).toEqual([9, 5, 11]);
  });
  test('downward on the two roofs: 20.5 and 22.6 psf (computed)', () => {
    expect(Math.abs(Number(asce722.downwardPressure({ ...hip, zone: '1' })) - 20.5)).toBeLessThanOrEqual(
      0.06,
    );
    expect(Math.abs(Number(asce722.downwardPressure({ ...gable, zone: '1' })) - 22.6)).toBeLessThanOrEqual(
      0.06,
    );
  });

  test('the directionality factor multiplies the internal part too', () => {
    const at = { ...hip, zone: '1', A: sqft(5) };
    const [enclosed, partial] = [at, { ...at, enclosure: 'partially enclosed' } as const].map((v) =>
      Number(asce722.upliftPressure(v)),
    );
    expect((enclosed ?? 0) - (partial ?? 0)).toBeCloseTo(hip.qh * 0.85 * (0.55 - 0.18), 9);
  });
  test('the factor stands in the working once, with its table', () => {
    const trace: Trace = [];
    asce722.upliftPressure({ ...hip, zone: '1' }, trace);
    expect(trace.filter((step) => step.clause === 'ASCE/SEI 7-22 Table 26.6-1').length).toBe(1);
  });
  test('up to 7 degrees an overhang takes the curves of the figure, not roof plus wall', () => {
    const flat = { ...hip, figure: '30.3-2A', zone: '3', surface: 'overhang', A: sqft(5) } as const;
    expect(Number(asce722.upliftPressure(flat))).toBeCloseTo(hip.qh * 0.85 * (-3.2 - 0.18), 9);
  });
  test('downward on a steeper overhang the wall below adds its suction', () => {
    const at = { ...hip, zone: '1', surface: 'overhang', A: sqft(5) } as const;
    expect(Number(asce722.downwardPressure(at))).toBeCloseTo(hip.qh * 0.85 * (0.7 + 1.4 + 0.18), 9);
  });
  test('a hip between 27 and 45 degrees cites both figures', () => {
    const trace: Trace = [];
    asce722.upliftPressure({ ...hip, figure: '30.3-2G', zone: '3', theta: degree(36) }, trace);
    const cited = new Set(trace.map((step) => step.clause));
    expect(cited.has('ASCE/SEI 7-22 Fig. 30.3-2F') && cited.has('ASCE/SEI 7-22 Fig. 30.3-2G')).toBe(true);
  });
  test('a weak wind leaves the minimum of 16 psf either way', () => {
    const weak = { ...hip, zone: '1', qh: ofSite(60, 'B', 15) };
    expect([asce722.upliftPressure(weak), asce722.downwardPressure(weak)]).toEqual([-16, 16]);
  });
  test('over 60 ft an overhang is pulled up by roof and wall without relief by a parapet, and refused downward', () => {
    const over = { ...high, figure: '30.4-1', zone: '3', surface: 'overhang', A: sqft(5) } as const;
    const uplift = asce722.upliftPressure({ ...over, parapet: 'at least 3 ft all round' });
    expect(Number(uplift)).toBeCloseTo(over.qh * 0.85 * (-3.2 - 1.0 - 0.18), 9);
    const outcome = asce722.downwardPressure(over);
    expect(isRefusal(outcome) && [outcome.code, outcome.input]).toEqual(['outside-scope', 'surface']);
  });
  test('an open building is refused: it takes net coefficients', () => {
    const outcome = asce722.downwardPressure({ ...hip, zone: '1', enclosure: 'open' });
    expect(isRefusal(outcome) && [outcome.code, outcome.input]).toEqual(['outside-scope', 'enclosure']);
  });
});
