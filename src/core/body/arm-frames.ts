import {
  add,
  clamp,
  cross,
  cubicSplineMoments,
  distance,
  evaluateCubicSpline,
  scale,
  subtract,
  type Vector,
} from '../math/index.ts';

/** One section of an arm: an oval in the plane of `outer` and `front`. mm. */
export interface ArmFrame {
  readonly centre: Vector;
  /** Unit vectors: away from the trunk, and to the front. */
  readonly outer: Vector;
  readonly front: Vector;
  readonly halfOuter: number;
  readonly halfFront: number;
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
  /** How far its middle lies before the line from armpit to shoulder point. */
  readonly ahead: number;
}

/** The cap turns this far from the plate to the hanging arm; less than 90° leaves the arm a little off the body. */
const CAP_TURN = (70 * Math.PI) / 180;
/** The foot's inner end lies so far out and down from the armpit, mm. */
const ARMPIT_CLEARANCE = 6;
const FOOT_DROP = 45;
/** The cap leaves the plate leaning down by this at the outer and at the inner line. */
const OUTER_LEAN = (25 * Math.PI) / 180;
const INNER_LEAN = (60 * Math.PI) / 180;
/** Handles of a cap line over the distance of its ends; about 0.39 follows a quarter circle. */
const HANDLE_SHARE = 0.38;
/** Bend at the elbow, forward, spread over this length up and down: a sharp one strains a sleeve without a dart. */
const ELBOW_BEND = (10 * Math.PI) / 180;
const ELBOW_BEND_REACH = 90;
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
 * Sections of a hanging arm, from the foot of the shoulder cap (see `makeCapLine`) to the wrist, bending forward at the
 * elbow. The outer line from the shoulder point is as long as the tapes say.
 * Returns null when the upper arm is shorter than the cap needs.
 */
export function makeArmFrames(root: ArmRoot, measures: ArmMeasures): ArmFrame[] | null {
  const last = footOfCap(root, measures);
  const frames = [last];
  const capLine = makeCapLine(root, last, root.shoulderPoint, 0);
  const capLength = measurePolyline3(capLine);
  const straight = measures.shoulderToElbow - capLength;
  if (straight < 60) return null;
  const axis = scaleToUnit(cross(last.front, last.outer));
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
    const front = scaleToUnit(add(scale(last.front, Math.cos(turn)), scale(axis, -Math.sin(turn))));
    return {
      centre: add(onOuter, scale(last.outer, -halfOuter)),
      outer: last.outer,
      front,
      halfOuter,
      halfFront,
    };
  };
  for (let i = 1; i <= UPPER_ROWS; i++) frames.push(at((straight * i) / UPPER_ROWS));
  for (let i = 1; i <= FOREARM_ROWS; i++) frames.push(at(straight + ((total - straight) * i) / FOREARM_ROWS));
  return frames;
}

/** The section where the arm hangs, just below the cap. */
function footOfCap(root: ArmRoot, measures: ArmMeasures): ArmFrame {
  const up = scaleToUnit(subtract(root.shoulderPoint, root.armpit));
  const front = scaleToUnit(cross(up, root.normal));
  const [halfOuter, halfFront] = halvesOf(1.04 * measures.upperArmGirth, ASPECT.cap);
  const outer = add(scale(up, Math.cos(CAP_TURN)), scale(root.normal, Math.sin(CAP_TURN)));
  const drop = scale(scaleToUnit(cross(front, outer)), FOOT_DROP);
  // Under the armhole's middle: beside it, the whole cap would be sheared.
  const below = add(root.armpit, scale(front, root.ahead));
  const centre = add(below, add(scale(outer, ARMPIT_CLEARANCE + halfOuter), drop));
  return { centre, outer, front, halfOuter, halfFront };
}

/**
 * One line of the cap, CAP_ROWS + 1 points from `start` on the armhole to the foot's section at `angle`: a cubic that
 * leaves the plate leaning down, most at the inner line, and arrives along the arm. Were it to leave at right angles, the
 * whole turn would lie in the cloth as curvature (Gauss–Bonnet); what leans is a plain fold at the armhole's seam.
 */
export function makeCapLine(root: ArmRoot, foot: ArmFrame, start: Vector, angle: number): Vector[] {
  const up = scaleToUnit(subtract(root.shoulderPoint, root.armpit));
  const axis = scaleToUnit(cross(foot.front, foot.outer));
  const inner = 0.5 - 0.5 * Math.cos(angle);
  const lean = OUTER_LEAN + (INNER_LEAN - OUTER_LEAN) * inner;
  const leaving = add(scale(root.normal, Math.cos(lean)), scale(up, -Math.sin(lean)));
  const end = pointOnSection(foot, angle);
  const handle = HANDLE_SHARE * distance(end, start);
  const [near, far] = [add(start, scale(leaving, handle)), add(end, scale(axis, -handle))];
  return Array.from({ length: CAP_ROWS + 1 }, (_, i) => {
    const t = i / CAP_ROWS;
    const s = 1 - t;
    const upper = add(scale(start, s * s * s), scale(near, 3 * s * s * t));
    return add(upper, add(scale(far, 3 * s * t * t), scale(end, t * t * t)));
  });
}

/** `angle` runs from the outer line to the back. */
export function pointOnSection(frame: ArmFrame, angle: number): Vector {
  const across = scale(frame.outer, frame.halfOuter * Math.cos(angle));
  return add(frame.centre, add(across, scale(frame.front, -frame.halfFront * Math.sin(angle))));
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

function measurePolyline3(line: readonly Vector[]): number {
  return line.slice(1).reduce((sum, p, i) => sum + distance(p, line[i]), 0);
}

function smooth(t: number): number {
  const x = clamp(t, 0, 1);
  return x * x * x * (x * (6 * x - 15) + 10);
}

/** By the reciprocal of the length, which differs from `normalise` in the last digit. */
function scaleToUnit(a: Vector): Vector {
  return scale(a, 1 / Math.hypot(...a));
}
