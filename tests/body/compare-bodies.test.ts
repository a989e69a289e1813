import { describe, expect, it } from 'vitest';
import { compareBodies } from '../../src/core/body/index.ts';
import { fitOrThrow, readDemo } from './read-demo.ts';

const chart = Float64Array.from({ length: 2 * 72 }, (_, i) =>
  i % 2 === 0 ? (2 * Math.PI * (i >> 1)) / 72 : 0,
);

describe('compareBodies', () => {
  const average = readDemo('average');
  const body = fitOrThrow(average);

  it('finds no difference between a body and itself', () => {
    const { sections, outward } = compareBodies(body, body, chart);
    expect(Math.max(...outward.map(Math.abs))).toBe(0);
    expect(sections.map((s) => s.level)).toEqual([
      'hip',
      'highHip',
      'waist',
      'underbust',
      'bust',
      'upperChest',
    ]);
    for (const s of sections) expect(s.after).toEqual(s.before);
  });

  it('sees 20 mm more waist as about 20 / 2π mm outwards all round (Cauchy: girth grows by 2π times the offset)', () => {
    const wider = fitOrThrow({ ...average, measures: { ...average.measures, waistGirth: 785 } });
    const { sections, outward } = compareBodies(body, wider, chart);
    const waist = sections.find((s) => s.level === 'waist')!;
    expect(waist.after.girth - waist.before.girth).toBeCloseTo(20, 1);
    const mean = outward.reduce((a, b) => a + b, 0) / outward.length;
    expect(Math.abs(mean - 20 / (2 * Math.PI))).toBeLessThan(0.5);
  });
});
