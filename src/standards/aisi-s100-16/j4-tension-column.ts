/**
 * AISI S100-16 J4.4 in ASD over columns: demand over the least of pull-out, pull-over and the screw's own tension, for
 * whole lists of screws and sheets. The equations are those of the clauses; Ω is this edition's for all three.
 */
import { needs } from '../../trace/clause.ts';
import { columnOf } from '../../trace/column.ts';
import { equation } from '../../trace/equation.ts';
import { pullOutInputs } from '../aisi-s100-common/screw-edition.ts';
import { pullOutEquation } from './j4.4.1-pull-out.ts';
import { pullOverEquation } from './j4.4.2-pull-over.ts';

const inputs = {
  ...pullOutInputs,
  t1: needs('in', 'base metal thickness of the sheet under the head', { above: 0 }),
  dwe: needs('in', 'effective diameter of head or washer, J4.4.2', { min: 0.3125, max: 0.75 }),
  Fu1: needs('psi', 'tensile strength of the sheet under the head, reduced for low ductility', { above: 0 }),
  share: needs('1', '1, or 0.5 for a pull on one side of the head', { min: 0.5, max: 1 }),
  Pnts: needs('lbf', 'nominal tensile strength of the screw', { above: 0 }),
  T: needs('lbf', 'tension on the screw, service level', { min: 0 }),
};

const utilization = equation({
  clause: 'AISI S100-16 J4.4, ASD',
  gives: 'u',
  unit: '1',
  from: { T: 'lbf', Pnot: 'lbf', Pnov: 'lbf', Pnts: 'lbf' },
  is: '3 * T / min(Pnot, Pnov, Pnts)',
});

/** Made on first use: reads the equations and writes the loop. */
export const tensionColumn = () => columnOf(inputs, pullOutEquation, pullOverEquation, utilization);
