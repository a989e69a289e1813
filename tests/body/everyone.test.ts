import { describe, expect, it } from 'vitest';
import { type Body, fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { cauchyGirth, denseRow, extent } from './measure-surface.ts';
import { type Person, WARDROBE } from './wardrobe.ts';

// What a choice says is read off the surface alone: points, sums and arc lengths of our own. How much of it must show is common
// practice, no source, where a claim below gives no other.

const FRONT = 0.5 * Math.PI;
const BACK = -FRONT;
const GIRTHS = ['hip', 'highHip', 'waist', 'underbust', 'bust', 'upperChest'] as const;

type Stretch = (u: number, v: number) => [x: number, y: number, z: number];

/** A fitted person, to be measured. */
class Fitted {
  readonly body: Body;
  readonly at: Stretch;

  constructor(
    readonly person: Person,
    readonly fair: boolean,
  ) {
    const result = fitBody(person, undefined, { fair });
    if (!result.ok) throw new Error(result.issues.map(({ code, path }) => `${code} ${path}`).join('\n'));
    this.body = result.value;
    const surface = surfaceOfBody(this.body);
    this.at = (u, v) => {
      const [x, y, z] = surface.evaluate(Float64Array.of(u, v));
      return [x, y, z];
    };
  }

  /** The same person with other answers and measures. */
  but(change: Partial<Person>): Fitted {
    return new Fitted({ ...this.person, ...change }, this.fair);
  }

  row(v: number, count = 720): Float64Array {
    return denseRow(surfaceOfBody(this.body), v, count);
  }

  v(level: string): number {
    return this.body.levels.find(({ id }) => id === level)!.v;
  }

  landmark(id: keyof Body['landmarks']): [number, number, number] {
    const { u, v } = this.body.landmarks[id];
    return this.at(u, v);
  }

  /** Along one angle from row to row. */
  line(u: number, from: number, to: number, count = 1500): [number, number, number][] {
    return Array.from({ length: count + 1 }, (_, i) => this.at(u, from + ((to - from) * i) / count));
  }
}

function lengthOf(points: readonly (readonly number[])[]): number {
  return points.slice(1).reduce((sum, p, i) => sum + Math.hypot(...p.map((x, k) => x - points[i][k])), 0);
}

/** y of a line of the body at a height. */
function profile(line: readonly (readonly number[])[]): (z: number) => number {
  const sorted = line.toSorted((a, b) => a[2] - b[2]);
  return (z) => {
    const i = Math.max(
      1,
      sorted.findIndex((p) => p[2] >= z),
    );
    const [a, b] = [sorted[i - 1], sorted[i]];
    return a[1] + ((z - a[2]) / (b[2] - a[2])) * (b[1] - a[1]);
  };
}

function middleOf(row: Float64Array, axis: number): number {
  const values = Array.from({ length: row.length / 3 }, (_, i) => row[3 * i + axis]);
  return 0.5 * (Math.max(...values) + Math.min(...values));
}

/** Runs once round its middle, never back. */
function turnsOnce(row: Float64Array): boolean {
  const n = row.length / 3;
  const middle = [0, 1].map((k) => {
    let sum = 0;
    for (let i = k; i < row.length; i += 3) sum += row[i];
    return sum / n;
  });
  let before = Math.atan2(row[1] - middle[1], row[0] - middle[0]);
  for (let i = 1; i <= n; i++) {
    const k = 3 * (i % n);
    const angle = Math.atan2(row[k + 1] - middle[1], row[k] - middle[0]);
    const step = Math.atan2(Math.sin(angle - before), Math.cos(angle - before));
    if (step <= 0) return false;
    before = angle;
  }
  return true;
}

/** How far each bust point stands before the skin above and below it. */
function breastDepth(fitted: Fitted, side: 'Right' | 'Left'): number {
  const { u } = fitted.body.landmarks[`bustPoint${side}`];
  const line = fitted.line(u, fitted.v('waist'), fitted.v('upperChest') + 25, 300);
  const [low, high] = [line[Math.round(0.35 * 300)], line[300]];
  const across = line.map(
    ([, y, z]) => y - low[1] - ((z - low[2]) / (high[2] - low[2])) * (high[1] - low[1]),
  );
  return Math.max(...across.slice(105));
}

/** Height of the most forward point of a line. */
function foremost(line: readonly (readonly number[])[]): number {
  return line.reduce((best, p) => (p[1] > best[1] ? p : best))[2];
}

/** What must be true of a person's surface, by name. */
const CLAIMS: Readonly<Record<string, (fitted: Fitted) => void>> = {
  Hedda(fitted) {
    // 100 mm asked for, under the same tapes: the rest of the trunk gives way by less than half of it.
    const line = fitted.line(FRONT, fitted.v('hip'), fitted.v('bust'));
    const plain = fitted.but({ shape: {} });
    const before = profile(plain.line(FRONT, plain.v('hip'), plain.v('bust')));
    expect(profile(line)(-40) - before(-40)).toBeGreaterThan(50);
    expect(Math.abs(foremost(line) + 40)).toBeLessThan(25);
  },
  Ivo: (fitted) => expectBelly(fitted, 55),
  Jorid: (fitted) => expectBelly(fitted, -45),
  Frauke: (fitted) => expectApron(fitted, 45),
  Kaspar: (fitted) => expectApron(fitted, 30),
  Lone(fitted) {
    // Two crests, 16 mm asked for, with a furrow between, on a back that is hollow there by itself.
    const line = fitted.line(-0.6, 5, fitted.v('upperChest') - 8, 400).map(([x, y]) => Math.hypot(x, y + 20));
    const crests = line.flatMap((r, i) => (r > (line[i - 1] ?? r) && r >= line[i + 1] ? [i] : []));
    expect(crests.length).toBeGreaterThanOrEqual(2);
    const furrow = Math.min(...line.slice(crests[0], crests[1]));
    expect(Math.min(line[crests[0]], line[crests[1]]) - furrow).toBeGreaterThan(3.5);
  },
  Malte(fitted) {
    // Seated, the front is shorter beside the back, and the back curves further from the straight line down.
    const ratio = (one: Fitted): number => {
      const [front, back] = [FRONT, BACK].map((u) =>
        lengthOf(one.line(u, 0, one.body.landmarks.neckBack.v, 300)),
      );
      return front / back;
    };
    const standing = fitted.but({ shape: {} });
    expect(ratio(fitted)).toBeLessThan(ratio(standing) - 0.03);
    expect(curveOfBack(fitted)).toBeGreaterThan(curveOfBack(standing) + 10);
  },
  Nanna: (fitted) => expectHips(fitted, 185, 245),
  Orla(fitted) {
    expectTwist(fitted, 30, 8);
    const armpits = (['Right', 'Left'] as const).map((side) => fitted.landmark(`armpit${side}`)[2]);
    expect(Math.abs(armpits[1] - armpits[0] - 35)).toBeLessThan(5);
    expect(Math.abs(sideLine(fitted, 'Right', 'armpitRight') - 160)).toBeLessThan(0.5);
    expect(Math.abs(sideLine(fitted, 'Left', 'armpitLeft') - 195)).toBeLessThan(0.5);
  },
  Piet(fitted) {
    expectTwist(fitted, -35, -12);
    expectHips(fitted, 240, 215);
  },
  Quirin: (fitted) => expectHump(fitted, 32, 40),
  Runa(fitted) {
    expectHump(fitted, 40, 120);
    const upright = fitted.but({ shape: { ...fitted.person.shape, neckForward: 'usual' } });
    const neckAt = (one: Fitted): number => middleOf(one.row(465), 1) - middleOf(one.row(one.v('bust')), 1);
    expect(neckAt(fitted) - neckAt(upright)).toBeGreaterThan(0.7 * 36);
  },
  Signe: (fitted) => expect(breastDepth(fitted, 'Left')).toBeLessThan(0.25 * breastDepth(fitted, 'Right')),
  Tilda: (fitted) => expect(breastDepth(fitted, 'Right')).toBeLessThan(0.3 * breastDepth(fitted, 'Left')),
  Ulla(fitted) {
    for (const side of ['Right', 'Left'] as const) expect(breastDepth(fitted, side)).toBeLessThan(12);
  },
  Vida(fitted) {
    const ratio = breastDepth(fitted, 'Left') / breastDepth(fitted, 'Right');
    expect(Math.abs(ratio - 0.65)).toBeLessThan(0.2);
    const points = (['Right', 'Left'] as const).map((side) => {
      const { u } = fitted.body.landmarks[`bustPoint${side}`];
      return foremost(fitted.line(u, fitted.v('waist') + 20, fitted.v('upperChest') + 40));
    });
    expect(Math.abs(points[0] - points[1] - 30)).toBeLessThan(12);
  },
  Wenke(fitted) {
    const plain = fitted.but({ shape: {} });
    const above = (one: Fitted): number => {
      const z = Object.fromEntries(one.body.levels.map((level) => [level.id, level.z]));
      return z.bust - z.underbust;
    };
    expect(above(fitted)).toBeLessThan(above(plain) - 8);
  },
  Xenia(fitted) {
    const plain = fitted.but({ shape: {} });
    const span = (one: Fitted): number =>
      one.landmark('bustPointRight')[0] - one.landmark('bustPointLeft')[0];
    expect(span(fitted) - span(plain)).toBeGreaterThan(18);
  },
  Yorick(fitted) {
    const [right, left] = (['Right', 'Left'] as const).map((side) => {
      const z = fitted.landmark(`shoulderPoint${side}`)[2];
      return { z, drop: fitted.landmark(`neckSide${side}`)[2] - z };
    });
    expect(Math.abs(right.drop - 95)).toBeLessThan(0.5);
    expect(Math.abs(left.drop - 35)).toBeLessThan(0.5);
    // The sides of the neck may themselves lie a little apart.
    expect(Math.abs(left.z - right.z - 60)).toBeLessThan(6);
  },
  Zita(fitted) {
    expectNeck(fitted, 300);
    expect(slopeOfNeck(fitted) - slopeOfNeck(fitted.but({ shape: { neckHeight: 'high' } }))).toBeCloseTo(
      -12,
      0,
    );
    const stub = fitted.landmark('neckTopSideRight')[2] - fitted.landmark('neckSideRight')[2];
    // Fairing may lift the base of the neck a little.
    expect(Math.abs(stub - 50)).toBeLessThan(5);
  },
  Anselm: (fitted) => expectNeck(fitted, 440),
  Berit(fitted) {
    // The same tapes without cushions: above the hip she is wider with them, and the seat stands out further.
    const plain = fitted.but({ shape: {} });
    const widthAt = (one: Fitted): number => extent(one.row(-150), 0);
    expect(widthAt(fitted)).toBeGreaterThan(widthAt(plain) + 10);
  },
  Curd(fitted) {
    const plain = fitted.but({ shape: {} });
    const depthAt = (one: Fitted): number => extent(one.row(-60), 1);
    expect(depthAt(fitted)).toBeGreaterThan(depthAt(plain) + 0.5 * 55);
  },
  Finn(fitted) {
    expectNeck(fitted, 455);
    expect(slopeOfNeck(fitted) - slopeOfNeck(fitted.but({ shape: { neckHeight: 'low' } }))).toBeCloseTo(
      12,
      0,
    );
  },
};

/** A belly so far above the high hip: there the front is foremost, and there most is added to the same person without. */
function expectBelly(fitted: Fitted, above: number): void {
  const lineOf = (one: Fitted) => one.line(FRONT, one.v('hip'), one.v('underbust') - 15);
  const asked = fitted.body.levels.find(({ id }) => id === 'highHip')!.z + above;
  expect(Math.abs(foremost(lineOf(fitted)) - asked)).toBeLessThan(30);
  const [withIt, without] = [fitted, fitted.but({ shape: {} })].map((one) => profile(lineOf(one)));
  const heights = Array.from({ length: 190 }, (_, i) => i - 190);
  const added = heights.map((z) => withIt(z) - without(z));
  const most = Math.max(...added);
  expect(most).toBeGreaterThan(15);
  expect(Math.abs(heights[added.indexOf(most)] - asked)).toBeLessThan(30);
}

/** The lower edge of a hanging belly: how far the front steps back within 60 mm of height somewhere below the high hip. */
function expectApron(fitted: Fitted, asked: number): void {
  const step = (one: Fitted): number => {
    const y = profile(one.line(FRONT, -270, one.v('waist')));
    const [low, high] = [one.at(FRONT, -270)[2], one.at(FRONT, one.v('highHip'))[2]];
    const steps: number[] = [];
    for (let z = low + 62; z < high; z += 2) steps.push(y(z) - y(z - 60));
    return Math.max(...steps);
  };
  expect(step(fitted)).toBeGreaterThan(0.6 * asked);
  expect(step(fitted)).toBeGreaterThan(step(fitted.but({ shape: {} })) + 0.4 * asked);
}

function sideLine(fitted: Fitted, side: 'Right' | 'Left', to: keyof Body['landmarks']): number {
  return lengthOf(
    fitted.line(side === 'Right' ? 0 : Math.PI, fitted.v('waist'), fitted.body.landmarks[to].v),
  );
}

/** Down the sides from the waist; and the hip points lie as far apart in height. */
function expectHips(fitted: Fitted, right: number, left: number): void {
  const [down, z] = [0, Math.PI].map((u) => {
    const line = fitted.line(u, fitted.v('waist'), fitted.v('hip'));
    return [lengthOf(line), line[line.length - 1][2]];
  });
  expect(Math.abs(down[0] - right)).toBeLessThan(0.5);
  expect(Math.abs(z[0] - left)).toBeLessThan(0.5);
  expect(Math.abs(down[1] - z[1] - (left - right))).toBeLessThan(0.1 * Math.abs(left - right));
}

/** How far the chest's middle stands beside the hips', and how far the line of the shoulder points is turned. */
function expectTwist(fitted: Fitted, shift: number, degrees: number): void {
  const middle = (level: string): number => middleOf(fitted.row(fitted.v(level)), 0);
  // Fairing may carry the chest a third further: rows of unlike sides swing out where they are smoothed.
  expect(Math.abs(middle('bust') - middle('hip') - shift)).toBeLessThan(0.4 * Math.abs(shift));
  const [right, left] = [fitted.landmark('shoulderPointRight'), fitted.landmark('shoulderPointLeft')];
  const turn = (Math.atan2(right[1] - left[1], right[0] - left[0]) * 180) / Math.PI;
  expect(Math.abs(turn - degrees)).toBeLessThan(2.5);
}

/** Against the same person without: where most is added, and how much of it shows under the same tapes. */
function expectHump(fitted: Fitted, asked: number, below: number): void {
  const { hump: _, ...shape } = fitted.person.shape ?? {};
  const [withIt, without] = [fitted, fitted.but({ shape })].map((one) =>
    profile(one.line(BACK, one.v('waist'), 441)),
  );
  const nape = fitted.landmark('neckBack')[2];
  const heights = Array.from({ length: 240 }, (_, i) => nape - i);
  const added = heights.map((z) => without(z) - withIt(z));
  const most = Math.max(...added);
  expect(most).toBeGreaterThan(0.6 * asked);
  expect(Math.abs(added.indexOf(most) - below)).toBeLessThan(15);
}

/** How far the back leaves the straight from the nape to the waist. */
function curveOfBack(fitted: Fitted): number {
  const line = fitted.line(BACK, 0, fitted.body.landmarks.neckBack.v, 300);
  const [a, b] = [line[0], line[line.length - 1]];
  const length = Math.hypot(b[1] - a[1], b[2] - a[2]);
  return Math.max(
    ...line.map((p) => Math.abs((b[1] - a[1]) * (p[2] - a[2]) - (b[2] - a[2]) * (p[1] - a[1])) / length),
  );
}

/** Row 441 of the chart is the middle of the neck. */
function expectNeck(fitted: Fitted, girth: number): void {
  const row = fitted.row(441, 3000);
  const points = Array.from({ length: 3001 }, (_, i) => [
    ...row.subarray(3 * (i % 3000), 3 * (i % 3000) + 3),
  ]);
  expect(Math.abs(lengthOf(points) - girth)).toBeLessThan(0.5);
}

/** Degrees by which the neck's top falls to the front. */
function slopeOfNeck(fitted: Fitted): number {
  const [back, front] = [fitted.landmark('neckTopBack'), fitted.landmark('neckTopFront')];
  return (Math.atan2(back[2] - front[2], front[1] - back[1]) * 180) / Math.PI;
}

describe.each([
  ['as searched', false],
  ['faired', true],
] as const)('the Lantern Yard Players, %s', (_, fair) => {
  // Searched bodies are seen only while something is dragged: every third person is enough.
  const people = WARDROBE.filter((_, i) => fair || i % 3 === 0);
  it.each(people.map((person) => [person.name, person.about, person] as const))(
    '%s: %s',
    (name, __, person) => {
      const fitted = new Fitted(person, fair);
      const { body } = fitted;
      expect(body.issues.map(({ code }) => code)).not.toContain('not-faired');
      expect(body.issues.map(({ code }) => code)).not.toContain('fit-not-converged');
      for (const tape of body.tapes) {
        if (tape.status === 'estimated' || Math.abs(tape.got - tape.target) <= 0.5) continue;
        const named = body.issues.filter(({ code }) => code === 'tape-conflict').map(({ path }) => path);
        expect(named, tape.id).toContain(`measures.${tape.id}`);
      }
      const isLevel = Object.values(person.measures).every((value) => typeof value === 'number');
      for (const level of isLevel ? GIRTHS : []) {
        const typed = person.measures[`${level}Girth`];
        if (typeof typed !== 'number') continue;
        expect(Math.abs(cauchyGirth(fitted.row(fitted.v(level), 4000)) - typed), level).toBeLessThan(0.5);
      }
      for (let v = -270; v <= 465; v += 5) expect(turnsOnce(fitted.row(v, 360)), `row ${v}`).toBe(true);
      CLAIMS[name]?.(fitted);
    },
  );
});

it('the wardrobe holds people enough, each under a name of their own', () => {
  expect(new Set(WARDROBE.map(({ name }) => name)).size).toBe(WARDROBE.length);
  expect(WARDROBE.length).toBeGreaterThanOrEqual(27);
  for (const name of Object.keys(CLAIMS)) expect(WARDROBE.map((one) => one.name)).toContain(name);
});
