import { cubicSplineMoments, evaluateCubicSpline } from '../math/index.ts';

type Vector = readonly [number, number, number];

/** One section of an arm: an oval in the plane of `outer` and `front`. mm. */
export interface ArmFrame {
  readonly centre: Vector;
  /** Unit vectors: away from the trunk, and to the front. */
  readonly outer: Vector;
  readonly front: Vector;
  readonly halfOuter: number;
  readonly halfFront: number;
  /** Share of the armhole's own outline in this section: 1 at the plate, 0 below the cap. */
  readonly plateShare: number;
}

export interface ArmMeasures {
  readonly upperArmGirth: number;
  readonly elbowGirth: number;
  readonly wristGirth: number;
  readonly shoulderToElbow: number;
  readonly elbowToWrist: number;
}

/** Where the plate meets the trunk. */
export interface ArmRoot {
  readonly armpit: Vector;
  readonly shoulderPoint: Vector;
  /** Unit normal of the plate, pointing away from the trunk. */
  readonly normal: Vector;
  /** Half of the armhole's width, front to back. */
  readonly halfFront: number;
}

/** The cap turns this far from the plate to the hanging arm; less than 90° leaves the arm a little off the body. */
const CAP_TURN = (84 * Math.PI) / 180;
/** The armpit's edge of the sections keeps clear of the pivot, mm. */
const PIVOT_CLEARANCE = 12;
/** Bend at the elbow, forward. */
const ELBOW_BEND = (16 * Math.PI) / 180;
const ELBOW_BEND_REACH = 45;
export const CAP_ROWS = 14;
export const UPPER_ROWS = 16;
export const FOREARM_ROWS = 18;
/** Row whose girth is the upper arm's: just below the cap. */
export const UPPER_ARM_ROW = CAP_ROWS + 4;
export const ELBOW_ROW = CAP_ROWS + UPPER_ROWS;
export const WRIST_ROW = ELBOW_ROW + FOREARM_ROWS;

/** Front-to-back over side-to-side of the sections (common practice, no source). */
const ASPECT = { cap: 1.05, upperArm: 1.08, elbow: 1.02, forearm: 1.1, wrist: 1.35 };

/**
 * Sections of a hanging arm, from the plate to the wrist: a fan about the armpit makes the shoulder cap, then the arm
 * runs down, bending forward at the elbow. The outer line from the shoulder point is as long as the tapes say.
 * Returns null when the upper arm is shorter than the cap needs.
 */
export function makeArmFrames(root: ArmRoot, measures: ArmMeasures): ArmFrame[] | null {
  const frames = capFrames(root, measures);
  const last = frames[frames.length - 1];
  const capLength = outerLength(frames);
  const straight = measures.shoulderToElbow - capLength;
  if (straight < 60) return null;
  const axis = normalise(cross(last.front, last.outer));
  const profile = profileBelowCap(last, straight, measures);
  const total = straight + measures.elbowToWrist;
  const at = (s: number): ArmFrame => {
    const turn = ELBOW_BEND * smooth((s - straight + ELBOW_BEND_REACH) / (2 * ELBOW_BEND_REACH));
    const [halfOuter, halfFront] = profile(s);
    const shift = bentShift(s, straight);
    // The outer line is straight in side view of the bend; the section hangs inwards from it.
    const onOuter = add(
      add(add(last.centre, scale(last.outer, last.halfOuter)), scale(axis, shift.along)),
      scale(last.front, shift.forward),
    );
    const front = normalise(add(scale(last.front, Math.cos(turn)), scale(axis, -Math.sin(turn))));
    return {
      centre: add(onOuter, scale(last.outer, -halfOuter)),
      outer: last.outer,
      front,
      halfOuter,
      halfFront,
      plateShare: 0,
    };
  };
  for (let i = 1; i <= UPPER_ROWS; i++) frames.push(at((straight * i) / UPPER_ROWS));
  for (let i = 1; i <= FOREARM_ROWS; i++) frames.push(at(straight + ((total - straight) * i) / FOREARM_ROWS));
  return frames;
}

function capFrames(root: ArmRoot, measures: ArmMeasures): ArmFrame[] {
  const rise = subtract(root.shoulderPoint, root.armpit);
  const height = Math.hypot(...rise);
  const up = scale(rise, 1 / height);
  const front = normalise(cross(up, root.normal));
  const [capOuter, capFront] = halvesOf(1.04 * measures.upperArmGirth, ASPECT.cap);
  const frames: ArmFrame[] = [];
  for (let i = 0; i <= CAP_ROWS; i++) {
    const share = i / CAP_ROWS;
    const blend = smooth(share);
    const turn = CAP_TURN * share;
    const outer = add(scale(up, Math.cos(turn)), scale(root.normal, Math.sin(turn)));
    const halfOuter = 0.5 * height + (capOuter - 0.5 * height) * blend;
    frames.push({
      centre: add(root.armpit, scale(outer, PIVOT_CLEARANCE * share + halfOuter)),
      outer,
      front,
      halfOuter,
      halfFront: root.halfFront + (capFront - root.halfFront) * blend,
      plateShare: 1 - blend,
    });
  }
  return frames;
}

/** Half axes by distance below the cap: splines through the girths, so that the tapes read what was typed. */
function profileBelowCap(
  cap: ArmFrame,
  straight: number,
  m: ArmMeasures,
): (s: number) => readonly [number, number] {
  const upperArmAt = (straight * (UPPER_ARM_ROW - CAP_ROWS)) / UPPER_ROWS;
  const s = [0, upperArmAt, straight, straight + 0.28 * m.elbowToWrist, straight + m.elbowToWrist];
  const forearm = 0.97 * m.elbowGirth + 0.01 * m.upperArmGirth;
  const halves = [
    [cap.halfOuter, cap.halfFront],
    halvesOf(m.upperArmGirth, ASPECT.upperArm),
    halvesOf(m.elbowGirth, ASPECT.elbow),
    halvesOf(forearm, ASPECT.forearm),
    halvesOf(m.wristGirth, ASPECT.wrist),
  ];
  const [outer, front] = [0, 1].map((k) => halves.map((h) => h[k]));
  const [outerMoments, frontMoments] = [cubicSplineMoments(s, outer), cubicSplineMoments(s, front)];
  return (t) => [
    evaluateCubicSpline(s, outer, outerMoments, t),
    evaluateCubicSpline(s, front, frontMoments, t),
  ];
}

/** The outer line in the plane of the bend, by arc length: along the axis and forward. */
function bentShift(s: number, elbow: number): { along: number; forward: number } {
  const steps = 64;
  let along = 0;
  let forward = 0;
  for (let i = 0; i < steps; i++) {
    const t = (s * (i + 0.5)) / steps;
    const turn = ELBOW_BEND * smooth((t - elbow + ELBOW_BEND_REACH) / (2 * ELBOW_BEND_REACH));
    along += (Math.cos(turn) * s) / steps;
    forward += (Math.sin(turn) * s) / steps;
  }
  return { along, forward };
}

/** Half axes of the ellipse of this girth; perimeter by Ramanujan (1914), second approximation, good to 1e-7 here. */
function halvesOf(girth: number, aspect: number): readonly [outer: number, front: number] {
  const h = ((1 - aspect) / (1 + aspect)) ** 2;
  const unit = Math.PI * (1 + aspect) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
  return [girth / unit, (aspect * girth) / unit];
}

function outerLength(frames: readonly ArmFrame[]): number {
  let sum = 0;
  for (let i = 1; i < frames.length; i++) {
    const [a, b] = [frames[i - 1], frames[i]].map((f) => add(f.centre, scale(f.outer, f.halfOuter)));
    sum += Math.hypot(...subtract(b, a));
  }
  return sum;
}

function smooth(t: number): number {
  const x = Math.min(1, Math.max(0, t));
  return x * x * x * (x * (6 * x - 15) + 10);
}

function add(a: Vector, b: Vector): Vector {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}

function subtract(a: Vector, b: Vector): Vector {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function scale(a: Vector, k: number): Vector {
  return [k * a[0], k * a[1], k * a[2]];
}

function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function normalise(a: Vector): Vector {
  return scale(a, 1 / Math.hypot(...a));
}
