/**
 * ASCE/SEI 7 26.10.1: velocity pressure exposure coefficient Kz, by Table 26.10-1 with a straight line between its
 * rows (note 3) or by the power law of note 1. Both are allowed and differ by up to 0.016.
 * The floor of 0.70 in exposure B below 30 ft is for the main wind-force system of Chapter 28, not for components.
 */
import { foot, type Ratio, ratio } from '../../quantities/quantity.ts';
import { clause, needs, oneOf } from '../../trace/clause.ts';
import { equation } from '../../trace/equation.ts';
import { note, type Trace, taken } from '../../trace/step.ts';
import { type Asce7, citation, type Exposure, exposures } from './edition.ts';

/** Height above ground, ft, then Kz in exposure B, C, D. */
export type KzRow = readonly [z: number, B: number, C: number, D: number];

export interface ExposureTerms {
  readonly table: readonly KzRow[];
  /** Rows that were recalled, not seen. */
  readonly recalled?: { readonly from: number; readonly to: number };
  /** Leading constant of the power law. It belongs to the edition as much as α and zg do. */
  readonly c: number;
  readonly law: Readonly<Record<Exposure, { readonly α: number; readonly zg: number }>>;
}

const ZMIN = foot(15);
const column: Readonly<Record<Exposure, 1 | 2 | 3>> = { B: 1, C: 2, D: 3 };
const exposure = oneOf(exposures, 'exposure category');

export function makeExposureCoefficient(of: Asce7, terms: ExposureTerms) {
  const table = citation(of, 'Table 26.10-1');
  const law = citation(of, 'Table 26.10-1 note 1');
  const onLine = equation({
    clause: table,
    gives: 'Kz',
    unit: '1',
    from: { Kza: '1', Kzb: '1', z: 'ft', za: 'ft', zb: 'ft' },
    is: 'Kza + (Kzb - Kza) * (z - za) / (zb - za)',
  });
  const byPower = equation({
    clause: law,
    gives: 'Kz',
    unit: '1',
    from: { c: '1', z: 'ft', zmin: 'ft', zg: 'ft', α: '1' },
    is: 'c * (min(max(z, zmin), zg) / zg)^(2 / α)',
  });
  const last = (terms.table.at(-1) as KzRow)[0];
  return {
    byTable: clause({
      id: `${of.id}/26.10-1-kz-by-table`,
      title: 'velocity pressure exposure coefficient by the table',
      cites: table,
      inputs: {
        exposure,
        z: needs('ft', 'height above ground; mean roof height for a roof', { min: 0, max: last }),
      },
      gives: { symbol: 'Kz', unit: '1' },
      compute: (v, trace) => {
        const at = terms.table.findIndex((row) => v.z <= row[0]);
        const [upper, lower] = [terms.table[at] as KzRow, terms.table[at - 1]];
        if (trace) noteRecalled(terms, table, v.z, trace);
        const Kzb = ratio(upper[column[v.exposure]]);
        if (lower === undefined || v.z === upper[0]) return readOff(table, upper[0], v.exposure, Kzb, trace);
        const Kza = ratio(lower[column[v.exposure]]);
        return onLine({ Kza, Kzb, z: v.z, za: foot(lower[0]), zb: foot(upper[0]) }, trace);
      },
    }),
    byPowerLaw: clause({
      id: `${of.id}/26.10-1-kz-by-power-law`,
      title: 'velocity pressure exposure coefficient by the power law',
      cites: law,
      inputs: { exposure, z: needs('ft', 'height above ground; mean roof height for a roof', { min: 0 }) },
      gives: { symbol: 'Kz', unit: '1' },
      compute: (v, trace) => {
        const { α, zg } = terms.law[v.exposure];
        return byPower({ c: ratio(terms.c), z: v.z, zmin: ZMIN, zg: foot(zg), α: ratio(α) }, trace);
      },
    }),
  };
}

function readOff(cites: string, z: number, category: Exposure, Kz: Ratio, trace?: Trace): Ratio {
  return taken(
    trace,
    { clause: cites, symbol: 'Kz', unit: '1', because: `row ${z} ft, exposure ${category}` },
    Kz,
  );
}

function noteRecalled({ recalled, table }: ExposureTerms, cites: string, z: number, trace: Trace): void {
  if (!recalled) return;
  const before = table.findLast((row) => row[0] < recalled.from)?.[0] ?? 0;
  const after = table.find((row) => row[0] > recalled.to)?.[0] ?? Number.POSITIVE_INFINITY;
  if (z > before && z < after)
    note(trace, cites, `rows ${recalled.from} to ${recalled.to} ft recalled; they agree with the power law`);
}
