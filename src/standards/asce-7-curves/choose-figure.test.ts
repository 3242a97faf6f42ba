import { describe, expect, test } from 'vitest';
import { degree, foot } from '../../quantities/quantity.ts';
import { isRefusal } from '../../trace/refusal.ts';
import { chooseFigureOf716 } from '../asce-7-16/roof-figures.ts';
import { chooseFigureOf722 } from '../asce-7-22/roof-figures.ts';
import type { RoofShape } from './edition.ts';

// Bands of the figures' titles; both sides of every step.
const steps: readonly (readonly [RoofShape, number, string, string])[] = [
  ['flat', 0, '30.3-2A', '30.3-2A'],
  ['flat', 7, '30.3-2A', '30.3-2A'],
  ['gable', 7, '30.3-2A', '30.3-2A'],
  ['gable', 7.13, '30.3-2B', '30.3-2B'],
  ['gable', 20, '30.3-2B', '30.3-2B'],
  ['gable', 20.01, '30.3-2C', '30.3-2C'],
  ['gable', 27, '30.3-2C', '30.3-2C'],
  ['gable', 27.01, '30.3-2D', '30.3-2D'],
  ['gable', 45, '30.3-2D', '30.3-2D'],
  ['hip', 7, '30.3-2A', '30.3-2A'],
  ['hip', 7.01, '30.3-2E', '30.3-2E'],
  ['hip', 20.01, '30.3-2G', '30.3-2F'],
  ['hip', 27, '30.3-2G', '30.3-2F'],
  ['hip', 27.01, '30.3-2H', '30.3-2G'],
  ['hip', 45, '30.3-2H', '30.3-2G'],
  ['monoslope', 3, '30.3-2A', '30.3-2A'],
  ['monoslope', 3.01, '30.3-5A', '30.3-5A'],
  ['monoslope', 10, '30.3-5A', '30.3-5A'],
  ['monoslope', 10.01, '30.3-5B', '30.3-5B'],
  ['monoslope', 30, '30.3-5B', '30.3-5B'],
];

describe('which figure a roof takes', () => {
  test.each(steps)('%s at %f degrees: %s in 7-16, %s in 7-22', (shape, theta, in716, in722) => {
    expect(chooseFigureOf716(shape, degree(theta), foot(60))).toBe(in716);
    expect(chooseFigureOf722(shape, degree(theta), foot(60))).toBe(in722);
  });
  test('over 60 ft a low slope has a figure of its own, to 10 degrees in 7-16 and to 7 in 7-22', () => {
    const h = foot(60.1);
    expect(chooseFigureOf716('gable', degree(10), h)).toBe('30.5-1');
    expect(chooseFigureOf716('gable', degree(10.1), h)).toBe('30.3-2B');
    expect(chooseFigureOf722('monoslope', degree(7), h)).toBe('30.4-1');
    expect(chooseFigureOf722('monoslope', degree(7.1), h)).toBe('30.3-5A');
  });
  test('the exception below 90 ft holds only when asked for, below 90 ft and no higher than the building is wide', () => {
    const at = (h: number, least: number) =>
      chooseFigureOf722('flat', degree(2), foot(h), { leastDimension: foot(least) });
    expect(at(80, 100)).toBe('30.3-2A');
    expect(at(80, 79)).toBe('30.4-1');
    expect(at(90, 100)).toBe('30.4-1');
    expect(chooseFigureOf722('flat', degree(2), foot(80))).toBe('30.4-1');
  });
  const beyond: readonly (readonly [RoofShape, number, number, string])[] = [
    ['flat', 7.1, 20, 'theta'],
    ['gable', 45.1, 20, 'theta'],
    ['hip', 45.1, 20, 'theta'],
    ['monoslope', 30.1, 20, 'theta'],
    ['monoslope', 30.1, 80, 'theta'],
    ['gable', -1, 20, 'theta'],
    ['gable', Number.NaN, 20, 'theta'],
    ['gable', 10, 0, 'h'],
    ['gable', 10, Number.NaN, 'h'],
  ];
  test.each(beyond)('%s at %f degrees, %f ft: %s is refused', (shape, theta, h, input) => {
    for (const choose of [chooseFigureOf716, chooseFigureOf722]) {
      const outcome = choose(shape, degree(theta), foot(h));
      expect(
        isRefusal(outcome) && [
          outcome.code === 'outside-limits' || outcome.code === 'not-a-number',
          outcome.input,
        ],
      ).toEqual([true, input]);
    }
  });
});
