import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Body, fitBody, placeOfReading, surfaceOfBody } from '../../src/core/body/index.ts';
import { fitOrThrow } from './read-demo.ts';

/**
 * Mean tapes and mean places of 100 scanned women who were never tuned on (shared/survey/SOURCE.md, “Landmarks”), y to the front and
 * z up from the middle of the waist, mm.
 */
const women: {
  readonly measures: Readonly<Record<string, number>>;
  readonly places: Readonly<Record<string, number>>;
} = JSON.parse(readFileSync('shared/survey/landmarks.json', 'utf8'));

const FIVE = Object.fromEntries(
  ['bustGirth', 'waistGirth', 'hipGirth', 'backWaistLength', 'neckBaseGirth'].map((id) => [
    id,
    women.measures[id],
  ]),
);

type Places = Readonly<Record<string, number>>;

/** What a ruler reads between a wall and her places. */
function readOffWall(places: Places, wall: number): Record<string, number> {
  return {
    wallNape: places.napeY - wall,
    wallBlades: places.bladesY - wall,
    wallWaistBack: -places.waistHalfDepth - wall,
    wallNeckFront: places.neckFrontY - wall,
    wallBust: places.bustY - wall,
    wallWaistFront: places.waistHalfDepth - wall,
    wallBelly: places.bellyY - wall,
  };
}

/** Leaning forward from the waist by a share of the height: the upper landmarks move with it. */
function leaning(places: Places, share: number): Places {
  const moved = { ...places };
  for (const [y, z] of [
    ['napeY', 'napeZ'],
    ['neckFrontY', 'neckFrontZ'],
    ['bustY', 'bustZ'],
    ['bladesY', 'bladesZ'],
  ] as const)
    moved[y] = places[y] + share * places[z];
  return moved;
}

/** y of the same places on a fitted body, read off its surface alone; from the middle of the waist. */
function placesOf(body: Body): Places {
  const surface = surfaceOfBody(body);
  const at = (u: number, v: number): Float64Array => surface.evaluate(Float64Array.of(u, v));
  const waist = body.levels.find(({ id }) => id === 'waist')!.v;
  const [front, back] = [at(Math.PI / 2, waist), at(-Math.PI / 2, waist)];
  const middle = 0.5 * (front[1] + back[1]);
  const mark = (id: keyof Body['landmarks']): number =>
    at(body.landmarks[id].u, body.landmarks[id].v)[1] - middle;
  const spine = Array.from({ length: 200 }, (_, i) =>
    at(-Math.PI / 2, waist + ((body.landmarks.neckBack.v - waist) * i) / 200),
  );
  return {
    napeY: mark('neckBack'),
    neckFrontY: mark('neckFront'),
    bustY: mark('bustPointRight'),
    bladesY: Math.min(...spine.map(([, y]) => y)) - middle,
  };
}

function bodyOf(readings: Readonly<Record<string, number>>): Body {
  return fitOrThrow({ figure: 'bust', measures: { ...FIVE, ...readings } }, { fair: true });
}

const gapsOf = (body: Body, places: Places): number[] =>
  Object.entries(placesOf(body)).map(([id, y]) => Math.abs(y - places[id]));
const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, x) => sum + x * x, 0) / values.length);

describe('readings off a wall', () => {
  const stooped = leaning(women.places, 0.1);

  it('bring a body to where the scanned women stand', () => {
    expect(rms(gapsOf(bodyOf(readOffWall(women.places, -225)), women.places))).toBeLessThan(4);
  });

  it('tell a lean that the tapes cannot: 4 cm at the nape', () => {
    expect(rms(gapsOf(bodyOf({}), stooped))).toBeGreaterThan(20);
    const body = bodyOf(readOffWall(stooped, -225));
    expect(rms(gapsOf(body, stooped))).toBeLessThan(6);
    for (const { id, got, target, status, kind } of body.tapes) {
      if (kind === 'distance') expect(status, id).toBe('met');
      else if (FIVE[id] !== undefined) expect(Math.abs(got - target), id).toBeLessThan(0.5);
    }
  });

  it('are drawn to the places they are read to', () => {
    const body = bodyOf(readOffWall(women.places, -225));
    const read = body.tapes.filter(({ kind }) => kind === 'distance');
    const apart = read.map(({ id, got }) => got - placeOfReading(body, id)![1]);
    expect(read.length).toBe(7);
    for (const wall of apart) expect(wall).toBeCloseTo(apart[0], 6);
    expect(placeOfReading(body, 'waistGirth')).toBeNull();
  });

  it('do not depend on where the wall stands', () => {
    const [near, far] = [-190, -260].map((wall) => placesOf(bodyOf(readOffWall(stooped, wall))));
    // The wall itself is believed to stand a hand's breadth off, to 8 cm: that pulls a little.
    for (const [id, y] of Object.entries(near)) expect(Math.abs(y - far[id]), id).toBeLessThan(2);
  });

  it('that cannot be together are named, with what they are off by', () => {
    const readings = readOffWall(women.places, -225);
    const body = bodyOf({ ...readings, wallBust: readings.wallBust + 90 });
    const conflict = body.issues.find(({ code }) => code === 'tape-conflict');
    expect(conflict?.path).toBe('measures.wallBust');
    expect(conflict?.measured).toBeGreaterThan(12);
  });

  it('say nothing if there are but two, and that is told', () => {
    const { wallNape, wallBlades } = readOffWall(women.places, -225);
    const result = fitBody({ figure: 'bust', measures: { ...FIVE, wallNape, wallBlades } });
    expect(result.ok && result.value.issues.map(({ code }) => code)).toContain('wall-alone');
  });
});

describe('heights of landmarks', () => {
  const waistHeight = 1010;
  const pit = (body: Body): number =>
    surfaceOfBody(body).evaluate(Float64Array.of(body.landmarks.neckFront.u, body.landmarks.neckFront.v))[2];

  it('lift or lower a landmark over the waist', () => {
    for (const rise of [300, 330]) {
      const body = bodyOf({ waistHeight, neckFrontHeight: waistHeight + rise });
      // Read to 4 mm, and the survey knows how high the pit of the neck usually is to a centimetre.
      expect(Math.abs(pit(body) - rise)).toBeLessThan(10);
    }
  });

  it('want the height of the waist', () => {
    const result = fitBody({ figure: 'bust', measures: { ...FIVE, neckFrontHeight: 1330 } });
    expect(result.ok && result.value.issues.map(({ code }) => code)).toContain('height-alone');
  });
});
