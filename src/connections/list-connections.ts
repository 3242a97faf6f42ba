/** Every joint of a roof, from its panel, its support, and the edges it has. */
import type { Job } from '../job/job.ts';
import type { EdgeTag } from '../job/roof-input.ts';
import type { Plane, Roof } from '../roof/roof.ts';
import {
  bracketToSupport,
  clipBuildUp,
  lumber,
  type Parts,
  panelBuildUp,
  sheetToSheet,
  trimToSupport,
  trimToTrim,
  trimToWood,
} from './build-ups.ts';
import type { Connection, Placement, Practice } from './connection.ts';
import { type PracticeTable, practiceFor } from './practice.ts';

/** Width of sheet whose suction a lap screw, or the hook of an eave starter, is taken to carry, in inches. */
const LAP_STRIP = 3;
/** Trims come in lengths of ten feet; each joint is lapped and riveted. */
const TRIM_LENGTH = 120;

export function listConnections(job: Job, roof: Roof, parts: Parts, highWind: boolean): Connection[] {
  const practice = practiceFor(highWind);
  return [
    primary(job, parts, practice),
    ...laps(job, roof, practice),
    ...eave(job, practice, roof),
    ...trims(job, practice, roof),
    ...pieces(job, practice),
    ...rivets(job, practice, roof),
  ];
}

const plain = { each: 1, oneSided: false, primary: false };
const hasTag = (roof: Roof, tag: EdgeTag): boolean =>
  roof.planes.some((plane) => plane.edges.some((edge) => edge.tag === tag));
export const exposed = (job: Job): boolean =>
  job.panel.system === 'exposed ribbed' || job.panel.system === 'corrugated';

/** Supports that stand in lines; a deck is continuous. */
export const onLines = (job: Job): boolean => 'spacing' in job.support;

function primary(job: Job, parts: Parts, practice: PracticeTable): Connection {
  const { panel } = job;
  const along = onLines(job) ? 'supports' : 'free';
  const seams: Placement = { by: 'field', lines: 'seams', pitch_in: panel.coverage, along };
  const common = { tributaryWidth_in: panel.coverage as number, primary: true };
  const load = 'Net uplift on the panel between neighbouring fasteners: coverage times spacing';
  if (panel.system === 'standing seam on clips')
    return {
      id: 'panel clips',
      duty: 'clip',
      buildUp: clipBuildUp(job, parts),
      placement: seams,
      ...common,
      loadRule: `${load}, shared by the screws of the clip and raised by its prying.`,
      each: parts.clip?.screws ?? 2,
      oneSided: true,
      practice: practice.clipOnDeck,
    };
  if (panel.system === 'nail flange')
    return {
      id: 'panel flange',
      duty: 'flange',
      buildUp: panelBuildUp(job, true),
      placement: seams,
      ...common,
      loadRule: `${load}.`,
      each: 1,
      oneSided: panel.pullOnOneSide,
      practice: practice.flange,
    };
  const pitch = (panel.ribSpacing ?? panel.coverage) as number;
  return {
    id: 'panel screws',
    duty: 'panel',
    buildUp: panelBuildUp(job, false),
    placement: { by: 'field', lines: 'ribs', pitch_in: pitch, along },
    tributaryWidth_in: pitch,
    primary: true,
    loadRule:
      'Net uplift on the panel between neighbouring screws: rib spacing times row spacing, shared where both sides of a rib are screwed.',
    each: 1,
    oneSided: panel.pullOnOneSide,
    practice: practice.panelRow,
  };
}

function laps(job: Job, roof: Roof, practice: PracticeTable): Connection[] {
  const list: Connection[] = [];
  if (exposed(job))
    list.push({
      ...plain,
      oneSided: true,
      id: 'side lap',
      duty: 'stitch',
      buildUp: sheetToSheet(job, 'panel'),
      placement: { by: 'side lap', pitch_in: job.panel.coverage },
      tributaryWidth_in: LAP_STRIP,
      loadRule: `Suction on the lapped rib itself, a strip ${LAP_STRIP} in wide; the panels carry the rest to their own screws (own rule).`,
      practice: practice.sideLap,
    });
  const longest = job.panel.longestSheet;
  if (longest === undefined) return list;
  const perPiece = Math.ceil(job.panel.coverage / practice.endLap.spacing_in);
  for (const plane of roof.planes.filter((one) => runLength(one) > longest))
    list.push({
      ...plain,
      id: `end lap, ${plane.id}`,
      duty: 'stitch',
      buildUp: sheetToSheet(job, 'panel'),
      placement: {
        by: 'end laps',
        plane: plane.id,
        every_in: longest,
        pitch_in: job.panel.coverage,
        perPiece,
      },
      tributaryWidth_in: 12,
      loadRule:
        'Suction on a strip a foot wide along the lap, shared by the screws across one run (own rule).',
      practice: practice.endLap,
    });
  return list;
}

function runLength(plane: Plane): number {
  const along = plane.outline.map((p) => p.x * plane.upslope.x + p.y * plane.upslope.y);
  return (Math.max(...along) - Math.min(...along)) * Math.hypot(1, plane.slope);
}

function eave(job: Job, practice: PracticeTable, roof: Roof): Connection[] {
  if (!hasTag(roof, 'eave')) return [];
  const sill = job.details.treatedSill;
  const buildUp = sill
    ? trimToWood(
        job,
        lumber('purlin', 'treated sill', 1.5, sill.species, { moisture: 'dry', treatment: sill.treatment }),
      )
    : trimToSupport(job, !exposed(job));
  const placement: Placement = { by: 'edge', tag: 'eave', rows: 1 };
  if (exposed(job))
    return [
      {
        ...plain,
        id: 'eave trim',
        duty: 'trim',
        buildUp,
        placement,
        tributaryWidth_in: job.details.trimGirth,
        loadRule: 'Suction on the trim, its developed width times the spacing.',
        practice: practice.eaveTrim,
      },
    ];
  return [
    {
      ...plain,
      id: 'eave starter',
      duty: 'concealed trim',
      buildUp,
      placement,
      oneSided: true,
      tributaryWidth_in: 12,
      loadRule:
        'The hooked panel end: suction on a foot of panel above the eave times the spacing (own rule).',
      practice: practice.eaveStarter,
    },
  ];
}

interface TrimKind {
  readonly tag: EdgeTag;
  readonly id: string;
  readonly practice: Practice;
  readonly rows: number;
  readonly concealed?: true;
}

function trims(job: Job, practice: PracticeTable, roof: Roof): Connection[] {
  const kinds: readonly TrimKind[] = [
    { tag: 'ridge', id: 'ridge cap', practice: practice.ridge, rows: practice.ridgeRows },
    { tag: 'hip', id: 'hip cap', practice: practice.ridge, rows: practice.ridgeRows },
    { tag: 'high edge', id: 'high edge trim', practice: practice.ridge, rows: 1 },
    { tag: 'rake', id: 'rake trim', practice: practice.rake, rows: 1 },
    { tag: 'headwall', id: 'headwall flashing', practice: practice.wall, rows: 1 },
    { tag: 'sidewall', id: 'sidewall flashing', practice: practice.wall, rows: 1 },
    { tag: 'valley', id: 'valley pan', practice: practice.valley, rows: 1, concealed: true },
  ];
  return kinds
    .filter(({ tag }) => hasTag(roof, tag))
    .map(({ tag, id, practice: usual, rows, concealed }) => ({
      ...plain,
      id,
      duty: concealed ? ('concealed trim' as const) : ('stitch' as const),
      buildUp: concealed ? trimToSupport(job, true) : sheetToSheet(job, 'trim'),
      placement: { by: 'edge' as const, tag, rows },
      oneSided: true,
      tributaryWidth_in: job.details.trimGirth / rows,
      loadRule: `Suction on the trim: its developed width on this side${rows > 1 ? `, shared by ${rows} rows,` : ''} times the spacing.`,
      practice: usual,
    }));
}

function pieces(job: Job, practice: PracticeTable): Connection[] {
  const { gutter, pipes } = job.details;
  const list: Connection[] = [];
  if (gutter)
    list.push({
      ...plain,
      id: 'gutter bracket',
      duty: 'bracket',
      buildUp: bracketToSupport(job),
      placement: { by: 'edge', tag: 'eave', rows: 1 },
      each: 2,
      tributaryWidth_in: gutter.width,
      loadRule:
        'Uplift under the gutter: its width times the bracket spacing at the pressure of the edge, its weight not deducted.',
      practice: {
        spacing_in: gutter.bracketSpacing,
        kind: 'common practice',
        source: 'gutter brackets 24 to 36 in apart, two screws each',
      },
    });
  pipes.forEach((pipe, i) => {
    const around = Math.PI * (pipe.diameter + 3);
    list.push({
      ...plain,
      id: pipes.length === 1 ? 'pipe boot' : `pipe boot ${i + 1}`,
      duty: 'stitch',
      buildUp: sheetToSheet(job, 'trim'),
      placement: {
        by: 'piece',
        plane: pipe.plane,
        pieces: pipe.count,
        perPiece: Math.ceil(around / practice.pipeBoot.spacing_in),
      },
      tributaryWidth_in: pipe.diameter + 3,
      loadRule:
        'Suction on the boot and its flange, shared by its screws; the ring of the boot is taken as strong as the trim sheet (own rule).',
      practice: practice.pipeBoot,
    });
  });
  return list;
}

/** Rivets across the laps of all trims, at every joint of ten-foot lengths. */
function rivets(job: Job, practice: PracticeTable, roof: Roof): Connection[] {
  const tags: readonly EdgeTag[] = ['eave', 'ridge', 'hip', 'rake', 'high edge', 'headwall', 'sidewall'];
  const perPiece = Math.max(2, Math.ceil((2 * job.details.trimGirth) / practice.rivets.spacing_in));
  return roof.planes
    .filter((plane) => plane.edges.some((edge) => tags.includes(edge.tag) && edge.length > TRIM_LENGTH))
    .map((plane) => ({
      ...plain,
      id: `trim joints, ${plane.id}`,
      duty: 'rivet',
      buildUp: trimToTrim(job),
      placement: { by: 'trim joints', plane: plane.id, tags, every_in: TRIM_LENGTH, perPiece },
      tributaryWidth_in: job.details.trimGirth,
      loadRule: 'Suction on a lap four inches long of the whole trim, shared by its rivets.',
      practice: practice.rivets,
    }));
}
