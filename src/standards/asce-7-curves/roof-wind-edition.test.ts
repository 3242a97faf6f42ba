import { describe, expect, test } from 'vitest';
import { degree, foot, mph, type Psf, sqft } from '../../quantities/quantity.ts';
import { isRefusal, type Outcome } from '../../trace/refusal.ts';
import { asce716Clauses } from '../asce-7-16/clause-list.ts';
import { asce716 } from '../asce-7-16/roof-wind.ts';
import { asce722Clauses } from '../asce-7-22/clause-list.ts';
import { asce722 } from '../asce-7-22/roof-wind.ts';
import { type EditionName, editionNames } from './edition.ts';
import type { RoofWindEditions } from './roof-wind-edition.ts';

const editions: RoofWindEditions = { '7-16': asce716, '7-22': asce722 };

/** How a caller takes an edition by the name in its job: as a function of E. */
function worstUplift<E extends EditionName>(name: E): Outcome<Psf> {
  const edition = editions[name];
  const h = foot(20);
  const theta = degree(18);
  const qh = edition.velocityPressure({ V: mph(120), exposure: 'C', h, kzBy: 'table' });
  if (isRefusal(qh)) return qh;
  const figure = edition.chooseFigure('gable', theta, h);
  if (isRefusal(figure)) return figure;
  const zone = edition.zones(figure).at(-1) ?? '';
  const place = {
    figure,
    zone,
    surface: 'roof',
    A: sqft(5),
    qh,
    enclosure: 'enclosed',
    parapet: 'none',
    theta,
  } as const;
  return edition.upliftPressure(place);
}

describe('one interface for both editions', () => {
  test.each(editionNames)('a caller takes edition %s by its name', (name: EditionName) => {
    // By hand: 0.00256 x 0.90 x 0.85 x 120² x (-3.6 - 0.18); Kz, Kd and this corner are alike in both editions.
    expect(Number(worstUplift(name))).toBeCloseTo(-106.598, 2);
  });

  test('the velocity pressure of one edition does not go into the other', () => {
    const site = { V: mph(120), exposure: 'C', h: foot(20), kzBy: 'table' } as const;
    const [q16, q22] = [asce716.velocityPressure(site), asce722.velocityPressure(site)];
    if (isRefusal(q16) || isRefusal(q22)) throw new Error('refused');
    const place = {
      figure: '30.3-2B',
      surface: 'roof',
      A: sqft(5),
      enclosure: 'enclosed',
      parapet: 'none',
    } as const;
    const right = [
      asce716.upliftPressure({ ...place, zone: '1', qh: q16 }),
      asce722.upliftPressure({ ...place, zone: '1', qh: q22 }),
    ];
    // @ts-expect-error a pressure of 7-22 has no directionality factor inside: 7-16 must not take it
    const high = asce716.upliftPressure({ ...place, zone: '1', qh: q22 });
    // @ts-expect-error a pressure of 7-16 has the factor inside: 7-22 would apply it twice
    const low = asce722.upliftPressure({ ...place, zone: '1', qh: q16 });
    expect(Number(high) / Number(right[0])).toBeCloseTo(1 / 0.85, 9);
    expect(Number(low) / Number(right[1])).toBeCloseTo(0.85, 9);
  });

  test('every clause of both folders has an id of its own folder and cites its own edition', () => {
    for (const [edition, list] of [
      ['7-16', asce716Clauses],
      ['7-22', asce722Clauses],
    ] as const) {
      expect(list.length).toBe(18);
      expect(new Set(list.map((clause) => clause.about.id)).size).toBe(18);
      for (const { about } of list) {
        expect(about.id.startsWith(`asce-${edition}/`)).toBe(true);
        expect(about.cites.startsWith(`ASCE/SEI ${edition} `)).toBe(true);
      }
    }
  });

  test('every clause refuses what is not a number instead of computing with it', () => {
    for (const clause of [...asce716Clauses, ...asce722Clauses]) {
      const quantities = Object.entries(clause.about.inputs).filter(([, input]) => input.kind === 'quantity');
      const sound = Object.fromEntries(
        Object.entries(clause.about.inputs).map(([name, input]) => [
          name,
          input.kind === 'choice' ? input.options[0] : 20,
        ]),
      );
      for (const [name] of quantities)
        for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
          const outcome = clause({ ...sound, [name]: bad } as never);
          expect(isRefusal(outcome) && outcome.input).toBe(name);
        }
    }
  });
});
