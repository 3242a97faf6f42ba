/**
 * Usual spacings of trims and details. None of them is a requirement of strength: each says what kind of number
 * it is, and each is checked against wind afterwards. High wind tightens them where public guidance does.
 */
import type { Practice } from './connection.ts';

const common = (spacing_in: number, source: string): Practice => ({
  spacing_in,
  kind: 'common practice',
  source,
});
const government = (spacing_in: number, source: string): Practice => ({
  spacing_in,
  kind: 'government guidance',
  source,
});

export interface PracticeTable {
  readonly clipOnDeck: Practice;
  readonly flange: Practice;
  readonly panelRow: Practice;
  readonly sideLap: Practice;
  readonly eaveStarter: Practice;
  readonly eaveTrim: Practice;
  readonly ridge: Practice;
  readonly ridgeRows: number;
  readonly valley: Practice;
  readonly rake: Practice;
  readonly wall: Practice;
  readonly endLap: Practice;
  readonly pipeBoot: Practice;
  readonly rivets: Practice;
}

export function practiceFor(highWind: boolean): PracticeTable {
  return {
    clipOnDeck: common(24, 'clips on a deck at most 24 in apart in the field'),
    flange: common(12, 'screws of a nail flange 12 in apart in the field'),
    panelRow: common(24, 'rows of exposed screws at most 24 in apart on a deck'),
    sideLap: highWind
      ? common(12, 'lap screws 12 in apart in strong wind')
      : common(24, 'lap screws 18 to 24 in apart'),
    eaveStarter: highWind
      ? common(6, 'eave starter 6 in apart in edge zones')
      : common(12, 'eave starter 12 in apart'),
    eaveTrim: highWind
      ? government(4, 'FEMA and federal guide specifications: flashings 4 to 6 in apart in high wind')
      : common(12, 'eave trim 12 in apart'),
    ridge: highWind
      ? government(
          6,
          'FEMA P-499: ridge and hip flashings with two rows of exposed screws a side, 3 to 6 in apart',
        )
      : common(12, 'ridge and hip caps 12 in apart'),
    ridgeRows: highWind ? 2 : 1,
    valley: common(12, 'valley pan held at its edges 12 in apart, never through the pan'),
    rake: highWind
      ? government(6, 'FEMA P-499: rake flashings with exposed screws 3 to 6 in apart')
      : common(12, 'rake trim 12 in apart'),
    wall: highWind
      ? common(6, 'wall flashings 6 in apart in strong wind')
      : common(12, 'wall flashings 12 in apart'),
    endLap: common(3, 'end laps with tape and screws about 3 in apart, over a support'),
    pipeBoot: common(1.25, 'lap screws 1 to 1 1/2 in apart round the flange of a pipe boot'),
    rivets: common(3, 'rivets 3 in apart across a trim lap, both sheets bedded in sealant'),
  };
}
