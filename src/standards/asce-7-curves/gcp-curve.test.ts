import { describe, expect, test } from 'vitest';
import { sqft } from '../../quantities/quantity.ts';
import { stepLine } from '../../trace/print.ts';
import type { Trace } from '../../trace/step.ts';
import { curve, gcpOn } from './gcp-curve.ts';
import {
  highBuildingFigure,
  lowSlopeFigure,
  monoslopeTo10Figure,
  monoslopeTo30Figure,
  walls,
} from './roof-figures.ts';

const A = sqft(50);
const flat = lowSlopeFigure('flat');
const mono10 = monoslopeTo10Figure('monoslope to 10');
const mono30 = monoslopeTo30Figure('monoslope to 30');
const high = highBuildingFigure('over 60 ft');

// Equations b + m log A as the commentary tables C30.3 of 7-22 carry them, four decimals, read off public code.
const printed = [
  { of: flat.positive, b: 0.4, m: -0.1 },
  { of: flat.negative['1'], b: -2.112, m: 0.412 },
  { of: flat.negative['2'], b: -2.8297, m: 0.5297 },
  { of: flat.negative['3'], b: -4.2595, m: 1.0595 },
  { of: flat.overhang?.negative['1'], b: -1.8, m: 0.1 },
  { of: flat.overhang?.negative['2'], b: -3.0063, m: 0.7063 },
  { of: flat.overhang?.negative['3'], b: -4.436, m: 1.236 },
  { of: mono10.negative['2'], b: -1.4, m: 0.1 },
  { of: mono10.negative["2'"], b: -1.7, m: 0.1 },
  { of: mono10.negative['3'], b: -2.4, m: 0.6 },
  { of: mono10.negative["3'"], b: -3.6, m: 1.0 },
  { of: mono30.negative['1'], b: -1.5, m: 0.2 },
  { of: mono30.negative['2'], b: -2.0, m: 0.4 },
  { of: mono30.negative['3'], b: -3.8, m: 0.9 },
  { of: high.negative['1'], b: -1.6943, m: 0.2943 },
  { of: high.negative['2'], b: -2.712, m: 0.412 },
  { of: high.negative['3'], b: -3.7297, m: 0.5297 },
  { of: walls.positive, b: 1.1766, m: -0.1766 },
];

describe('a (GCp) curve', () => {
  test.each(printed)('draws $b + $m log A (published)', ({ of, b, m }) => {
    if (of?.kind !== 'curve') throw new Error('no such curve');
    const trace: Trace = [];
    expect(gcpOn(of, 'figure', A, trace)).toBeCloseTo(b + m * Math.log10(50), 3);
    const line = trace.find((step) => step.kind === 'equation' && step.symbol === 'GCp');
    expect(line?.kind === 'equation' && [line.inputs.b, line.inputs.m]).toEqual([
      expect.closeTo(b, 4),
      expect.closeTo(m, 4),
    ]);
  });
  test('is flat before its first and after its last point, and meets both', () => {
    const one = curve('published', [10, -3], [100, -1]);
    expect([1, 10, 100, 1e6].map((area) => gcpOn(one, 'figure', sqft(area)))).toEqual([-3, -3, -1, -1]);
  });
  test('with three points bends at the middle one', () => {
    const bent = curve('published', [10, -1.7], [100, -1.6], [500, -1]);
    expect(gcpOn(bent, 'figure', sqft(100))).toBeCloseTo(-1.6, 12);
    expect(gcpOn(bent, 'figure', sqft(99.999))).toBeCloseTo(-1.6, 5);
    expect(gcpOn(bent, 'figure', sqft(100.001))).toBeCloseTo(-1.6, 4);
  });
  test('of wall zone 5 pulls 1.4 up to 10 ft², 0.8 from 500 ft² and 1.1 halfway on the logarithmic scale', () => {
    const at = (area: number) => gcpOn(walls.negative5, 'figure', sqft(area));
    expect([at(10), at(500)]).toEqual([-1.4, -0.8]);
    expect(at(Math.sqrt(5000))).toBeCloseTo(-1.1, 9);
  });
  test('with one point is the same everywhere', () => {
    expect(gcpOn(curve('published', [10, -1.1]), 'figure', sqft(3000))).toBe(-1.1);
  });
  test('records its figure, the plateau in words and the line as an equation', () => {
    const trace: Trace = [];
    const one = curve('published', [10, -3], [100, -1]);
    gcpOn(one, 'Fig. X', sqft(4), trace);
    gcpOn(one, 'Fig. X', A, trace);
    const lines = trace.map(stepLine);
    expect(lines[0]).toBe('GCp = -3   flat up to 10 ft², A = 4 ft²   [Fig. X]');
    expect(lines.at(-1)).toContain('GCp = b + m · log10(A) = −5 + 2 · log10(50)');
  });
  test('known from one copy only, says so', () => {
    const trace: Trace = [];
    gcpOn(curve('one copy', [10, -3]), 'figure', A, trace);
    expect(trace[0]).toMatchObject({ kind: 'note' });
  });
});
