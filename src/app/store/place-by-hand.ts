import {
  type KeptPlace,
  type LaidPiece,
  type LayRules,
  placePiece,
  snapPlace,
  stepPlace,
} from '../../core/laying/index.ts';
import { boundsOfPolyline } from '../../core/math/index.ts';

/** Two angles nearer than this are one, radians. */
const SAME = 1e-6;

/** Places as the project keeps them, the changed one among them. */
export function keptPlaces(placed: readonly LaidPiece[], changed?: LaidPiece): KeptPlace[] {
  return placed.map((place): KeptPlace => {
    const { piece, x, y, angle, sheet, isHeld } = place.piece === changed?.piece ? changed : place;
    return { piece, x, y, angle, ...(sheet > 0 && { sheet }), ...(isHeld && { isHeld }) };
  });
}

/** Moved by so many mm along and across, to where the print is met. */
export function moveBy(rules: LayRules, place: LaidPiece, dx: number, dy: number): LaidPiece {
  return snapPlace(rules, { ...place, x: place.x + dx, y: place.y + dy });
}

/** One step of a key: mm, or to the next place where the print is met. */
export function stepBy(rules: LayRules, place: LaidPiece, dx: number, dy: number, mm: number): LaidPiece {
  return stepPlace(rules, place, dx, dy, mm);
}

/** Turned about its own middle to another angle, radians. */
export function turnTo(rules: LayRules, place: LaidPiece, angle: number): LaidPiece {
  const [x, y] = middleOf(rules, place);
  const [turnedX, turnedY] = middleOf(rules, { ...place, angle });
  return snapPlace(rules, { ...place, angle, x: place.x + x - turnedX, y: place.y + y - turnedY });
}

/** How a piece may lie: its whole turns (mostly 0 and half), and how far off them, radians. */
export function turnsByHand(
  { ways }: LayRules,
  { piece, angle }: LaidPiece,
): {
  readonly straight: readonly number[];
  readonly most: number;
  readonly now: number;
  readonly off: number;
} {
  const angles = (ways.get(piece) ?? []).map((way) => way.angle);
  const straight = angles.filter((a) => isWhole(a));
  const most = Math.max(0, ...angles.map(offWhole).map(Math.abs));
  const now = straight.reduce((a, b) => (gap(a, angle) <= gap(b, angle) ? a : b), straight[0] ?? angle);
  const turned = angle - now;
  return { straight, most, now, off: Math.atan2(Math.sin(turned), Math.cos(turned)) };
}

/** The next of its whole turns; itself where it has one only. */
export function turnOn(rules: LayRules, place: LaidPiece): LaidPiece {
  const { straight, now, off } = turnsByHand(rules, place);
  if (straight.length < 2) return place;
  const next = straight[(straight.indexOf(now) + 1) % straight.length];
  return turnTo(rules, place, next + off);
}

/** Corners of a piece as it lies: from the cut end and from the lower selvedge, mm. */
export function boxOf(rules: LayRules, place: LaidPiece) {
  return boundsOfPolyline(placePiece(rules.outlines.get(place.piece) ?? new Float64Array(2), place));
}

function middleOf(rules: LayRules, place: LaidPiece): readonly [number, number] {
  const { minX, minY, maxX, maxY } = boxOf(rules, place);
  return [(minX + maxX) / 2, (minY + maxY) / 2];
}

const QUARTER = Math.PI / 2;
const offWhole = (angle: number): number => angle - QUARTER * Math.round(angle / QUARTER);
const isWhole = (angle: number): boolean => Math.abs(offWhole(angle)) < SAME;
const gap = (a: number, b: number): number => Math.abs(Math.sin((a - b) / 2));
