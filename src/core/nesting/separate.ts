import type { Layout, Snapshot } from './layout.ts';
import type { Search } from './search.ts';

export interface Separation {
  readonly isApart: boolean;
  /** Of the best layout met, which is the present one. */
  readonly loss: number;
}

/** Work between two yields, in evaluations: a few ms. */
const SPELL = 4000;
/** A gain smaller than this share does not count. */
const GAIN = 0.02;
const HEAVIER = [1.2, 2] as const;
const LIGHTER = 0.95;

/**
 * Moves colliding bodies until none collide, or `patience` passes brought nothing. Guided local search: what collides again and
 * again weighs more and more, so that the search leaves a layout in which it is stuck. Ends with the best layout met.
 * Sources: Voudouris and Tsang, Guided local search, EJOR 113 (1999), from memory; arXiv:2509.13329.
 */
export function* separate(search: Search, patience: number, strikes: number): Generator<void, Separation> {
  const { layout } = search;
  layout.weights.fill(1);
  let best: Snapshot = layout.snapshot();
  let least = layout.totalLoss();
  let strike = 0;
  let pause = layout.evaluations + SPELL;
  while (least > 0 && strike < strikes) {
    const before = least;
    let idle = 0;
    while (least > 0 && idle < patience) {
      const colliding = shuffledColliding(search);
      for (const body of colliding) {
        if (layout.weightedLossOf(body) > 0) search.seeker.move(body);
        if (layout.evaluations < pause) continue;
        yield;
        pause = layout.evaluations + SPELL;
        if (layout.evaluations >= search.end) break;
      }
      const loss = layout.totalLoss();
      idle = loss < (1 - GAIN) * least ? 0 : idle + 1;
      if (loss < least) {
        least = loss;
        best = layout.snapshot();
      }
      if (layout.evaluations >= search.end) break;
      reweigh(layout);
    }
    if (layout.evaluations >= search.end) break;
    strike = least < (1 - GAIN) * before ? 0 : strike + 1;
    if (least > 0) layout.restore(best);
  }
  if (least > 0) layout.restore(best);
  return { isApart: least === 0, loss: least };
}

function shuffledColliding({ layout, random }: Search): number[] {
  const bodies: number[] = [];
  for (let i = 0; i < layout.count; i++)
    if (layout.bodies[i].moves && layout.weightedLossOf(i) > 0) bodies.push(i);
  for (let k = bodies.length - 1; k > 0; k--) {
    const other = Math.floor(random() * (k + 1));
    [bodies[k], bodies[other]] = [bodies[other], bodies[k]];
  }
  return bodies;
}

/** Pairs that collide weigh more, the worst most; the others forget. */
function reweigh({ losses, weights }: Layout): void {
  let most = 0;
  for (const loss of losses) if (loss > most) most = loss;
  if (most === 0) return;
  const [low, high] = HEAVIER;
  for (let k = 0; k < losses.length; k++) {
    const loss = losses[k];
    weights[k] =
      loss > 0 ? weights[k] * (low + ((high - low) * loss) / most) : Math.max(1, weights[k] * LIGHTER);
  }
}
