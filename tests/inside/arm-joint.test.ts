import { describe, expect, it } from 'vitest';
import { makeArmJoint } from '../../src/core/inside/arm-joint.ts';
import { inEnglish } from '../in-english.ts';

/** A round plate: what is left beside a hole of radius r at height y is R − y − r, by hand. */
function discOf(radius: number): Float64Array {
  const count = 3600;
  return Float64Array.from({ length: 2 * count }, (_, i) => {
    const angle = (2 * Math.PI * (i >> 1)) / count;
    return radius * (i % 2 === 0 ? Math.cos(angle) : Math.sin(angle));
  });
}

const holesOf = (joint: ReturnType<typeof makeArmJoint>) =>
  joint.holes.map(({ points }) => {
    const [xs, ys] = [0, 1].map((axis) => points.filter((_, i) => i % 2 === axis));
    return { left: Math.min(...xs), low: Math.min(...ys), high: Math.max(...ys) };
  });

// 8 mm of card are kept at every hole (our own); seats and the peg's hole have 0.3 mm of play on the diameter.
describe('holes of an armhole plate', () => {
  it('keep board between peg and magnets, and beside both', () => {
    const joint = makeArmJoint(discOf(60), 'right', {});
    expect(joint.issues).toEqual([]);
    const [peg, up, down] = holesOf(joint);
    expect(up.low - peg.high).toBeGreaterThanOrEqual(8);
    expect(60 - up.high).toBeGreaterThanOrEqual(8);
    expect(peg.low - down.high).toBeCloseTo(up.low - peg.high, 6);
  });

  it('share what room there is on a small plate: 36 mm less peg 6.15 and magnet 15.3 leave 7.275 mm on either side', () => {
    const joint = makeArmJoint(discOf(36), 'left', {});
    const [peg, up] = holesOf(joint);
    expect(up.low - peg.high).toBeCloseTo(7.275, 2);
    expect(36 - up.high).toBeCloseTo(7.275, 2);
    expect(joint.issues).toHaveLength(1);
    const [issue] = joint.issues;
    expect(issue).toMatchObject({
      code: 'magnet-near-cut',
      path: 'magnetDiameter',
      severity: 'error',
      limit: 8,
    });
    expect(issue.measured).toBeCloseTo(7.275, 2);
    expect(inEnglish(issue.message)).toContain(
      'left arm, 1.5 cm (9/16 in), leave 0.73 cm (5/16 in) of card to the edge',
    );
    expect(inEnglish(issue.message)).toContain("0.73 cm (5/16 in) to the peg's hole");
    // 36 − 6.15 − 0.3 − 16 = 13.55: magnets of 13 mm fit, and no issue is left with them.
    expect(inEnglish(issue.message)).toContain('Take magnets of 1.3 cm at most');
    expect(makeArmJoint(discOf(36), 'left', { magnetDiameter: 13 }).issues).toEqual([]);
    expect(makeArmJoint(discOf(36), 'left', { magnetDiameter: 14 }).issues).toHaveLength(1);
  });

  it('say so where a magnet would lie in the peg’s hole or no magnet fits at all', () => {
    const [tooLarge] = makeArmJoint(discOf(36), 'right', { magnetDiameter: 40 }).issues;
    expect(tooLarge.measured).toBeCloseTo((36 - 6.15 - 40.3) / 2, 2);
    expect(inEnglish(tooLarge.message)).toContain('leave nothing of card');
    const [, none] = makeArmJoint(discOf(36), 'right', { pegDiameter: 60 }).issues;
    expect(inEnglish(none.message)).toContain('There is no room for magnets');
  });

  it('name a peg too thick: a hole of 30.15 mm in a plate of 36 mm leaves 5.85 mm', () => {
    const issues = makeArmJoint(discOf(36), 'right', { pegDiameter: 60 }).issues;
    const peg = issues.find(({ code }) => code === 'peg-near-cut')!;
    expect(peg).toMatchObject({ path: 'pegDiameter', severity: 'error', limit: 8 });
    expect(peg.measured).toBeCloseTo(5.85, 2);
    // 2 · (36 − 8) − 0.3 = 55.7.
    expect(inEnglish(peg.message)).toContain('Take a peg of 5.5 cm at most');
  });
});
