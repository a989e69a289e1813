import { describe, expect, it } from 'vitest';
import { mapDistance } from '../../src/core/advice/index.ts';
import { fitBody } from '../../src/core/body/index.ts';
import { readDemo } from '../body/read-demo.ts';
import { inEnglish } from '../in-english.ts';

const bodyWithHip = (hip: number) => {
  const demo = readDemo('average');
  const fitted = fitBody({ ...demo, measures: { ...demo.measures, hipGirth: hip } });
  if (!fitted.ok) throw new Error('the demo does not fit');
  return fitted.value;
};

describe('the map of distances', () => {
  const body = bodyWithHip(1000);

  it('is nowhere off zero between a body and itself', () => {
    const map = mapDistance(body, body, inEnglish);
    expect(map.rms).toBe(0);
    expect(map.mostOutside).toBeCloseTo(0, 12);
    expect(map.mostInside).toBeCloseTo(0, 12);
  });

  it('finds a hip grown by 44 mm about 7 mm outside, and turned round as far inside', () => {
    // A ring 44 mm longer lies 44 / 2π = 7.0 mm further out on average; an oval hip grows unevenly about that.
    const larger = bodyWithHip(1044);
    const out = mapDistance(body, larger, inEnglish);
    expect(out.mostOutside).toBeGreaterThan(7.0);
    expect(out.mostOutside).toBeLessThan(14);
    const back = mapDistance(larger, body, inEnglish);
    expect(back.mostInside).toBeLessThan(-7.0);
    expect(Math.abs(back.rms - out.rms)).toBeLessThan(0.3);
  });

  it('shows three sides and says both units', () => {
    const { drawing } = mapDistance(body, bodyWithHip(1044), inEnglish);
    const texts = drawing.layers.flatMap((layer) => layer.items.filter((item) => item.kind === 'text'));
    expect(texts.map(({ text }) => text)).toEqual(
      expect.arrayContaining([
        'Front',
        'Side',
        'Back',
        expect.stringMatching(/outside by .* cm \(.*in\) or more/),
      ]),
    );
  });
});
