import { failure, type Issue, type Phrase, type Result, success } from '../base/index.ts';
import { type Body, type BodyInput, fitBody, MEASURES, surfaceOfBody } from '../body/index.ts';
import { isInsidePolygon } from '../math/index.ts';
import { frameAt, gapBetween } from './gap-between.ts';
import { phrase } from './phrases.ts';
import { moveToFront, standOver } from './stand-over.ts';

/** One of those whom the core serves. */
export interface CoreBody {
  readonly name: string;
  readonly input: BodyInput;
  readonly body: Body;
}

/** A measure of the core beside those whom it serves, mm. */
export interface CoreTape {
  readonly id: string;
  readonly name: Phrase;
  /** In the order of the bodies; of two sides the smaller. */
  readonly people: readonly number[];
  readonly core: number;
  /** How much smaller the core is than the smallest of them; negative where it is larger. */
  readonly under: number;
}

export interface Core {
  /** Measures that make it; a project of them is made like any other. */
  readonly input: BodyInput;
  readonly body: Body;
  /** How far it sticks out of one of the bodies at most, mm; 0 where it lies inside all. */
  readonly sticksOut: number;
  /** How far to the front each body stands round it, mm. */
  readonly toFront: readonly number[];
  readonly rounds: number;
  /** Girths and lengths that were taken over all bodies. */
  readonly tapes: readonly CoreTape[];
}

/** Told above this, refused above that, mm; ours: cloth alone is thinner than the first, filling hides no more than the second. */
const TOLD = 1;
const REFUSED = 4;
/** A girth or length of the core that is so much smaller than all people's is told, mm; ours: a layer of wadding round a neck takes 50. */
const TOLD_UNDER = 10;
/** Looked for no longer once it is nearer than this, mm. */
const ENOUGH = 0.5;
const ROUNDS = 10;
/** Of what sticks out is taken away at once, so that rounds do not swing. */
const SHARE = 0.8;
const COLUMNS = 48;
const ROW_STEP = 12;

/** What is taken of each measure over all bodies; what is not here is left to the fit. */
const TAKEN: Readonly<Record<string, 'least' | 'most'>> = {
  ...Object.fromEntries(
    ['bust', 'waist', 'hip', 'upperChest', 'underbust', 'highHip', 'neckBase', 'neck'].map((level) => [
      `${level}Girth`,
      'least',
    ]),
  ),
  ...Object.fromEntries(
    ['bust', 'underbust', 'waist', 'highHip', 'hip'].flatMap((level) => [
      [`${level}Width`, 'least'],
      [`${level}Depth`, 'least'],
    ]),
  ),
  backWaistLength: 'least',
  shoulderLength: 'least',
  shoulderDrop: 'most',
  hipToBase: 'least',
  waistToHip: 'least',
  waistToHighHip: 'least',
  acrossBack: 'least',
  acrossFront: 'least',
};

/**
 * The largest form found by measures that lies inside all bodies, their waists at one height and each moved to
 * front or back as it holds the core best: it begins with the least of every measure, and
 * what sticks out of a body is taken away at its level until nothing does. A body as the pipeline makes any. Fails with fewer
 * than two bodies, and where the bodies differ so much that none is found inside them, with the worst place. A fit a round.
 */
export function findCore(bodies: readonly CoreBody[]): Result<Core> {
  if (bodies.length < 2) return failure([tooFew(bodies.length)]);
  let input = startInput(bodies);
  let best: (Omit<Core, 'tapes'> & { readonly worst: Worst }) | undefined;
  let warm: Body | undefined;
  for (let round = 1; round <= ROUNDS; round++) {
    const fitted = fitBody(input, warm, { fair: true });
    if (!fitted.ok) {
      if (best) break;
      return failure(fitted.issues);
    }
    warm = fitted.value;
    const found = findSticking(fitted.value, bodies);
    if (!best || found.worst.by < best.sticksOut) {
      const sticksOut = Math.max(0, found.worst.by);
      const { worst, toFront } = found;
      best = { input, body: fitted.value, sticksOut, toFront, rounds: round, worst };
    }
    if (found.worst.by <= ENOUGH) break;
    input = takeAway(input, found);
  }
  if (!best) return failure([tooFew(0)]);
  const { worst, ...found } = best;
  const core = { ...found, tapes: tapesOf(best.body, bodies) };
  if (core.sticksOut > REFUSED) return failure([sticking(worst, true)]);
  const issues = core.sticksOut > TOLD ? [sticking(worst, false)] : [];
  return success(core, [...issues, ...tellUnder(core.tapes)]);
}

/** Girths and lengths, as widths and depths go with the girths. */
function tapesOf(core: Body, bodies: readonly CoreBody[]): CoreTape[] {
  return MEASURES.flatMap(({ id, name }) => {
    if (TAKEN[id] !== 'least' || /(Width|Depth)$/.test(id)) return [];
    const [own, ...people] = [core, ...bodies.map(({ body }) => body)].map((body) =>
      Math.min(...readMeasure(body, id)),
    );
    if (![own, ...people].every(Number.isFinite)) return [];
    return [{ id, name, people, core: own, under: Math.min(...people) - own }];
  });
}

function tellUnder(tapes: readonly CoreTape[]): Issue[] {
  const told = tapes.filter(({ under }) => under > TOLD_UNDER).toSorted((a, b) => b.under - a.under);
  if (told.length === 0) return [];
  const message = phrase('core.smaller', { tapes: told.map(({ name, under }) => ({ name, under })) });
  const [{ under: measured }] = told;
  return [
    {
      code: 'core-smaller',
      path: 'body.measures',
      message,
      severity: 'warning',
      measured,
      limit: TOLD_UNDER,
    },
  ];
}

function startInput(bodies: readonly CoreBody[]): BodyInput {
  const figure = bodies.some(({ input }) => input.figure === 'chest') ? 'chest' : 'bust';
  const measures: Record<string, number> = {};
  for (const [id, how] of Object.entries(TAKEN)) {
    const values = bodies.flatMap(({ body }) => readMeasure(body, id));
    if (values.length === 0) continue;
    measures[id] = how === 'least' ? Math.min(...values) : Math.max(...values);
  }
  const [first, ...others] = bodies.map(({ input }) => input.shape ?? {});
  const shape = Object.fromEntries(
    Object.entries(first).filter(([key, value]) => others.every((other) => other[key] === value)),
  );
  return { figure, measures, shape };
}

/** Tapes of that name, on both sides; sizes of a level from its section. */
function readMeasure(body: Body, id: string): number[] {
  const [, level, size] = /^(.*)(Girth|Width|Depth)$/.exec(id) ?? [];
  const section = level && (body.sections as Readonly<Record<string, Body['sections']['hip']>>)[level];
  if (section) return [section[size.toLowerCase() as 'girth' | 'width' | 'depth']];
  return body.tapes.filter((tape) => tape.id === id || tape.id.startsWith(`${id}.`)).map(({ got }) => got);
}

interface Worst {
  readonly by: number;
  readonly name: string;
  readonly z: number;
}

/** Where the bodies stand, and how far the core sticks out, mm: at each level to the sides, front and back; over the shoulders; at the neck. */
interface Sticking {
  readonly worst: Worst;
  readonly toFront: readonly number[];
  readonly levels: Readonly<
    Record<string, { readonly side: number; readonly front: number; readonly back: number }>
  >;
  readonly shoulders: number;
  readonly neck: number;
}

function findSticking(core: Body, bodies: readonly CoreBody[]): Sticking {
  const surface = surfaceOfBody(core);
  const chart = pointsOf(core);
  const frames = Array.from({ length: chart.length / 2 }, (_, i) =>
    frameAt(surface, chart[2 * i], chart[2 * i + 1]),
  );
  const out = new Float64Array(frames.length);
  let worst: Worst = { by: 0, name: '', z: 0 };
  const toFront: number[] = [];
  for (const { name, body } of bodies) {
    const own = surfaceOfBody(body);
    const dy = standOver(surface, own);
    toFront.push(dy);
    const other = moveToFront(own, dy);
    const ends = [other.vRange[0], other.vRange[1]].map((v) => heightsAt(other, v));
    const gaps = gapBetween(surface, other, chart);
    for (const [i, { point }] of frames.entries()) {
      if (point[2] < Math.max(...ends[0]) || point[2] > Math.min(...ends[1])) continue;
      out[i] = Math.max(out[i], -gaps[i]);
      if (-gaps[i] > worst.by) worst = { by: -gaps[i], name, z: point[2] };
    }
  }
  return { worst, toFront, ...byZone(core, chart, frames, out) };
}

function byZone(
  core: Body,
  chart: Float64Array,
  frames: readonly ReturnType<typeof frameAt>[],
  out: Float64Array,
): Omit<Sticking, 'worst' | 'toFront'> {
  const levels = Object.fromEntries(core.levels.map(({ id }) => [id, { side: 0, front: 0, back: 0 }]));
  const highest = core.levels[core.levels.length - 1].v + ROW_STEP;
  const neckV = Math.min(core.landmarks.neckFront.v, core.landmarks.neckBack.v);
  let [shoulders, neck] = [0, 0];
  for (const [i, { normal }] of frames.entries()) {
    const v = chart[2 * i + 1];
    if (v >= neckV) neck = Math.max(neck, out[i]);
    else if (v > highest) shoulders = Math.max(shoulders, out[i]);
    else {
      const where = Math.abs(normal[0]) > Math.SQRT1_2 ? 'side' : normal[1] > 0 ? 'front' : 'back';
      for (const { id } of levelsBeside(core, v)) levels[id][where] = Math.max(levels[id][where], out[i]);
    }
  }
  return { levels, shoulders, neck };
}

/** The level at that height; both neighbours about the middle between them, where either alone changes little. */
function levelsBeside({ levels }: Body, v: number): Body['levels'] {
  const [nearest, second] = levels.toSorted((a, b) => Math.abs(a.v - v) - Math.abs(b.v - v));
  const isBetween = (v - nearest.v) * (v - second.v) < 0;
  return isBetween && Math.abs(v - nearest.v) > 0.25 * Math.abs(second.v - nearest.v)
    ? [nearest, second]
    : [nearest];
}

/** All over the body but in its armholes. */
function pointsOf({ shape, armholes }: Body): Float64Array {
  const [low, high] = shape.vRange;
  const rows = Math.round((high - low) / ROW_STEP);
  const points: number[] = [];
  for (let i = 0; i <= rows; i++) {
    for (let j = 0; j < COLUMNS; j++) {
      const u = -Math.PI / 2 + (2 * Math.PI * j) / COLUMNS;
      const v = low + ((high - low) * i) / rows;
      const isIn = [armholes.right, armholes.left].some((loop) =>
        [-1, 0, 1].some((turn) => isInsidePolygon(loop, u + 2 * Math.PI * turn, v)),
      );
      if (!isIn) points.push(u, v);
    }
  }
  return Float64Array.from(points);
}

function heightsAt(surface: ReturnType<typeof surfaceOfBody>, v: number): number[] {
  const chart = Float64Array.from({ length: 2 * COLUMNS }, (_, i) => {
    return i % 2 === 0 ? (2 * Math.PI * (i >> 1)) / COLUMNS : v;
  });
  return [...surface.evaluate(chart).filter((_, i) => i % 3 === 2)];
}

function takeAway({ measures, ...input }: BodyInput, { levels, shoulders, neck }: Sticking): BodyInput {
  const next: Record<string, number> = { ...(measures as Record<string, number>) };
  const lessen = (id: string, by: number): void => {
    if (next[id] !== undefined) next[id] -= SHARE * by;
  };
  for (const [id, { side, front, back }] of Object.entries(levels)) {
    lessen(`${id}Width`, 2 * side);
    lessen(`${id}Depth`, front + back);
    // Half way between a box, 2 (w + d) round, and a sliver.
    lessen(`${id}Girth`, (Math.PI / 2) * (2 * side + front + back));
  }
  lessen('backWaistLength', shoulders);
  lessen('acrossBack', shoulders);
  lessen('acrossFront', shoulders);
  lessen('upperChestGirth', Math.PI * shoulders);
  lessen('shoulderLength', 0.5 * shoulders);
  lessen('neckBaseGirth', Math.PI * neck);
  lessen('neckGirth', Math.PI * neck);
  return { ...input, measures: next };
}

function tooFew(count: number): Issue {
  const message = phrase('core.too-few', { count });
  return { code: 'core-too-few', path: 'bodies', message, severity: 'error', measured: count, limit: 2 };
}

function sticking({ by, name, z }: Worst, isRefused: boolean): Issue {
  const limit = isRefused ? REFUSED : TOLD;
  const message = phrase('core.sticks-out', { name, by, height: z, limit, isRefused });
  const severity = isRefused ? 'error' : 'warning';
  return { code: 'core-sticks-out', path: 'body.measures', message, severity, measured: by, limit };
}
