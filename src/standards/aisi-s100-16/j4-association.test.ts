import { describe, expect, test } from 'vitest';
import { inch, lbf, psi } from '../../quantities/quantity.ts';
import { isRefusal, type Outcome, refusalText } from '../../trace/refusal.ts';
import { aisiS10016 } from './edition.ts';
import { pullOver, pullOverEquation } from './j4.4.2-pull-over.ts';
import {
  associationScrews,
  associationSizes,
  computedAssociationRows,
  olderAssociationRows,
  publishedAssociationRows,
} from './j4-association.table.ts';

function given<T extends number>(outcome: Outcome<T>): T {
  if (isRefusal(outcome)) throw new Error(refusalText(outcome));
  return outcome;
}

/** Allowable values are printed to whole pounds. */
const WHOLE_POUND = 0.5;

const off = (value: number, printed: number): number => Math.abs(value - printed);

type Row = (typeof computedAssociationRows)[number];

function cells(row: Row, size: (typeof associationSizes)[number]) {
  const { d, head, shear, tension } = associationScrews[size];
  const [t, Fu] = [inch(row.t), psi(row.Fu * 1000)];
  const sheet = { d: inch(d), t1: t, t2: t, Fu1: Fu, Fu2: Fu };
  const ownShear = given(aisiS10016.screwShear({ d: inch(d), Pnvs: lbf(shear) }, 'ASD'));
  const ownTension = given(aisiS10016.screwTension({ d: inch(d), Pnts: lbf(tension) }, 'ASD'));
  const over = pullOverEquation({ t1: t, dwe: inch(head), Fu1: Fu, share: 1 as never }) / 3;
  return {
    shear: Math.min(given(aisiS10016.shear(sheet, 'ASD')), ownShear),
    out: Math.min(given(aisiS10016.pullOut({ tc: t, d: inch(d), Fu2: Fu }, 'ASD')), ownTension),
    over: Math.min(over, ownTension),
  };
}

describe('screw table of the framing associations, ASD', () => {
  const tables = { published: publishedAssociationRows, computed: computedAssociationRows };
  test('the table holds 195 cells', () => {
    expect((publishedAssociationRows.length + computedAssociationRows.length) * 15).toBe(195);
  });
  for (const [origin, rows] of Object.entries(tables))
    for (const row of rows)
      for (const size of associationSizes)
        test(`${row.name}, screw ${size} (${origin})`, () => {
          const { shear, out, over } = cells(row, size);
          expect(off(shear, row[`shear${size}`])).toBeLessThanOrEqual(WHOLE_POUND);
          expect(off(out, row[`out${size}`])).toBeLessThanOrEqual(WHOLE_POUND);
          expect(off(over, row[`over${size}`])).toBeLessThanOrEqual(WHOLE_POUND);
        });

  test('the table prints pull-over of #6 and #8 heads of 0.272 in, which J4.4 itself does not count (5/16 in)', () => {
    for (const size of [6, 8] as const) {
      const { d, head } = associationScrews[size];
      const small = {
        bearing: 'head alone',
        pull: 'all round',
        d: inch(d),
        dh: inch(head),
        t1: inch(0.0451),
      } as const;
      const outcome = pullOver({ ...small, Fu1: psi(45_000) });
      expect(isRefusal(outcome) && outcome.input).toBe('dh');
    }
  });
});

describe('older screw table, not capped by the screw, ASD', () => {
  test('the table is not empty', () => expect(olderAssociationRows).toHaveLength(12));
  for (const row of olderAssociationRows)
    test(`${row.name} (computed)`, () => {
      const [t, d, Fu] = [inch(row.t), inch(row.d), psi(row.Fu * 1000)];
      const shear = given(aisiS10016.shear({ t1: t, t2: t, d, Fu1: Fu, Fu2: Fu }, 'ASD'));
      const out = given(aisiS10016.pullOut({ tc: t, d, Fu2: Fu }, 'ASD'));
      expect(off(shear, row.shear)).toBeLessThanOrEqual(WHOLE_POUND);
      expect(off(out, row.out)).toBeLessThanOrEqual(WHOLE_POUND);
    });
});
