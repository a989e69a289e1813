import type { Layout, Snapshot } from './layout.ts';
import type { Search } from './search.ts';

export interface Separation {
  /** Nothing collides any more. */
  readonly isApart: boolean;
}

/** Work between two yields, in evaluations: a few ms. */
const SPELL = 2000;
/** A gain smaller than this share does not count. */
const GAIN = 0.02;
const HEAVIER = [1.2, 2] as const;
const LIGHTER = 0.95;

/**
 * Moves colliding bodies until none collide, or `patience` passes brought nothing, from the best layout met again and again as
 * long as that gains. Guided local search: what collides again and again weighs more and more, so that the search leaves a layout
 * in which it is stuck. Ends with the best layout met.
 * Sources: Voudouris and Tsang, Guided local search, EJOR 113 (1999), from memory; arXiv:2509.13329.
 */
export function* separate(search: Search, patience: number): Generator<void, Separation> {
  const { layout } = search;
  layout.weights.fill(1);
  let best: Snapshot = layout.snapshot();
  let least = layout.totalLoss();
  const isOver = (): boolean => least === 0 || layout.evaluations >= search.end;
  for (let before = Infinity; !isOver() && least < (1 - GAIN) * before; ) {
    before = least;
    for (let idle = 0; !isOver() && idle < patience; ) {
      yield* pass(search);
      const loss = layout.totalLoss();
      idle = loss < (1 - GAIN) * least ? 0 : idle + 1;
      if (loss < least) {
        least = loss;
        best = layout.snapshot();
      }
      if (!isOver()) reweigh(layout);
    }
    if (least > 0) layout.restore(best);
  }
  return { isApart: least === 0 };
}

/** Every colliding body once, in random order. */
function* pass(search: Search): Generator<void> {
  const { layout, seeker, end } = search;
  let pause = layout.evaluations + SPELL;
  for (const body of shuffledColliding(search)) {
    if (layout.weightedLossOf(body) > 0) seeker.move(body);
    if (layout.evaluations < pause) continue;
    yield;
    pause = layout.evaluations + SPELL;
    if (layout.evaluations >= end) return;
  }
  yield;
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
  for (let k = 0; k < losses.length; k++) if (losses[k] > most) most = losses[k];
  if (most === 0) return;
  const [low, high] = HEAVIER;
  const slope = (high - low) / most;
  for (let k = 0; k < losses.length; k++) {
    if (losses[k] > 0) weights[k] *= low + slope * losses[k];
    else if (weights[k] > 1) weights[k] = Math.max(1, weights[k] * LIGHTER);
  }
}
