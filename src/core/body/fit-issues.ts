import { formatDifference, type Issue, plain, wordsOf } from '../base/index.ts';
import { findMeasure } from './measures.ts';
import type { Parameter, ParameterId } from './shape-parameters.ts';
import type { TapeReading } from './types.ts';

/** A typed tape is met when the body reads within this, mm. */
export const MET_WITHIN = 0.5;
/** A prior pulled further than this many standard deviations is told. */
const DOUBT_PULL = 2;
/** Beyond this many it is called very unusual: three in a thousand people, were they spread normally. */
const VERY_UNUSUAL = 3;

/** Tapes that no body can meet together: each by how much, and what to re-measure. */
export function conflictIssues(tapes: readonly TapeReading[]): Issue[] {
  const conflicts = tapes.filter((t) => t.status === 'conflict');
  const names = conflicts.map((t) => nameTape(t.id)).join(', ');
  return conflicts.map((tape) => {
    const gap = tape.target - tape.got;
    const size = `${formatDifference(Math.abs(gap))} too ${gap > 0 ? 'large' : 'small'}`;
    return {
      code: 'tape-conflict',
      path: `measures.${tape.id}`,
      severity: 'warning',
      message: plain(`${nameTape(tape.id)} is about ${size} for the others. Re-measure ${names}.`),
      measured: Math.abs(gap),
      limit: MET_WITHIN,
    };
  });
}

/** Priors pulled far tell of a body that the tapes make unusual: said, not hidden. */
export function pullIssues(unknowns: readonly Parameter[], point: Float64Array): Issue[] {
  const pulls = unknowns
    .map((u, i) => ({ id: u.id, pull: Math.abs(point[i] - u.mean) / u.spread }))
    .filter((p) => p.pull > DOUBT_PULL)
    .sort((a, b) => b.pull - a.pull);
  if (pulls.length === 0) return [];
  const { id, pull } = pulls[0];
  return [
    {
      code: 'unusual-shape',
      path: 'measures',
      severity: 'warning',
      measured: pull,
      limit: DOUBT_PULL,
      message: plain(
        `To meet every tape the shape became ${pull > VERY_UNUSUAL ? 'very ' : ''}unusual in ${partInWords(id)}. Look at the body and re-measure what looks wrong.`,
      ),
    },
  ];
}

/** What an unknown of the fit shapes, in a maker's words: the kind by its first letter or name, the place by the rest. */
function partInWords(id: ParameterId): string {
  const whole: Partial<Record<ParameterId, string>> = {
    armBulge: 'the fullness of the upper arm',
    armYaw: 'the turn of the armhole',
    armFront: 'the armhole in front',
    armBack: 'the armhole behind',
    roundBack: 'the curve of the upper back',
    fullFront: 'the fullness over the breastbone',
    bustHeight: 'how far the bust stands out',
    bustAngle: 'how far apart the bust points lie',
    xShoulder: 'the breadth of the shoulders',
    shoulderX: 'unlike shoulder breadths',
    shoulderZ: 'unlike shoulder heights',
    bustHeightSkew: 'an unlike bust',
    bustAngleSkew: 'an unlike bust',
    bustLevelSkew: 'unlike bust point heights',
  };
  const kinds: Record<string, string> = {
    a: 'the width',
    d: 'the depth',
    y: 'the place front to back',
    z: 'the height',
    k: 'the squareness',
  };
  const place = id.slice(1).replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return whole[id] ?? `${kinds[id[0]]} at the${place}`;
}

function nameTape(id: string): string {
  const [base, side] = id.split('.');
  const name = wordsOf(findMeasure(base)?.name ?? plain(base));
  return side ? `${name} (${side})` : name;
}
