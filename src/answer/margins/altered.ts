/** The design with one quantity altered: wind speed, thickness of the support, thickness of the panel. */
import type { Design } from '../../choose/design.ts';
import type { Connection } from '../../connections/connection.ts';
import { listConnections } from '../../connections/list-connections.ts';
import type { Job } from '../../job/job.ts';
import { known } from '../../job/stated.ts';
import { linkContext } from '../../links/link-context.ts';
import { buildField } from '../../site/build-field.ts';

export interface Altered {
  readonly design: Design;
  readonly connections: ReadonlyMap<string, Connection>;
}

const given = <T>(value: T) => ({ standing: 'given', value }) as const;
const inches = (value: number): string => `${value.toFixed(6)} in`;

/** Keeps every alteration made, since many lines are tried at the same values. */
export function remembered<T>(make: (value: number) => T): (value: number) => T {
  const made = new Map<number, T>();
  return (value) => {
    const found = made.get(value) ?? make(value);
    made.set(value, found);
    return found;
  };
}

/** The field at another wind speed; the zones stay, since they do not follow from it. Joints stay as they were chosen. */
export function atSpeed(design: Design, connections: Altered['connections'], speed: number): Altered {
  const { job, roof, basis } = design;
  if (job.wind.by !== 'standard') return { design, connections };
  const altered = { ...job, wind: { ...job.wind, speed: given(speed) } } as Job;
  const placed = buildField(altered, roof, basis);
  return placed.ok
    ? { design: { ...design, job: altered, field: placed.value }, connections }
    : { design, connections };
}

export function atSupport(design: Design, thickness: number): Altered {
  const { support } = design.job;
  if ('depth' in support) return rebuilt(design, { support: { ...support, depth: given(thickness) } });
  const text = 'grade' in support;
  return rebuilt(design, {
    support: { ...support, thickness: given(text ? inches(thickness) : thickness) },
  });
}

export function atPanel(design: Design, thickness: number): Altered {
  return rebuilt(design, { panel: { ...design.job.panel, thickness: given(inches(thickness)) } });
}

function rebuilt(design: Design, change: object): Altered {
  const { basis, roof, field, parts, items } = design;
  const job = { ...design.job, ...change } as Job;
  const connections = listConnections(job, roof, parts, field.highWind ?? true);
  return {
    design: { ...design, job, links: linkContext(job, basis, parts, items) },
    connections: new Map(connections.map((one) => [one.id, one])),
  };
}

/** The speed of a job by the standard. */
export const speedOf = ({ wind }: Job): number | undefined =>
  wind.by === 'standard' ? known(wind.speed) : undefined;
