/** What a section shows: its plies from the surface down, and how far head and tip reach, in inches. */
import type { ConnectionChoice } from '../../choose/schedule.ts';
import type { Ply } from '../../connections/ply.ts';

/** Thickness drawn for a ply whose own is not known, in inches. */
const UNKNOWN = 0.25;
/** Of the lowest ply below the tip, in inches. */
const BELOW = 0.35;
export interface Layer {
  readonly ply: Ply;
  readonly from: number;
  readonly to: number;
  readonly known: boolean;
  /** The ply goes on below what is drawn. */
  readonly broken: boolean;
}

export function layersOf({ connection: { buildUp }, item }: ConnectionChoice): Layer[] {
  const layers: Layer[] = [];
  let from = 0;
  const most = tipDepth(item) + BELOW;
  buildUp.plies.forEach((ply, i) => {
    const thickness = ply.thickness_in ?? UNKNOWN;
    const last = i === buildUp.plies.length - 1;
    const end = from + thickness;
    const broken = last && end > Math.max(most, from + BELOW);
    layers.push({
      ply,
      from,
      to: broken ? Math.max(most, from + BELOW) : end,
      known: ply.thickness_in !== undefined,
      broken,
    });
    from = end;
  });
  return layers;
}

const tipDepth = (item: ConnectionChoice['item']): number => (item?.kind === 'screw' ? item.length : 0.2);

export function tipOf(choice: ConnectionChoice): number {
  return tipDepth(choice.item) + 0.05;
}

export function headHeight({ item, clip }: ConnectionChoice): number {
  if (item?.kind === 'rivet') return item.headDiameter * 0.3;
  const washer = item?.washer ? 0.1 : 0;
  return (item?.head.height ?? 0.1) + washer + (clip ? 0.1 : 0);
}

export function headWidth({ item }: ConnectionChoice): number {
  if (item?.kind === 'rivet') return item.headDiameter;
  return Math.max(item?.head.bearingDiameter ?? 0.4, item?.washer?.metalDiameter ?? 0);
}
