import { expect, test } from 'vitest';
import { tributaryOf } from './demand.ts';

test('a clip on a 16 in panel at 24 in hangs 2 2/3 ft², and each of its two screws half of it', () => {
  expect(tributaryOf(16, 24, 2)).toEqual({ place_ft2: (16 * 24) / 144, fastener_ft2: (16 * 12) / 144 });
});
test('the first clip takes the end of the run: 12 in from the end at 12 in spacing is 18 in of panel, not 12', () => {
  expect(tributaryOf(16, 12, 1, 12).place_ft2).toBeCloseTo((16 * 18) / 144, 12);
  expect(tributaryOf(16, 12, 1, 3).place_ft2).toBeCloseTo((16 * 12) / 144, 12);
});
