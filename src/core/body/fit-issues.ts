import type { Issue, Phrase } from '../base/index.ts';
import { nameOfMeasure } from './measures.ts';
import { OUTSIDE_IDS, type OutsideId, type Parameter, type ParameterId } from './parameter-ids.ts';
import { phrase } from './phrases.ts';
import { isPulledByMaker } from './pulled-by-maker.ts';
import type { BodyInput, TapeReading } from './types.ts';

/** A typed tape is met when the body reads within this, mm. */
export const MET_WITHIN = 0.5;
/** A reading with a spread of its own is met within so many of them: one in 400 is not, were they spread normally. */
export const SOFTLY_MET = 3;
/** A prior pulled further than this many standard deviations is told. */
const DOUBT_PULL = 2;
/** Beyond this many it is called very unusual: three in a thousand people, were they spread normally. */
const VERY_UNUSUAL = 3;

/** Tapes that no body can meet together: each by how much, and what to re-measure. */
export function conflictIssues(tapes: readonly TapeReading[]): Issue[] {
  const conflicts = tapes.filter((t) => t.status === 'conflict');
  const conflicting = conflicts.map((t) => nameTape(t.id));
  return conflicts.map((tape, i) => {
    const gap = tape.target - tape.got;
    return {
      code: 'tape-conflict',
      path: `measures.${tape.id}`,
      severity: 'warning',
      message: phrase('body.tape-conflict', {
        tape: conflicting[i],
        gap: Math.abs(gap),
        size: gap > 0 ? 'large' : 'small',
        conflicting,
      }),
      measured: Math.abs(gap),
      limit: MET_WITHIN,
    };
  });
}

/**
 * Priors pulled far tell of a body that the tapes make unusual: said, not hidden. Not of what the maker knows better: where a
 * breadth or depth was read, or the shape was chosen, the prior is no witness.
 */
export function pullIssues(
  unknowns: readonly Parameter[],
  point: Float64Array,
  input: Pick<BodyInput, 'measures' | 'shape' | 'photos'>,
): Issue[] {
  const pulls = unknowns
    .map((u, i) => ({ id: u.id, pull: Math.abs(point[i] - u.mean) / u.spread }))
    .filter((p) => p.pull > DOUBT_PULL && !isPulledByMaker(p.id, input))
    .filter((p): p is { id: Exclude<ParameterId, OutsideId>; pull: number } => !isOutside(p.id))
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
      message: phrase('body.unusual-shape', { part: phrase(`part.${id}`), isVery: pull > VERY_UNUSUAL }),
    },
  ];
}

function isOutside(id: ParameterId): id is OutsideId {
  return OUTSIDE_IDS.some((outside) => outside === id);
}

/** A tape of both sides or of one. */
function nameTape(id: string): Phrase {
  const [base, side] = id.split('.');
  const measure = nameOfMeasure(base);
  return side === 'left' || side === 'right' ? phrase('measure.of-side', { measure, side }) : measure;
}
