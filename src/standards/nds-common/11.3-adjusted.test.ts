import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degree, inch, psi, ratio } from '../../quantities/quantity.ts';
import { isRefusal, refusalText } from '../../trace/refusal.ts';
import type { Trace } from '../../trace/step.ts';
import { clausesOfNds2018 } from '../nds-2018/clauses.ts';
import { nds2018 } from '../nds-2018/edition.ts';
import { nds2024 } from '../nds-2024/edition.ts';
import { sheathingRows } from './12.4-sheathing.table.ts';
import { panelAllowances } from './screw-allowance.ts';

const cool = { inService: 'dry', temperature: 'to 100 F' } as const;
const wind = { ...cool, method: 'ASD', load: 'wind or earthquake' } as const;
const reference = { ...wind, load: 'occupancy live' } as const;
const wood = { member: 'lumber', screwStandard: 'ASME B18.6.1' } as const;
const dry = { atFabrication: 'dry' } as const;
const notes = (trace: Trace) => trace.flatMap((step) => (step.kind === 'note' ? [step.text] : []));
const refusedInput = (outcome: unknown) => (isRefusal(outcome) ? outcome.input : outcome);

describe('worked examples', () => {
  test('8d common through 0.105 in steel into spruce-pine-fir: 49.5 lb (AWC E2.1a, computed)', () => {
    const nail = {
      G: ratio(0.42),
      D: inch(0.131),
      shank: 'smooth',
      pt: inch(2.395),
      member: 'lumber',
    } as const;
    expect(
      Math.abs(Number(nds2018.nailWithdrawal({ ...nail, ...dry, ...reference })) - 49.5),
    ).toBeLessThanOrEqual(0.05);
  });

  test('1/2 x 4 lag through 1-1/2 in into southern pine: thread 2.1875 in, 954.98 lb (AWC E2.3, computed)', () => {
    const lengths = { L: inch(4), T: inch(2.5), E: inch(0.3125), ts: inch(1.5), tm: inch(5.5) };
    const pt = clausesOfNds2018.threadInMember(lengths);
    expect(pt).toBeCloseTo(2.1875, 12);
    const lag = { G: ratio(0.55), D: inch(0.5), pt: inch(Number(pt)), ...reference };
    expect(
      Math.abs(Number(nds2018.lagWithdrawal({ ...lag, grain: 'side grain' })) - 954.98),
    ).toBeLessThanOrEqual(0.05);
    expect(
      Math.abs(Number(nds2018.lagWithdrawal({ ...lag, grain: 'end grain' })) - 954.98 * 0.75),
    ).toBeLessThanOrEqual(0.05);
  });

  test('8d common in spruce-pine-fir with 2.0 in: 66 lb of wind uplift (FEMA P-55, Example 9.1, published)', () => {
    const nail = { G: ratio(0.42), D: inch(0.131), shank: 'smooth', pt: inch(2), member: 'lumber' } as const;
    expect(Math.abs(Number(nds2018.nailWithdrawal({ ...nail, ...dry, ...wind })) - 66)).toBeLessThanOrEqual(
      0.5,
    );
  });

  test('100 lb of reference value are 160 lb in ASD and 215.8 lb in LRFD under wind (Appendix N, computed)', () => {
    const screw = {
      G: ratio(0.5),
      D: inch(0.19),
      pt: inch(1),
      ...wood,
      ...cool,
      load: 'wind or earthquake',
    } as const;
    const perInch = 2850 * 0.25 * 0.19;
    const share = (method: 'ASD' | 'LRFD') =>
      (Number(nds2018.screwWithdrawal({ ...screw, method })) / perInch) * 100;
    expect(share('ASD')).toBeCloseTo(160, 9);
    expect(share('LRFD')).toBeCloseTo(215.8, 9);
  });

  test('16d through a plate and 3/4 in of deck into Douglas fir: 174 lb (141 x 1.6 x 1.25/1.62, published)', () => {
    const factor = clausesOfNds2018.penetrationFactor({ fastener: 'nail', p: inch(1.25), D: inch(0.162) });
    expect(Math.abs(141 * 1.6 * Number(factor) - 174)).toBeLessThanOrEqual(0.5);
  });
});

describe('nailed roof sheathing', () => {
  test('the table holds its rows', () => expect(sheathingRows.length).toBe(12));
  // Printed to 0.1 lb, hence 0.06.
  for (const row of sheathingRows)
    for (const edition of [nds2018, nds2024])
      test(`${edition.name}, ${row.nail} through ${row.t} in G ${row.Gpanel} into G ${row.Gframing}: ${row.capacity} lb (${row.source}, ${row.origin})`, () => {
        const pt = inch(row.ring === 0 ? row.L - row.t : Math.min(row.ring, row.L - row.t));
        const shank = row.ring === 0 ? 'smooth' : 'ring';
        const nail = { D: inch(row.D), pt, shank, ...dry, ...wind } as const;
        const head = { DH: inch(row.DH), tns: inch(row.t) };
        const withdrawal = edition.nailWithdrawal({ ...nail, G: ratio(row.Gframing), member: 'lumber' });
        expect(Math.abs(Number(withdrawal) - row.withdrawal)).toBeLessThanOrEqual(0.06);
        const through = edition.headPullThrough({ ...head, ...wind, G: ratio(row.Gpanel) });
        expect(Math.abs(Number(through) - row.pullThrough)).toBeLessThanOrEqual(0.06);
        const all = edition.nailedSheathing({
          ...nail,
          ...head,
          Gframing: ratio(row.Gframing),
          Gpanel: ratio(row.Gpanel),
        });
        expect(Math.abs(Number(all) - row.capacity)).toBeLessThanOrEqual(0.06);
      });

  test('a washer, a thin panel or unknown-dense framing gives a refusal, not a number', () => {
    const nail = { D: inch(0.131), pt: inch(2), shank: 'smooth', ...dry, ...wind } as const;
    const good = { ...nail, DH: inch(0.281), tns: inch(0.4375), Gframing: ratio(0.42), Gpanel: ratio(0.5) };
    expect(refusedInput(nds2018.nailedSheathing({ ...good, DH: inch(1) }))).toBe('DH');
    expect(refusedInput(nds2018.nailedSheathing({ ...good, tns: inch(0.25) }))).toBe('tns');
    expect(refusedInput(nds2018.nailedSheathing({ ...good, Gframing: ratio(0.3) }))).toBe('Gframing');
  });
});

describe('moisture and heat reach the design capacity', () => {
  const hotWet = { inService: 'wet', temperature: '100 to 125 F' } as const;
  test('a screw or lag in wet wood at 100 to 125 F keeps 0.7 x 0.7', () => {
    const screw = { G: ratio(0.5), D: inch(0.25), pt: inch(1), ...reference };
    const share = (at: (service: object) => unknown) => Number(at(hotWet)) / Number(at({}));
    expect(share((service) => nds2018.screwWithdrawal({ ...screw, ...wood, ...service }))).toBeCloseTo(
      0.49,
      12,
    );
    const lag = { ...screw, grain: 'side grain' } as const;
    expect(share((service) => nds2018.lagWithdrawal({ ...lag, ...service }))).toBeCloseTo(0.49, 12);
    const head = { G: ratio(0.42), DH: inch(0.281), tns: inch(0.469), ...reference };
    expect(share((service) => nds2018.headPullThrough({ ...head, ...service }))).toBeCloseTo(0.49, 12);
    expect(share((service) => nds2018.screwLateral({ ...lateral, ...service }))).toBeCloseTo(0.49, 12);
  });

  test('a smooth nail driven wet keeps a quarter when the wood dries, a ring-shank nail all of it', () => {
    const at = (shank: 'smooth' | 'ring', atFabrication: 'dry' | 'wet') => {
      const nail = { G: ratio(0.42), D: inch(0.131), pt: inch(2), member: 'lumber', shank } as const;
      return Number(nds2018.nailWithdrawal({ ...nail, ...reference, atFabrication }));
    };
    expect(at('smooth', 'wet') / at('smooth', 'dry')).toBeCloseTo(0.25, 12);
    expect(at('ring', 'wet')).toBe(at('ring', 'dry'));
  });
});

describe('a panel holds', () => {
  const deck = {
    D: inch(0.19),
    pt: inch(0.4375),
    screwStandard: 'other than ASME B18.6.1',
    ...reference,
  } as const;
  test('plywood of 7/16 in: 41.8 lb a No. 10, and the working says what that rests on (computed)', () => {
    const trace: Trace = [];
    const value = nds2018.screwWithdrawal({ ...deck, G: ratio(0.42), member: 'plywood' }, trace);
    expect(Math.abs(Number(value) - 41.8)).toBeLessThanOrEqual(0.1);
    expect(notes(trace)).toContain(panelAllowances.plywood);
  });

  test('OSB and Structural I gain nothing by their 0.50, and OSB says that no table confirms it', () => {
    const trace: Trace = [];
    const at = (member: 'plywood' | 'OSB', G: number) =>
      nds2018.screwWithdrawal({ ...deck, G: ratio(G), member }, trace);
    expect(at('OSB', 0.5)).toBe(at('plywood', 0.42));
    expect(at('plywood', 0.5)).toBe(at('plywood', 0.42));
    expect(notes(trace)).toContain(panelAllowances.OSB);
  });

  test('a smooth nail held by 7/16 in of panel is worth 8.0 lb: G 0.40 (panel note, computed)', () => {
    const nail = { G: ratio(0.5), D: inch(0.131), shank: 'smooth', pt: inch(0.4375), member: 'OSB' } as const;
    expect(
      Math.abs(Number(nds2018.nailWithdrawal({ ...nail, ...dry, ...reference })) - 8),
    ).toBeLessThanOrEqual(0.05);
  });
});

const lateral = {
  D: inch(0.19),
  Dr: inch(0.152),
  G: ratio(0.5),
  p: inch(1.9),
  side: 'steel',
  ts: inch(0.06),
  Fus: psi(45_000),
  ...wood,
  ...dry,
  ...reference,
} as const;

describe('lateral', () => {
  test('No. 10 through 0.060 in steel: 116 lb, as Table 12M prints it (published)', () => {
    expect(Math.abs(Number(nds2018.screwLateral(lateral)) - 116)).toBeLessThanOrEqual(0.5);
  });

  test('16d common on a 1-1/2 in side of Douglas fir: 141 lb, 1.1 times that in a diaphragm (Table 12N)', () => {
    const nail = {
      D: inch(0.162),
      G: ratio(0.5),
      p: inch(1.62),
      side: 'wood',
      ts: inch(1.5),
      Gs: ratio(0.5),
      member: 'lumber',
    } as const;
    const at = (use: 'diaphragm' | 'other') =>
      Number(nds2018.nailLateral({ ...nail, ...dry, ...reference, use }));
    expect(Math.abs(at('other') - 141)).toBeLessThanOrEqual(0.5);
    expect(at('diaphragm') / at('other')).toBeCloseTo(1.1, 12);
  });

  test('short of 10 D the lesser of the equations and the reduced table counts; short of 6 D nothing', () => {
    const at = (p: number) => nds2018.screwLateral({ ...lateral, p: inch(p) });
    expect(Number(at(1.14)) / Number(at(1.9))).toBeCloseTo(0.6, 9);
    expect(refusedInput(at(1.13))).toBe('p');
  });

  test('a deck panel alone cannot hold a screw sideways, and the refusal says where to go', () => {
    const outcome = nds2018.screwLateral({ ...lateral, member: 'OSB', p: inch(0.4375) });
    expect(isRefusal(outcome) && refusalText(outcome)).toContain(
      'it does not fit this OSB panel: reach the framing, or use a test',
    );
    // Six diameters of a No. 8 do fit 1-1/8 in of plywood.
    const thick = {
      ...lateral,
      D: inch(0.164),
      Dr: inch(0.131),
      member: 'plywood',
      p: inch(1.125),
      G: ratio(0.42),
    } as const;
    expect(isRefusal(nds2018.screwLateral(thick))).toBe(false);
  });

  test('what must be known is asked for, not assumed', () => {
    const { Fus, ...unknownSteel } = lateral;
    expect(Fus).toBe(45_000);
    expect(nds2018.screwLateral(unknownSteel)).toMatchObject({ code: 'missing-input', input: 'Fus' });
    expect(nds2018.screwLateral({ ...lateral, side: 'wood' })).toMatchObject({
      code: 'missing-input',
      input: 'Gs',
    });
    const large = { ...lateral, D: inch(0.268), Dr: inch(0.209), p: inch(2.68) };
    expect(nds2018.screwLateral(large)).toMatchObject({ code: 'missing-input', input: 'Cg' });
    expect(nds2018.screwLateral({ ...large, Cg: ratio(1) })).toMatchObject({
      code: 'missing-input',
      input: 'CΔ',
    });
    expect(refusedInput(nds2018.screwLateral({ ...lateral, Dr: inch(0.191) }))).toBe('Dr');
  });

  test('from 1/4 in on an angle left out is the worst one', () => {
    const large = { ...lateral, D: inch(0.268), Dr: inch(0.209), p: inch(2.68), Cg: ratio(1), CΔ: ratio(1) };
    const across = nds2018.screwLateral({ ...large, θ: degree(90) });
    expect(nds2018.screwLateral(large)).toBe(across);
    expect(Number(nds2018.screwLateral({ ...large, θ: degree(0) }))).toBeGreaterThan(Number(across));
    expect(nds2018.screwLateral({ ...large, Cg: ratio(0.5) })).toBeCloseTo(Number(across) / 2, 9);
  });

  test('roof sheet thinner than any table row says so, and that the sheet has its own checks', () => {
    const trace: Trace = [];
    nds2018.screwLateral({ ...lateral, ts: inch(0.0179) }, trace);
    expect(notes(trace).join(' ')).toContain('thinner than any row of the tables');
  });
});

describe('properties', () => {
  const G = fc.double({ min: 0.31, max: 0.73, noNaN: true });
  const depth = fc.double({ min: 0.1, max: 6, noNaN: true });
  test('more thread and heavier wood never hold less', () => {
    fc.assert(
      fc.property(
        G,
        G,
        depth,
        depth,
        fc.constantFrom('lumber', 'plywood', 'OSB'),
        (g1, g2, p1, p2, member) => {
          const at = (g: number, pt: number) =>
            Number(
              nds2018.screwWithdrawal({
                G: ratio(g),
                D: inch(0.19),
                pt: inch(pt),
                ...wind,
                ...wood,
                member: member as 'OSB',
              }),
            );
          return at(Math.min(g1, g2), Math.min(p1, p2)) <= at(Math.max(g1, g2), Math.max(p1, p2));
        },
      ),
    );
  });

  test('deeper penetration and heavier wood never carry less sideways, and both editions agree', () => {
    const p = fc.double({ min: 1.14, max: 4, noNaN: true });
    fc.assert(
      fc.property(G, G, p, p, (g1, g2, p1, p2) => {
        const at = (edition: typeof nds2018, g: number, deep: number) =>
          Number(edition.screwLateral({ ...lateral, G: ratio(g), p: inch(deep) }));
        const [low, high] = [
          at(nds2018, Math.min(g1, g2), Math.min(p1, p2)),
          at(nds2018, Math.max(g1, g2), Math.max(p1, p2)),
        ];
        return low > 0 && low <= high + 1e-9 && at(nds2024, Math.min(g1, g2), Math.min(p1, p2)) === low;
      }),
    );
  });
});
