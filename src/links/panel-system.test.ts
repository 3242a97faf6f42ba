import { describe, expect, test } from 'vitest';
import { panelInput } from '../job/cover-input.ts';
import { panelSystemCapacity } from './panel-system.ts';

const panel = (rows: unknown, more: object = {}) =>
  panelInput.parse({
    system: 'standing seam on clips',
    coverage: '16 in',
    metal: 'steel',
    thickness: '24 ga',
    grade: 'SS50',
    upliftTest: { source: 'test report', safetyFactor: 2, rows },
    ...more,
  });
const rows = [
  { spacing: '12 in', ultimate: '180 psf', failure: 'clip' },
  { spacing: '24 in', ultimate: '120 psf', failure: 'clip' },
  { spacing: '36 in', ultimate: '70 psf', failure: 'seam' },
];

describe('a tested uplift table', () => {
  test('at a tested spacing gives the tested pressure over the safety factor', () => {
    expect(panelSystemCapacity(panel(rows), 12, 'ASD').value).toBeCloseTo(90, 9);
    expect(panelSystemCapacity(panel(rows), 24, 'ASD').value).toBeCloseTo(60, 9);
  });

  test('between spacings interpolates the clip force, not the pressure', () => {
    // Forces per clip: 180 psf on 16 by 12 in = 240 lb; 120 psf on 16 by 24 in = 320 lb. At 18 in 280 lb, on 2 ft² 140 psf.
    expect(panelSystemCapacity(panel(rows), 18, 'ASD').value).toBeCloseTo(70, 9);
    expect(panelSystemCapacity(panel(rows), 18, 'ASD').value).not.toBeCloseTo((180 + 120) / 4, 3);
  });

  test('between rows that failed in different ways is unproven', () => {
    const capacity = panelSystemCapacity(panel(rows), 30, 'ASD');
    expect(capacity.value).toBeUndefined();
    expect(capacity.because).toContain('failed in different ways');
  });

  for (const spacing of [6, 11.9, 37, 60])
    test(`at ${spacing} in, outside what was tested, is unproven`, () => {
      const capacity = panelSystemCapacity(panel(rows), spacing, 'ASD');
      expect(capacity.value).toBeUndefined();
      expect(capacity.because).toContain('lies outside');
    });

  test('without a table is unproven and carries the question', () => {
    const capacity = panelSystemCapacity(panel(rows, { upliftTest: { ask: 'Is there a test?' } }), 24, 'ASD');
    expect(capacity.value).toBeUndefined();
    expect(capacity.because).toContain('Is there a test?');
  });

  test('in LRFD is 1.6 times the ASD value', () => {
    expect(panelSystemCapacity(panel(rows), 24, 'LRFD').value).toBeCloseTo(96, 9);
  });
});
