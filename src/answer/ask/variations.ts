/**
 * Solves many variations of one job on one shelf. What a variation cannot touch is kept from an earlier one: pressures
 * of the same roof and wind, the choice for a joint whose every circumstance is the same, the price of the same order.
 */
import { chooseItem } from '../../choose/choose-items.ts';
import type { Design } from '../../choose/design.ts';
import type { ConnectionChoice } from '../../choose/schedule.ts';
import type { Connection } from '../../connections/connection.ts';
import { type Read, readJob } from '../../job/read-job.ts';
import { layOut } from '../../layout/lay-out.ts';
import type { Psf } from '../../quantities/quantity.ts';
import type { Shelf } from '../../shelf/shelf.ts';
import type { PressureField } from '../../site/pressure-field.ts';
import { takeOff } from '../../takeoff/take-off.ts';
import type { Outcome as Result } from '../../trace/refusal.ts';
import { prepare } from '../solve-job.ts';
import { type Outcome, outcomeFrom } from './outcome.ts';

export class Variations {
  private readonly shelf: Shelf;
  private readonly pressures = new Map<string, Map<string, Result<Psf>>>();
  private readonly choices = new Map<string, ConnectionChoice>();
  private readonly prices = new Map<string, number>();

  constructor(shelf: Shelf) {
    this.shelf = shelf;
  }

  /** Reads and solves a variation, without remarks and what papers need. */
  solve(document: unknown): Read<Outcome> {
    const job = readJob(document);
    if (!job.ok) return job;
    const prepared = prepare(job.value, this.shelf);
    if (!prepared.ok) return prepared;
    const { connections } = prepared.value;
    const scene = sceneOf(prepared.value.design);
    const design = this.remembering(prepared.value.design, scene);
    const around = aroundOf(design, scene);
    const choices = connections.map((connection) => this.choose(connection, design, around));
    return { ok: true, value: this.outcome(choices, design) };
  }

  /** The outcome of a schedule however it was found, with the price of its order. */
  outcome(choices: readonly ConnectionChoice[], design: Design): Outcome {
    const key = orderOf(choices, design);
    const price =
      this.prices.get(key) ?? takeOff(choices, layOut(choices, design), design, this.shelf.currency).total;
    this.prices.set(key, price);
    return outcomeFrom(choices, design, price);
  }

  /** The panel's own joint depends on nearly everything; a joint of trims only on itself and what is around it. */
  private choose(connection: Connection, design: Design, around: string): ConnectionChoice {
    if (connection.primary) return chooseItem(connection, design);
    const key = `${around} ${JSON.stringify(connection)}`;
    const choice = this.choices.get(key) ?? chooseItem(connection, design);
    this.choices.set(key, choice);
    return choice;
  }

  private remembering(design: Design, scene: string): Design {
    const { field } = design;
    const held = this.pressures.get(scene) ?? new Map<string, Result<Psf>>();
    this.pressures.set(scene, held);
    const uplift: PressureField['uplift'] = (zone, area, trace) => {
      if (trace) return field.uplift(zone, area, trace);
      const key = `${zone} ${area}`;
      const found = held.get(key) ?? field.uplift(zone, area);
      held.set(key, found);
      return found;
    };
    return { ...design, field: { ...field, uplift } };
  }
}

/** What zones and pressures follow from. */
const sceneOf = ({ job, basis }: Design): string =>
  JSON.stringify([job.wind, job.roof, basis.wind, basis.method]);

/** What a joint meets besides its own build-up. */
const aroundOf = ({ job, basis, parts, links }: Design, scene: string): string =>
  JSON.stringify([
    scene,
    basis,
    links.surroundings,
    job.place.below,
    job.panel.colour,
    job.print.units,
    job.overrides,
    parts.clip?.id,
    job.ends,
  ]);

/** What the layout and the take-off follow from. */
const orderOf = (choices: readonly ConnectionChoice[], design: Design): string =>
  JSON.stringify([
    sceneOf(design),
    design.parts.clip?.id,
    design.parts.plate?.id,
    choices.map(({ connection: { id, placement, each }, item, lines }) => [
      id,
      placement,
      each,
      item?.id,
      lines.map((line) => [line.zone, line.spacing_in, line.each]),
    ]),
  ]);
