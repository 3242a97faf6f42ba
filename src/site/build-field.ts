/** From the place and the roof to the pressure field, by a standard or as the project's engineer gives it. */
import type { Basis } from '../job/basis.ts';
import type { Job } from '../job/job.ts';
import type { Read } from '../job/read-job.ts';
import { slopeDegrees, slopeFactor } from '../job/slope.ts';
import { known } from '../job/stated.ts';
import type { Fault } from '../quantities/fault.ts';
import { convert, degree, type Foot, foot, type Psf, psf, ratio, type SqFt } from '../quantities/quantity.ts';
import { cutZones, type ZonePiece } from '../roof/cut-zones.ts';
import type { Plane, Roof } from '../roof/roof.ts';
import { isRefusal, type Outcome, type Refusal, refusalText, refuse } from '../trace/refusal.ts';
import { note, type Trace, taken } from '../trace/step.ts';
import { HIGH_WIND_MPH } from './high-wind.ts';
import type { FieldPiece, FieldZone, PressureField, SiteFact } from './pressure-field.ts';
import {
  type PlaneFigure,
  planeFigures,
  type SiteWind,
  type WindEdition,
  windEditions,
} from './wind-editions.ts';

const feet = (inches: Parameters<typeof convert<'in', 'ft'>>[0]): Foot => convert(inches, 'in', 'ft');

type ByStandard = Extract<Job['wind'], { by: 'standard' }>;
type ByEngineer = Extract<Job['wind'], { by: 'engineer' }>;

/** Measures of the zones, and the figure of each plane. */
interface Ground {
  readonly edition: WindEdition;
  readonly h: Foot;
  readonly a: Foot;
  readonly figures: ReadonlyMap<Plane, PlaneFigure>;
  readonly trace: Trace;
  readonly readings: readonly string[];
}

const faulty = (path: string, message: string) => ({ ok: false as const, faults: [{ path, message }] });

export function buildField(job: Job, roof: Roof, basis: Basis): Read<PressureField> {
  const ground = groundOf(job, roof, windEditions[basis.wind]);
  if (isRefusal(ground)) return faulty(pathOf(ground, job, roof), groundText(ground));
  const unknown = unknownZones(job.wind, ground);
  if (unknown.length > 0) return { ok: false, faults: unknown };
  const measures = { a: ground.a * 12, h: ground.h * 12 };
  const pieces = cutZones(roof, (plane) => ground.figures.get(plane)?.rules ?? [], measures);
  const zones = zonesOf(pieces, ground);
  const indexed = pieces.map(
    (piece): FieldPiece => ({
      ...piece,
      index: zones.findIndex((zone) => zone.name === piece.zone && zone.overhang === piece.overhang),
    }),
  );
  const common = { zones, pieces: indexed };
  const { wind } = job;
  return {
    ok: true,
    value:
      wind.by === 'engineer'
        ? { ...common, ...engineerField(wind, ground, basis, zones) }
        : { ...common, ...standardField(wind, job, ground, basis, roof, indexed, zones) },
  };
}

/** A refusal of the ground is a fault of the field it came from, named as this form of roof has it. */
function pathOf(refusal: Refusal, { wind, roof: input }: Job, roof: Roof): string {
  if (refusal.input === 'theta') {
    if (input.form === 'joined') return 'roof.main.slope';
    return input.form === 'planes' ? `roof.planes.${planeOf(refusal, roof)}.slope` : 'roof.slope';
  }
  const measured = wind.by === 'standard' ? wind : undefined;
  if (refusal.input === 'L' && measured?.leastDimension !== undefined) return 'wind.leastDimension';
  if (refusal.input === 'top' && input.form === 'planes' && input.highestPoint !== undefined)
    return 'roof.highestPoint';
  if (refusal.input === 'h' && known(measured?.meanRoofHeight) !== undefined) return 'wind.meanRoofHeight';
  return ['h', 'eave', 'top'].includes(refusal.input) ? 'roof.eaveHeight' : 'roof';
}

/** Drawn planes keep their order: the one whose slope was refused, else the steepest. */
function planeOf({ value }: Refusal, roof: Roof): number {
  const angles = roof.planes.map((plane) => slopeDegrees(plane.slope));
  const wanted = typeof value === 'number' ? value : Math.max(...angles);
  const off = angles.map((angle) => Math.abs(angle - wanted));
  return off.indexOf(Math.min(...off));
}

function groundText(refusal: Refusal): string {
  if (refusal.input === 'eave' && refusal.code === 'missing-input')
    return 'is only asked, but zones and pressures follow from it: assume one until the answer comes, { "assume": "14 ft", "because": "..." }';
  return refusalText(refusal);
}

/** A pressure for a zone this roof has not would pass unused, and most often is a slip of the pen. */
function unknownZones(wind: Job['wind'], { figures, edition }: Ground): Fault[] {
  if (wind.by !== 'engineer') return [];
  const zones = [...new Set([...figures.values()].flatMap((figure) => figure.zones))];
  return Object.keys(wind.zones)
    .filter((name) => !zones.includes(name))
    .map((name) => ({
      path: `wind.zones.${name}`,
      message: `is no zone of this roof; its zones by ${edition.name} are: ${zones.join(', ')}`,
    }));
}

function groundOf(job: Job, roof: Roof, edition: WindEdition): Ground | Refusal {
  const trace: Trace = [];
  const theta = degree(Math.max(...roof.planes.map((plane) => slopeDegrees(plane.slope))));
  const h = heightOf(job, roof, theta, edition, trace);
  if (isRefusal(h)) return h;
  const least =
    job.wind.by === 'standard' && job.wind.leastDimension !== undefined
      ? feet(job.wind.leastDimension)
      : foot(roof.leastDimension_ft);
  const given = job.wind.by === 'engineer' ? job.wind.edgeStrip : undefined;
  const a =
    given === undefined
      ? edition.edgeStripWidth({ L: least, h, theta }, trace)
      : taken(
          trace,
          {
            clause: 'given with the pressures',
            symbol: 'a',
            unit: 'ft',
            because: 'edge strip of the engineer',
          },
          feet(given),
        );
  if (isRefusal(a)) return a;
  const figures = planeFigures(roof.planes, h, edition);
  if (isRefusal(figures)) return figures;
  const readings = [...new Set([...figures.values()].flatMap((figure) => figure.readings))];
  return { edition, h, a, figures, trace, readings };
}

function heightOf(
  job: Job,
  roof: Roof,
  theta: ReturnType<typeof degree>,
  edition: WindEdition,
  trace: Trace,
): Outcome<Foot> {
  const measured = job.wind.by === 'standard' ? known(job.wind.meanRoofHeight) : undefined;
  if (measured !== undefined)
    return taken(
      trace,
      { clause: 'given', symbol: 'h', unit: 'ft', because: 'mean roof height of the job' },
      feet(measured),
    );
  if (roof.eaveHeight_ft === undefined || roof.highestPoint_ft === undefined)
    return refuse(
      edition.name,
      'eave',
      undefined,
      'the eave height: wind zones and pressures follow from it',
      'missing-input',
    );
  return edition.meanRoofHeight(
    { eave: foot(roof.eaveHeight_ft), top: foot(roof.highestPoint_ft), theta },
    trace,
  );
}

function zonesOf(pieces: readonly ZonePiece[], ground: Ground): FieldZone[] {
  const order = [...new Set([...ground.figures.values()].flatMap((figure) => figure.zones))];
  const zones = new Map<string, FieldZone>();
  for (const piece of pieces) {
    const key = `${piece.zone}${piece.overhang ? ' overhang' : ''}`;
    const held = zones.get(key);
    const slopeArea = piece.planArea_ft2 * slopeFactor(piece.plane.slope);
    zones.set(key, {
      name: piece.zone,
      overhang: piece.overhang,
      label: key,
      planArea_ft2: (held?.planArea_ft2 ?? 0) + piece.planArea_ft2,
      slopeArea_ft2: (held?.slopeArea_ft2 ?? 0) + slopeArea,
      severity: order.indexOf(piece.zone) + (piece.overhang ? order.length : 0),
    });
  }
  return [...zones.values()].sort((a, b) => a.severity - b.severity);
}

type FieldPart = Omit<PressureField, 'zones' | 'pieces'>;

function engineerField(
  wind: ByEngineer,
  ground: Ground,
  basis: Basis,
  zones: readonly FieldZone[],
): FieldPart {
  const cites = wind.source;
  const uplift = (zone: number, _area: SqFt, trace?: Trace): Outcome<Psf> => {
    const at = zones[zone] as FieldZone;
    const given = wind.zones[at.name];
    const value = at.overhang ? given?.overhang : given?.uplift;
    if (value === undefined)
      return refuse(
        cites,
        `pressure of zone ${at.label}`,
        undefined,
        'a pressure from the engineer for this zone',
        'missing-input',
      );
    if (wind.level === 'ASD' && basis.method === 'LRFD')
      return refuse(
        cites,
        'level',
        'ASD',
        'pressures at strength level for LRFD; these are at ASD level and are taken as they are',
      );
    const p = taken(
      trace,
      { clause: cites, symbol: 'p', unit: 'psf', because: `zone ${at.label}, ${wind.level} level, as given` },
      value,
    );
    return wind.level === 'strength' && basis.method === 'ASD'
      ? upward(ground.edition.asdPressure({ p }, trace))
      : upward(p);
  };
  return {
    source: 'engineer',
    cites,
    uplift,
    facts: measureFacts(ground),
    trace: ground.trace,
    highWind: undefined,
    readings: [
      'Pressures are those of the engineer named; their zones are cut by the figures of the wind standard of the job.',
      ...ground.readings,
    ],
  };
}

const upward = (p: Outcome<Psf>): Outcome<Psf> => (isRefusal(p) ? p : psf(-p));

function standardField(
  wind: ByStandard,
  job: Job,
  ground: Ground,
  basis: Basis,
  roof: Roof,
  pieces: readonly FieldPiece[],
  zones: readonly FieldZone[],
): FieldPart {
  const { edition, trace, h } = ground;
  const site = siteWind(wind, ground);
  const enclosure = known(wind.enclosure);
  const parapet =
    wind.parapetAllRound !== undefined && wind.parapetAllRound >= 36 ? 'at least 3 ft all round' : 'none';
  const hOverB = ratio(
    h / (wind.leastDimension === undefined ? roof.narrowest_ft : feet(wind.leastDimension)),
  );
  // Planes of one zone may have different figures (a wing of another shape): the severest governs the zone.
  const places = zones.map((_, index) =>
    distinctPlaces(
      pieces.filter((piece) => piece.index === index),
      ground,
    ),
  );
  const uplift = (zone: number, area: SqFt, own?: Trace): Outcome<Psf> => {
    if (isRefusal(site)) return site;
    if (enclosure === undefined)
      return refuse(
        edition.name,
        'enclosure',
        undefined,
        'whether the building is enclosed, partially enclosed or open',
        'missing-input',
      );
    const at = zones[zone] as FieldZone;
    const strength = severest(places[zone] ?? [], (figure) =>
      site.uplift(
        figure,
        { zone: at.name, surface: at.overhang ? 'overhang' : 'roof', A: area, enclosure, parapet, hOverB, h },
        own,
      ),
    );
    if (isRefusal(strength)) return strength;
    return upward(basis.method === 'ASD' ? edition.asdPressure({ p: strength }, own) : strength);
  };
  const speed = known(wind.speed);
  const facts: SiteFact[] = [
    ...(speed === undefined
      ? []
      : [{ symbol: 'V', means: 'basic wind speed, strength level', value: speed, unit: 'mph' } as const]),
    ...(isRefusal(site)
      ? []
      : [
          {
            symbol: 'qh',
            means: 'velocity pressure at mean roof height',
            value: site.qh,
            unit: 'psf',
          } as const,
        ]),
    ...measureFacts(ground),
  ];
  if (job.wind.by === 'standard' && wind.topography === undefined)
    note(trace, `${edition.name} 26.8`, 'no ridge, escarpment or hill is named; Kzt = 1');
  return {
    source: 'standard',
    cites: edition.name,
    uplift,
    facts,
    trace,
    highWind: speed === undefined ? undefined : speed > HIGH_WIND_MPH,
    readings: ground.readings,
  };
}

function distinctPlaces(pieces: readonly FieldPiece[], ground: Ground): PlaneFigure[] {
  const found = new Map<string, PlaneFigure>();
  for (const { plane } of pieces) {
    const figure = ground.figures.get(plane);
    if (figure) found.set(`${figure.id} ${figure.theta}`, figure);
  }
  return [...found.values()];
}

/** The most negative of several; a refusal of any of them refuses all. */
function severest(
  figures: readonly PlaneFigure[],
  pressure: (figure: PlaneFigure) => Outcome<Psf>,
): Outcome<Psf> {
  let worst: Psf | undefined;
  for (const figure of figures) {
    const p = pressure(figure);
    if (isRefusal(p)) return p;
    if (worst === undefined || p < worst) worst = p;
  }
  return worst ?? refuse('roof', 'zone', undefined, 'a plane in this zone', 'missing-input');
}

function siteWind(wind: ByStandard, { edition, h, trace }: Ground): SiteWind | Refusal {
  const V = known(wind.speed);
  const exposure = known(wind.exposure);
  if (V === undefined) return refuse(edition.name, 'V', undefined, 'the basic wind speed', 'missing-input');
  if (exposure === undefined)
    return refuse(edition.name, 'exposure', undefined, 'the exposure category B, C or D', 'missing-input');
  const Kzt = topographicFactor(wind, exposure, h, edition, trace);
  if (isRefusal(Kzt)) return Kzt;
  return edition.siteWind(
    { V, exposure, h, kzBy: wind.kz, Kzt, groundElevation: known(wind.groundElevation) },
    trace,
  );
}

function topographicFactor(
  { topography }: ByStandard,
  exposure: 'B' | 'C' | 'D',
  h: Foot,
  edition: WindEdition,
  trace: Trace,
) {
  if (!topography) return undefined;
  const { feature, height, halfLength, fromCrest, side } = topography;
  return edition.topographicFactor(
    { feature, exposure, side, H: feet(height), Lh: feet(halfLength), x: feet(fromCrest), z: h },
    trace,
  );
}

function measureFacts({ h, a }: Ground): SiteFact[] {
  return [
    { symbol: 'h', means: 'mean roof height', value: h, unit: 'ft' },
    { symbol: 'a', means: 'width of the edge strip', value: a, unit: 'ft' },
  ];
}
