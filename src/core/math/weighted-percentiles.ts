/** Steps of the histogram by which percentiles are found. */
const STEPS = 512;

/**
 * For every wanted share (0 to 1) the least size up to which that share of the weight lies. Sizes from 0 up and weights are
 * parallel; sizes that are no number do not count; NaN where nothing counts. A histogram first, then only the step that holds
 * the answer is sorted: O(n) as a rule, where sorting all is O(n log n).
 */
export function weightedPercentiles(
  sizes: Float64Array,
  weights: Float64Array,
  wanted: readonly number[],
): number[] {
  // 1. Weight by size, in equal steps up to the largest.
  let largest = 0;
  for (const size of sizes) if (size > largest) largest = size;
  const perSize = (STEPS - 1) / (largest || 1);
  const stepWeight = new Float64Array(STEPS);
  let total = 0;
  for (let i = 0; i < sizes.length; i++) {
    if (Number.isNaN(sizes[i])) continue;
    stepWeight[Math.floor(sizes[i] * perSize)] += weights[i];
    total += weights[i];
  }
  // 2. Only the step that holds a percentile is sorted.
  return wanted.map((share) => {
    const goal = share * total * (1 - 1e-12);
    let sum = 0;
    let step = 0;
    while (step < STEPS - 1 && sum + stepWeight[step] < goal) sum += stepWeight[step++];
    return total > 0 ? findWithin(step, goal - sum) : Number.NaN;
  });

  function findWithin(step: number, goal: number): number {
    const inside: { readonly size: number; readonly weight: number }[] = [];
    for (let i = 0; i < sizes.length; i++)
      if (Math.floor(sizes[i] * perSize) === step) inside.push({ size: sizes[i], weight: weights[i] });
    inside.sort((a, b) => a.size - b.size);
    let sum = 0;
    for (const { size, weight } of inside) {
      sum += weight;
      if (sum >= goal) return size;
    }
    return inside[inside.length - 1]?.size ?? Number.NaN;
  }
}
