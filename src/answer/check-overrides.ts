/** Faults of decisions made by hand: each must name what is there and can be decided, or it would pass in silence. */
import { type Connection, isPieceMeal } from '../connections/connection.ts';
import type { Job } from '../job/job.ts';
import type { Fault } from '../quantities/fault.ts';
import type { PressureField } from '../site/pressure-field.ts';

type Override = Job['overrides'][number];

export function checkOverrides(job: Job, connections: readonly Connection[], field: PressureField): Fault[] {
  const zones = field.zones.map((zone) => zone.label);
  return job.overrides.flatMap((one, i) => {
    const path = `overrides.${i}`;
    const connection = connections.find(({ id }) => id === one.connection);
    if (!connection)
      return [
        {
          path: `${path}.connection`,
          message: `"${one.connection}" is no joint of this roof; there are: ${connections.map(({ id }) => id).join(', ')}`,
        },
      ];
    return [
      ...ofZone(one, path, zones),
      ...ofContent(one, path, connection),
      ...ofRepetition(one, i, job.overrides),
    ];
  });
}

function ofZone({ zone }: Override, path: string, zones: readonly string[]): Fault[] {
  if (zone === undefined || zones.includes(zone)) return [];
  return [
    {
      path: `${path}.zone`,
      message: `"${zone}" is no zone of this roof; its zones are: ${zones.join(', ')}`,
    },
  ];
}

function ofContent(one: Override, path: string, { placement }: Connection): Fault[] {
  if (one.item === undefined && one.spacing === undefined)
    return [{ path, message: 'changes neither item nor spacing; give one of them or remove it' }];
  if (one.item !== undefined && one.zone !== undefined)
    return [
      { path: `${path}.zone`, message: 'an item is chosen for all zones of a joint; leave the zone out' },
    ];
  if (one.spacing === undefined) return [];
  if (placement.by === 'field' && placement.along === 'supports')
    return [
      {
        path: `${path}.spacing`,
        message: 'these fasteners stand on the supports; change support.spacing instead',
      },
    ];
  if (isPieceMeal(placement))
    return [
      {
        path: `${path}.spacing`,
        message: 'this joint has a set number of fasteners at each piece and no spacing',
      },
    ];
  return [];
}

function ofRepetition(one: Override, i: number, all: readonly Override[]): Fault[] {
  const decides = (other: Override) =>
    other.connection === one.connection &&
    other.zone === one.zone &&
    (other.item === undefined) === (one.item === undefined);
  const before = all.findIndex(decides);
  return before < i
    ? [
        {
          path: `overrides.${i}`,
          message: `decides again what overrides.${before} decided; keep one of them`,
        },
      ]
    : [];
}
