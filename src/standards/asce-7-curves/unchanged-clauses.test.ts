import { describe, expect, test } from 'vitest';
import { degree, foot, psf } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { velocityPressureOf716 } from '../asce-7-16/26.10-velocity-pressure.ts';
import { unchangedClausesOf716 } from '../asce-7-16/unchanged-clauses.ts';
import { velocityPressureOf722 } from '../asce-7-22/26.10-velocity-pressure.ts';
import { unchangedClausesOf722 } from '../asce-7-22/unchanged-clauses.ts';
import { groundElevation } from './26.09-ground-elevation.table.ts';
import { edgeStrips } from './30.03-edge-strip.table.ts';

const editions = [
  { name: '7-16', clauses: unchangedClausesOf716, ke: velocityPressureOf716.ke },
  { name: '7-22', clauses: unchangedClausesOf722, ke: velocityPressureOf722.ke },
];

/** Computed from the definition of 26.2. A fastener never takes more than its own tributary area. */
const areas = [
  { element: 'purlin', span: 25, width: 5, A: 208.333 },
  { element: 'panel', span: 5, width: 3, A: 15 },
  { element: 'narrow panel', span: 5, width: 1.333, A: 8.333 },
  { element: 'fastener', span: 5, width: 1, A: 5 },
  { element: 'fastener', span: 4, width: 0.5, A: 2 },
  { element: 'clip', span: 5, width: 1.5, A: 7.5 },
];

describe.each(editions)('clauses that both editions share, $name', ({ clauses, ke }) => {
  test.each(groundElevation)('Ke at $ze ft is $Ke ($origin)', (row) => {
    expect(Math.abs(Number(ke({ ze: foot(row.ze) })) - row.Ke)).toBeLessThanOrEqual(row.tolerance);
  });
  test.each(edgeStrips)('a for L $L ft, h $h ft, slope $theta is $a ft', (row) => {
    const a = clauses.edgeStripWidth({ L: foot(row.L), h: foot(row.h), theta: degree(row.theta) });
    expect(a).toBeCloseTo(row.a, 3);
  });
  test.each(areas)('effective wind area of a $element, $span by $width ft, is $A ft²', (row) => {
    const own = row.element === 'fastener' || row.element === 'clip';
    const area = own ? clauses.areaOfFastener : clauses.areaOfMember;
    expect(area({ span: foot(row.span), width: foot(row.width) })).toBeCloseTo(row.A, 3);
  });
  test('tables are not empty', () => {
    expect(groundElevation.length + edgeStrips.length).toBe(21);
  });

  test('a net pressure of 11.1 psf counts as 16, in ASD 9.6', () => {
    const p = clauses.minimumPressure({ direction: 'downward', p: psf(11.1) });
    expect(p).toBe(16);
    expect(clauses.asdPressure({ p: psf(16) })).toBeCloseTo(9.6, 2);
  });
  test('an uplift of 43.3 psf is above the minimum, in ASD 25.98', () => {
    expect(clauses.minimumPressure({ direction: 'uplift', p: psf(-43.3) })).toBe(-43.3);
    expect(clauses.asdPressure({ p: psf(-43.3) })).toBeCloseTo(-25.98, 2);
  });
  test('a weak uplift counts as 16 psf too', () => {
    expect(clauses.minimumPressure({ direction: 'uplift', p: psf(-3) })).toBe(-16);
  });

  test('mean roof height is the eave height up to 10 degrees and the average above', () => {
    const heights = { eave: foot(12), top: foot(20) };
    expect(clauses.meanRoofHeight({ ...heights, theta: degree(10) })).toBe(12);
    expect(clauses.meanRoofHeight({ ...heights, theta: degree(10.1) })).toBe(16);
  });
  test('a top below the eave is refused', () => {
    const outcome = clauses.meanRoofHeight({ eave: foot(20), top: foot(12), theta: degree(20) });
    expect(isRefusal(outcome) && outcome.input).toBe('top');
  });
  test('internal pressure by enclosure', () => {
    const by = (enclosure: 'enclosed' | 'partially enclosed' | 'partially open' | 'open') =>
      clauses.internalPressure({ enclosure });
    expect([by('enclosed'), by('partially enclosed'), by('partially open'), by('open')]).toEqual([
      0.18, 0.55, 0.18, 0,
    ]);
  });
  test('over 300 ft wide and up to 7 degrees a stays within 0.8 h, above 7 degrees it does not', () => {
    const wide = { L: foot(400), h: foot(12) };
    expect(clauses.edgeStripWidth({ ...wide, theta: degree(7) })).toBeCloseTo(9.6, 9);
    expect(clauses.edgeStripWidth({ ...wide, theta: degree(7.1) })).toBeCloseTo(16, 9);
  });
  test('a is refused without a height', () => {
    const outcome = clauses.edgeStripWidth({ L: foot(40), h: foot(0), theta: degree(5) });
    expect(isRefusal(outcome) && outcome.input).toBe('h');
  });
});
