import { fairLoop } from './fair-curve.ts';
import { locateOnArmhole } from './locate-on-armhole.ts';
import { toRightHalf } from './resolve-lines.ts';
import type { ChartPlace, SeamForm } from './types.ts';

const SAMPLES = 48;

/**
 * The place on the right armhole that costs least, refined between samples, and its position as anchors count it. The form
 * must have armholes.
 */
export function nearestOnArmhole(
  form: SeamForm,
  costOf: (place: ChartPlace) => number,
): { readonly place: ChartPlace; readonly position: number } {
  const loop = fairLoop(toRightHalf(form.armholes.right));
  const locate = locateOnArmhole(loop, form);
  const at = (position: number): ChartPlace => {
    const [u, v] = loop.at(locate(position));
    return { u, v };
  };
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < SAMPLES; i++) {
    const size = costOf(at(i / SAMPLES));
    if (size < least) [best, least] = [i / SAMPLES, size];
  }
  for (let step = 0.5 / SAMPLES; step > 1e-5; step /= 2) {
    for (const trial of [best - step, best + step]) {
      const size = costOf(at(trial));
      if (size < least) [best, least] = [trial, size];
    }
  }
  return { place: at(best), position: best - Math.floor(best) };
}
