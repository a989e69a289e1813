import type { ShapeCategoryId } from './shape-questions.ts';

/** What the questions of shape are about, and which, in the order they are asked. */
export const SHAPE_PARTS = {
  posture: ['upperBack', 'lean', 'sway', 'blade', 'backRolls', 'posture', 'hump', 'humpBelow'],
  belly: ['belly', 'bellyHeight', 'apron', 'pregnancy', 'seat'],
  bust: ['bustFullness', 'bustSpread', 'breastRight', 'breastLeft', 'breastLevels', 'bustDrop', 'bustGap'],
  neck: ['shoulderForm', 'collarBone', 'neckForward', 'neckHeight', 'neckTilt'],
  sections: ['bustSection', 'waistSection', 'highHipSection', 'hipSection'],
  sides: ['trunkShift', 'trunkTurn'],
  padding: ['hipPadding', 'seatPadding', 'bellyPadding'],
} as const satisfies Readonly<Record<string, readonly ShapeCategoryId[]>>;

export type ShapePart = keyof typeof SHAPE_PARTS;
export const SHAPE_PART_IDS = Object.keys(SHAPE_PARTS) as ShapePart[];
