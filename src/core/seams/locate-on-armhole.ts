import { CHART_RADIUS, type ChartCurve } from './fair-curve.ts';
import type { SeamForm } from './types.ts';

/**
 * Turns positions round an armhole (0 armpit, 0.25 front break, 0.5 shoulder point, 0.75 back break) into the loop's
 * own parameter: the landmarks are found on the loop, between them it goes by chart length.
 */
export function locateOnArmhole(curve: ChartCurve, form: SeamForm): (position: number) => number {
  const count = 720;
  const samples = Array.from({ length: count }, (_, i) => curve.at(i / count));
  const nearest = (id: string, otherwise: (point: readonly [number, number]) => number): number => {
    const landmark = form.landmarks[id];
    const cost = (point: readonly [number, number]): number =>
      landmark ? Math.hypot(CHART_RADIUS * (point[0] - landmark.u), point[1] - landmark.v) : otherwise(point);
    let best = 0;
    for (let i = 1; i < count; i++) if (cost(samples[i]) < cost(samples[best])) best = i;
    return polishMinimum((t) => cost(curve.at(t)), best / count, 1 / count);
  };
  const knots = [
    nearest('armpitRight', (point) => point[1]),
    nearest('armBreakFrontRight', (point) => -point[0]),
    nearest('shoulderPointRight', (point) => -point[1]),
    nearest('armBreakBackRight', (point) => point[0]),
  ];
  for (let i = 1; i < 4; i++) while (knots[i] < knots[i - 1]) knots[i] += 1;
  knots.push(knots[0] + 1);
  return (position) => {
    const turned = 4 * (position - Math.floor(position));
    const k = Math.min(3, Math.floor(turned));
    const t = knots[k] + (turned - k) * (knots[k + 1] - knots[k]);
    return t - Math.floor(t);
  };
}

/** Golden section search for the minimum within ±width of t. */
function polishMinimum(cost: (t: number) => number, t: number, width: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = t - width;
  let high = t + width;
  for (let i = 0; i < 50; i++) {
    const a = high - ratio * (high - low);
    const b = low + ratio * (high - low);
    if (cost(a) < cost(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}
