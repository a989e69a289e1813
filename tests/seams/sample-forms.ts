import { verbatim } from '../../src/core/base/index.ts';
import { cubicSplineMoments, evaluateCubicSpline } from '../../src/core/math/index.ts';
import type { ChartSurface } from '../../src/core/mesh/index.ts';
import type { SeamForm } from '../../src/core/seams/index.ts';

export interface SampleForm {
  readonly name: string;
  readonly surface: ChartSurface;
  readonly form: SeamForm;
}

/** Wraps a point function as a chart surface. */
export function surfaceOf(
  vRange: readonly [number, number],
  isMirrorSymmetric: boolean,
  point: (u: number, v: number) => readonly [number, number, number],
): ChartSurface {
  return {
    vRange,
    isMirrorSymmetric,
    evaluate(chart, out = new Float64Array((chart.length / 2) * 3)) {
      for (let i = 0; i < chart.length / 2; i++) out.set(point(chart[2 * i], chart[2 * i + 1]), 3 * i);
      return out;
    },
  };
}

/** Right oval and its mirror image; counter-clockwise from the armpit. */
export function ovalArmholes(
  middle: number,
  halfWidth: number,
  halfHeight: number,
  count = 64,
): SeamForm['armholes'] {
  const right = new Float64Array(2 * count);
  const left = new Float64Array(2 * count);
  for (let i = 0; i < count; i++) {
    const a = (2 * Math.PI * i) / count - Math.PI / 2;
    const j = (count - i) % count;
    right[2 * i] = halfWidth * Math.cos(a);
    right[2 * i + 1] = middle + halfHeight * Math.sin(a);
    left[2 * j] = Math.PI - right[2 * i];
    left[2 * j + 1] = right[2 * i + 1];
  }
  return { right, left };
}

const LEVELS = [
  { id: 'hip', name: verbatim('hip'), v: 100 },
  { id: 'highHip', name: verbatim('high hip'), v: 190 },
  { id: 'waist', name: verbatim('waist'), v: 300 },
  { id: 'underbust', name: verbatim('underbust'), v: 390 },
  { id: 'bust', name: verbatim('bust'), v: 450 },
  { id: 'upperChest', name: verbatim('upper chest'), v: 520 },
];
export const TOP = 700;

function landmarksFor(
  neckV: number,
  shoulderV: number,
  armpitV: number,
  width: number,
): SeamForm['landmarks'] {
  const front = Math.PI / 2;
  const back = -Math.PI / 2;
  const middle = (armpitV + shoulderV) / 2;
  return {
    baseCentreFront: { u: front, v: 0 },
    baseCentreBack: { u: back, v: 0 },
    baseSideRight: { u: 0, v: 0 },
    neckFront: { u: front, v: neckV },
    neckBack: { u: back, v: neckV },
    neckSideRight: { u: 0, v: neckV },
    neckTopFront: { u: front, v: TOP },
    neckTopBack: { u: 3 * front, v: TOP },
    neckTopSideRight: { u: 0, v: TOP },
    shoulderPointRight: { u: 0, v: shoulderV },
    armpitRight: { u: 0, v: armpitV },
    armBreakFrontRight: { u: width, v: middle },
    armBreakBackRight: { u: -width, v: middle },
    bustPointRight: { u: 1.08, v: 450 },
    bladePointRight: { u: -0.95, v: 480 },
  };
}

const armholes = ovalArmholes(565, 0.5, 35);
const form: SeamForm = { levels: LEVELS, landmarks: landmarksFor(660, 600, 530, 0.5), armholes };

/** Circular cylinder: everything about it is known in closed form. */
export const CYLINDER_RADIUS = 130;
export const cylinder: SampleForm = {
  name: 'cylinder',
  surface: surfaceOf([0, TOP], true, (u, v) => [
    CYLINDER_RADIUS * Math.cos(u),
    CYLINDER_RADIUS * Math.sin(u),
    v,
  ]),
  // The shoulder line stands upright here, so the armhole must leave room for lines that lean towards it.
  form: { ...form, armholes: ovalArmholes(565, 0.3, 35) },
};

/** Zone of a sphere, v along the axis. */
export const BARREL_RADIUS = 420;
export const barrel: SampleForm = {
  name: 'barrel',
  surface: surfaceOf([0, TOP], true, (u, v) => {
    const z = v - TOP / 2;
    const r = Math.sqrt(BARREL_RADIUS ** 2 - z * z);
    return [r * Math.cos(u), r * Math.sin(u), z];
  }),
  form,
};

/** Rails by height: half width, front depth, back depth, height at side, front, back; mm. */
const RAIL_V = [0, 100, 200, 300, 390, 450, 520, 560, 600, 630, 660, 700];
const RAILS = {
  width: [160, 175, 165, 128, 138, 148, 158, 168, 176, 118, 66, 60],
  front: [95, 105, 100, 88, 95, 100, 95, 88, 78, 66, 58, 56],
  back: [115, 125, 105, 80, 88, 95, 98, 98, 92, 76, 62, 58],
  sideZ: [0, 100, 200, 300, 390, 450, 520, 566, 616, 640, 666, 706],
  frontZ: [0, 100, 200, 300, 390, 450, 520, 550, 576, 590, 606, 640],
  backZ: [0, 100, 200, 300, 390, 450, 520, 562, 606, 634, 664, 706],
};

function torsoPoint(lean: number): (u: number, v: number) => [number, number, number] {
  const read = Object.fromEntries(
    Object.entries(RAILS).map(([key, values]) => {
      const moments = cubicSplineMoments(RAIL_V, values);
      return [key, (v: number) => evaluateCubicSpline(RAIL_V, values, moments, v)];
    }),
  ) as Record<keyof typeof RAILS, (v: number) => number>;
  return (u, v) => {
    const s = Math.sin(u);
    const c = Math.cos(u);
    const n = 2.3;
    const rho = (Math.abs(c) ** n + Math.abs(s) ** n) ** (-1 / n);
    const depth = s >= 0 ? read.front(v) : read.back(v);
    const bust =
      34 * Math.exp(-((Math.abs(Math.abs(u - Math.PI / 2) - 0.49) / 0.33) ** 2 + ((v - 448) / 52) ** 2));
    const base = read.sideZ(v);
    const rise = s >= 0 ? read.frontZ(v) - base : read.backZ(v) - base;
    const x = read.width(v) * rho * c;
    return [
      x + lean * (v / TOP) * (1 + 0.1 * s),
      depth * rho * s + (s > 0 ? bust : 0),
      base + rise * s * s + 0.1 * lean * c,
    ];
  };
}

/** Torso-like: tapered superellipses, breasts, shoulders that close over to a neck. */
export const torso: SampleForm = { name: 'torso', surface: surfaceOf([0, TOP], true, torsoPoint(0)), form };

/** The same leaning to one side: not mirror symmetric. */
export const leaningTorso: SampleForm = {
  name: 'leaning torso',
  surface: surfaceOf([0, TOP], false, torsoPoint(18)),
  form,
};
