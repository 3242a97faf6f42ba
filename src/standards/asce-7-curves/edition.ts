/**
 * What the 2016 and 2022 editions of ASCE/SEI 7 share. Their roof pressures must never be mixed: the velocity
 * pressure of 7-16 holds the directionality factor, that of 7-22 does not.
 */
import type { Psf } from '../../quantities/quantity.ts';

export const editionNames = ['7-16', '7-22'] as const;
export type EditionName = (typeof editionNames)[number];

export interface Asce7<E extends EditionName = EditionName> {
  readonly edition: E;
  /** Folder of the edition and first part of its clause ids. */
  readonly id: `asce-${E}`;
  readonly name: `ASCE/SEI ${E}`;
}

/** "ASCE/SEI 7-16 30.2.2": document, edition and clause as cited. */
export const citation = (of: Asce7, clause: string): string => `${of.name} ${clause}`;

declare const velocityPressureOf: unique symbol;

/** Velocity pressure of one edition. Passing it to the other edition does not compile. */
export type VelocityPressure<E extends EditionName> = Psf & { readonly [velocityPressureOf]: E };

/** Figures of roof coefficients, by the number of the roof's own figure; overhang figures go with their roof. */
export const figureIds = {
  '7-16': [
    '30.3-2A',
    '30.3-2B',
    '30.3-2C',
    '30.3-2D',
    '30.3-2E',
    '30.3-2G',
    '30.3-2H',
    '30.3-5A',
    '30.3-5B',
    '30.5-1',
  ],
  '7-22': [
    '30.3-2A',
    '30.3-2B',
    '30.3-2C',
    '30.3-2D',
    '30.3-2E',
    '30.3-2F',
    '30.3-2G',
    '30.3-5A',
    '30.3-5B',
    '30.4-1',
  ],
} as const satisfies Record<EditionName, readonly string[]>;

export type FigureId<E extends EditionName> = (typeof figureIds)[E][number];

export const exposures = ['B', 'C', 'D'] as const;
export type Exposure = (typeof exposures)[number];

export const roofShapes = ['flat', 'gable', 'hip', 'monoslope'] as const;
export type RoofShape = (typeof roofShapes)[number];
