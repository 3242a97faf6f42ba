/** EN 1999-1-4: γM3 of connections. 1.25 is the recommended value; a national annex may set another. */
import { type Ratio, ratio } from '../../quantities/quantity.ts';
import { mayNeed } from '../../trace/clause.ts';
import { type Trace, taken } from '../../trace/step.ts';

const RECOMMENDED = ratio(1.25);

export const gammaM3Input = mayNeed('1', 'partial factor γM3; 1.25 when left out', { min: 1 });

export function gammaM3(cites: string, given: Ratio | undefined, trace: Trace | undefined): Ratio {
  const because = given === undefined ? 'recommended value' : 'national value given';
  return taken(trace, { clause: cites, symbol: 'γM3', unit: '1', because }, given ?? RECOMMENDED);
}
