/** Sides that must lie level in a drawn plane, and agree on which way it falls. */
import type { EdgeTag, RoofInput } from '../job/roof-input.ts';
import type { Fault } from '../quantities/fault.ts';
import { dot, leftOf, minus, type Point, sidesOf, signedArea, unit } from './point.ts';

type DrawnPlane = Extract<RoofInput, { form: 'planes' }>['planes'][number];

interface LevelSide {
  /** Place in the drawing, from 0. */
  readonly at: number;
  readonly tag: EdgeTag;
  readonly length: number;
  /** Up the slope as this side has it: away from an eave, toward a ridge, high edge or wall. */
  readonly up: Point;
}

const tops: readonly EdgeTag[] = ['high edge', 'ridge', 'headwall'];
const isLevel = (tag: EdgeTag): boolean => tag === 'eave' || tops.includes(tag);

/** How far a level side may stand off square to the fall, in degrees: more than typed corners are rounded. */
const OFF_SQUARE = 1;

/**
 * The fall is taken from the longest eave, or the longest level side at the top where there is no eave, as the plane
 * itself takes it. Every other level side must be square to it and on its own side of it.
 */
export function levelFaults(plane: DrawnPlane, path: string): Fault[] {
  const sides = levelSides(plane);
  const eaves = sides.filter(({ tag }) => tag === 'eave');
  const [lead] = (eaves.length > 0 ? eaves : sides).toSorted((a, b) => b.length - a.length);
  if (!lead) return [];
  return sides.flatMap((side) => {
    const message = side === lead ? undefined : disagreement(side, lead);
    return message === undefined ? [] : [{ path: `${path}.${side.at}`, message }];
  });
}

function levelSides({ outline, edges }: DrawnPlane): LevelSide[] {
  const ring = outline.map(([x, y]) => ({ x, y }));
  const turn = signedArea(ring) < 0 ? -1 : 1;
  return sidesOf(ring).flatMap(([a, b], at) => {
    const tag = edges[at] as EdgeTag;
    if (!isLevel(tag)) return [];
    const inward = leftOf(unit(minus(b, a)));
    const sign = tag === 'eave' ? turn : -turn;
    return [
      { at, tag, length: Math.hypot(b.x - a.x, b.y - a.y), up: { x: inward.x * sign, y: inward.y * sign } },
    ];
  });
}

function disagreement(side: LevelSide, lead: LevelSide): string | undefined {
  const degrees = (Math.acos(Math.max(-1, Math.min(1, dot(side.up, lead.up)))) * 180) / Math.PI;
  if (degrees <= OFF_SQUARE) return undefined;
  const named = `side ${lead.at + 1} (${lead.tag})`;
  if (degrees >= 180 - OFF_SQUARE)
    return `side ${side.at + 1} as ${side.tag} makes the plane fall the other way than ${named}; ${
      side.tag === 'eave' ? 'tag the upper one ridge, high edge or headwall' : 'tag the lower one eave'
    }`;
  const off = Math.min(degrees, 180 - degrees);
  return `side ${side.at + 1} as ${side.tag} must be level, but stands ${off.toFixed(1)} degrees off ${named}; tag it rake, hip, valley or sidewall, or mend its corners`;
}
