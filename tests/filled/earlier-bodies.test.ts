import { describe, expect, it } from 'vitest';
import { filledProblem, measureFilled } from '../../src/core/filled/index.ts';
import { solved } from '../statics/solved.ts';
import { readEarlier } from './read-earlier.ts';

// An independent simulation in space, written in another language and kept apart, of the same forms with the same insides: the panels as
// cut, 3 kPa, Et 40 N/mm, Gt 8, 6000 triangles. Girths are the least and the most of the six levels, filled less asked;
// `far` is the worst place, in the throat. Armhole boards turn by 3 to 4° on all bodies.
const INDEPENDENT = [
  ['average', { girths: [-13.7, -0.4], rms: 6.7, within: 0.89, far: 39 }],
  ['large-bust', { girths: [-19.8, -0.1], rms: 7.8, within: 0.86, far: 43 }],
] as const;

describe.each(INDEPENDENT)('%s as it was, filled', (id, expected) => {
  const { given, braces } = readEarlier(id);
  const filled = filledProblem(given, { braces, areArmholesFree: true });
  const { levels, distance, throat, boards } = measureFilled(filled, solved(filled.problem));

  it('has the girths an independent simulation has, within 1 mm', () => {
    const unlike = levels.map(({ asked, found }) => found.girth - asked.girth);
    expect(Math.abs(Math.min(...unlike) - expected.girths[0])).toBeLessThan(1);
    // Its waist and underbust, and so ours, within 1 mm of what was asked.
    expect(Math.abs(Math.max(...unlike) - expected.girths[1])).toBeLessThan(1);
  });

  it('lies as far from the body, within half a millimetre in the mean and a hundredth of the area', () => {
    expect(Math.abs(distance.rms - expected.rms)).toBeLessThan(0.5);
    expect(Math.abs(distance.within - expected.within)).toBeLessThan(0.01);
  });

  it('is worst in the throat, by as much within 2 mm', () => {
    expect(throat).toEqual(distance.worst);
    expect(throat.over).toBe('upperChest');
    expect(Math.abs(throat.distance - expected.far)).toBeLessThan(2);
  });

  it('turns its armhole boards by 3 to 4°, rounded', () => {
    for (const board of boards.filter((one) => one.id.startsWith('armhole'))) {
      const degrees = Math.round((180 / Math.PI) * board.turned);
      expect([3, 4]).toContain(degrees);
    }
  });
});
