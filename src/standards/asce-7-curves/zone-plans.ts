/** Zone plans that are the same in 7-16 and 7-22. */
import { atCorner, rest, within, type ZonePlan } from './zone-rule.ts';

/** Fig. 30.3-2A, slope up to 7 degrees: by the mean roof height, not by a; ridges are ignored. Published. */
export const lowSlopePlan: ZonePlan = {
  rules: [
    { zone: '3', where: [atCorner(0.2, 0.6, 'h')] },
    { zone: '2', where: [[within('outside', 0.6, 'h')]] },
    { zone: '1', where: [[within('outside', 1.2, 'h')]] },
    rest("1'"),
  ],
};

/** Fig. 30.3-5A, monoslope over 3 to 10 degrees. Widths published. */
export const monoslopeTo10Plan: ZonePlan = {
  rules: [
    { zone: "3'", where: [[within('high edge', 2), within('rake', 4)]] },
    { zone: "2'", where: [[within('high edge', 2)]] },
    { zone: '3', where: [[within('eave', 2), within('rake', 2)]] },
    { zone: '2', where: [[within('eave', 1)]] },
    { zone: "2'", where: [[within('rake', 2)]] },
    rest('1'),
  ],
  reading:
    "Fig. 30.3-5A: zone 3' is taken 4a long along the high edge and 2a deep. Its direction rests on one copy, not on the page.",
};

/** Fig. 30.3-5B, monoslope over 10 to 30 degrees. From memory, medium to low confidence. */
export const monoslopeTo30Plan: ZonePlan = {
  rules: [
    { zone: '3', where: [[within('high edge', 2), within('rake', 4)]] },
    { zone: '2', where: [[within('high edge', 2)], [within('rake', 2)], [within('eave', 1)]] },
    rest('1'),
  ],
  reading:
    'Fig. 30.3-5B: zone 3 at the high corners 2a deep and 4a along the edge, zone 2 along the high edge and rakes (2a) and the low eave (a), recalled and not seen on the page; check against the figure.',
};

/** h over 60 ft, low slope: 7-16 Fig. 30.5-1, 7-22 Fig. 30.4-1. From memory, medium to low confidence. */
export const highBuildingPlan = (figure: string): ZonePlan => ({
  rules: [
    { zone: '3', where: [atCorner(2, 2, 'a')] },
    { zone: '2', where: [[within('outside', 1)]] },
    rest('1'),
  ],
  reading: `${figure}: the corner zone 3 is recalled as an L with legs 2a long and a wide; the full squares of 2a by 2a are taken instead, which is conservative.`,
});
