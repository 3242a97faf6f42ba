/** The links of a connection in series that do not depend on the spacing of its fasteners. */
import type { Connection } from '../connections/connection.ts';
import type { Rivet, Screw } from '../shelf/item.ts';
import type { Trace } from '../trace/step.ts';
import { deckToFrame } from './deck-to-frame.ts';
import { clipUplift, rivetTension, screwTension } from './fastener-strength.ts';
import { holdingCapacity } from './holding.ts';
import type { LinkContext } from './link-context.ts';
import { pullOverCapacity } from './pull-over.ts';
import type { Capacity } from './verdict.ts';

/** @param traced write the working of each link beside it */
export function chainCapacities(
  item: Screw | Rivet,
  connection: Connection,
  context: LinkContext,
  traced: boolean,
): Capacity[] {
  const trace = (): Trace | undefined => (traced ? [] : undefined);
  if (item.kind === 'rivet') return [rivetTension(item, context, trace())];
  const { buildUp, duty, oneSided, primary } = connection;
  const links = [
    duty === 'clip' ? clipUplift(context.parts.clip, context, trace()) : undefined,
    pullOverCapacity(item, buildUp, oneSided, context, trace()),
    screwTension(item, context, trace()),
    holdingCapacity(item, buildUp, context, trace()),
    primary ? deckToFrame(context, trace()) : undefined,
  ];
  return links.filter((link) => link !== undefined);
}
