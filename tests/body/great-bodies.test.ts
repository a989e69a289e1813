import { describe, expect, it } from 'vitest';
import { type Body, type BodyInput, surfaceOfBody } from '../../src/core/body/index.ts';
import { KNOT } from '../../src/core/body/rails.ts';
import { EXTREME_PEOPLE } from './extreme-people.ts';
import { measureProfile } from './measure-profile.ts';
import { fitOrThrow } from './read-demo.ts';

type Point = readonly [forward: number, z: number];

/** The profile at an angle round the body, every millimetre or so of chart height, seen along the direction of that angle. */
function profileAt(body: Body, u: number): Point[] {
  const surface = surfaceOfBody(body);
  const [low, high] = surface.vRange;
  return Array.from({ length: Math.round(high - low) + 1 }, (_, i) => {
    const [x, y, z] = surface.evaluate(Float64Array.of(u, Math.min(low + i, high)));
    return [x * Math.cos(u) + y * Math.sin(u), z];
  });
}

function at(profile: readonly Point[], z: number): number {
  const i = profile.findIndex(([, height], k) => k > 0 && height >= z);
  const [[a, low], [b, high]] = [profile[i - 1], profile[i]];
  return a + ((z - low) / (high - low)) * (b - a);
}

function extremePerson(name: string): BodyInput {
  return EXTREME_PEOPLE.find((person) => person.name === name)!.body;
}

function withBust(bustGirth: number): BodyInput {
  const others = { waistGirth: 840, hipGirth: 1080, backWaistLength: 410, neckBaseGirth: 380 };
  return { figure: 'bust', measures: { bustGirth, underbustGirth: 900, ...others } };
}

describe('a great bust', () => {
  // A quarter of the way from the fold to the fullest place a cone stands out 0.25 as far as there, half an ellipse 0.66 as
  // far. A breast that rests on its fold is nearer to the ellipse (geometry; common knowledge of falling soft bodies, no source).
  it.each([
    ['350 mm over the ribs', withBust(1250)],
    ['250 mm over the ribs', withBust(1150)],
    ['350 mm over the ribs, hanging far', { ...withBust(1250), shape: { bustDrop: 'far' } }],
    ['little height over its fold', extremePerson('woman, mass index 45')],
  ])('is full below, not a cone: %s', (_, person) => {
    const body = fitOrThrow(person, { fair: true });
    const profile = profileAt(body, body.landmarks.bustPointRight.u);
    const fold = body.levels.find(({ id }) => id === 'underbust')!.z;
    const bust = body.levels.find(({ id }) => id === 'bust')!.z;
    const front = Math.max(...profile.filter(([, z]) => z > fold && z < bust + 30).map(([out]) => out));
    const shareAt = (z: number): number => (at(profile, z) - at(profile, fold)) / (front - at(profile, fold));
    expect(shareAt(fold + 0.25 * (bust - fold))).toBeGreaterThan(0.58);
    expect(shareAt(fold + 0.25 * (bust - fold))).toBeLessThan(0.85);
    // The tape still lies where the breast is fullest, but for a little.
    expect(shareAt(bust)).toBeGreaterThan(0.9);
    expect(bust - fold).toBeGreaterThan(40);
  });
});

describe('a back too long for the rest of the body, with no answer about it', () => {
  it.each(['hump, woman', 'hump, man', 'old and stooped, woman', 'old and stooped, man'])(
    'is round, with the neck on top: %s',
    (name) => {
      const body = fitOrThrow(extremePerson(name), { fair: true });
      const surface = surfaceOfBody(body);
      const { neckBack, neckSideRight } = body.landmarks;
      const heightOf = ({ u, v }: { u: number; v: number }): number =>
        surface.evaluate(Float64Array.of(u, v))[2];
      // Women of the 1988 survey: 11 mm, standard deviation 8; four of them (statistics.json: napeRise, neckSideRise).
      expect(heightOf(neckBack) - heightOf(neckSideRight)).toBeLessThan(11 + 4 * 8);
      // The spine has one place farthest back between waist and nape, and is round there.
      const spine = profileAt(body, -0.5 * Math.PI).filter(([, z]) => z > 10 && z < heightOf(neckBack) - 5);
      const farthest = spine.reduce((most, [out], i) => (out > spine[most][0] ? i : most), 0);
      expect(
        spine.every(
          ([out], i) => i === 0 || (i <= farthest ? out >= spine[i - 1][0] : out <= spine[i - 1][0]),
        ),
      ).toBe(true);
      const { radius } = measureProfile(surface, -0.5 * Math.PI, 60, 400);
      expect(radius).toBeGreaterThan(40);
    },
  );
});

describe('a great belly, with no answer about it', () => {
  it.each(['large belly, woman', 'large belly, slim hips, woman', 'large belly, man', 'man, mass index 45'])(
    'is carried in front: %s',
    (name) => {
      const body = fitOrThrow(extremePerson(name), { fair: true });
      const [back, front] = [-0.5 * Math.PI, 0.5 * Math.PI].map((u) => profileAt(body, u));
      const zOf = (id: string): number => body.levels.find((level) => level.id === id)!.z;
      const beyondNeighbours = (profile: readonly Point[]): number => {
        const neighbours = 0.5 * (at(profile, zOf('underbust')) + at(profile, zOf('hip')));
        const belly = profile.filter(([, z]) => z > zOf('highHip') && z < 0).map(([out]) => out);
        return belly.reduce((sum, out) => sum + out, 0) / belly.length - neighbours;
      };
      const [behind, ahead] = [beyondNeighbours(back), beyondNeighbours(front)];
      expect(ahead).toBeGreaterThan(20);
      expect(ahead / (ahead + behind)).toBeGreaterThan(0.8);
      // Navels of the 1988 and 2012 surveys where the waist is longer than the hip: 0.76 (women), 0.80 (men); larger ones deeper.
      expect(body.sections.highHip.depth / body.sections.highHip.width).toBeGreaterThan(0.76);
    },
  );
});

describe('the throat of somebody seated', () => {
  it.each([
    ['woman', 'seated posture'],
    ['man', 'seated posture, man'],
  ])('does not fold: %s', (_, name) => {
    for (const shape of [{}, { posture: 'seated' }]) {
      const surface = surfaceOfBody(fitOrThrow({ ...extremePerson(name), shape }, { fair: true }));
      // A neck leans forward by 20 to 40 degrees at most (common practice, no source).
      const [pit, top] = [KNOT.neckBase, KNOT.neckTop].map((v) =>
        surface.evaluate(Float64Array.of(0.5 * Math.PI, v)),
      );
      expect((top[1] - pit[1]) / (top[2] - pit[2])).toBeLessThan(Math.tan((40 * Math.PI) / 180));
      expect(measureProfile(surface, 0.5 * Math.PI, 250, 465).radius).toBeGreaterThan(40);
    }
  });
});
