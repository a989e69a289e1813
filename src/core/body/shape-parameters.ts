import type { ChoiceBump } from './choice-bumps.ts';

/** One unknown of the fit with its Gaussian prior. mm unless the name says ratio or angle. */
export interface Parameter {
  readonly id: ParameterId;
  readonly mean: number;
  readonly spread: number;
}

const IDS = [
  'aHip',
  'aHighHip',
  'aWaist',
  'aUnderbust',
  'aBust',
  'aUpperChest',
  'armBulge',
  'xShoulder',
  'aNeck',
  'dHip',
  'dHighHip',
  'dWaist',
  'dUnderbust',
  'dBust',
  'dUpperChest',
  'dNeck',
  'yHip',
  'yHighHip',
  'yUnderbust',
  'yBust',
  'yUpperChest',
  'yNeck',
  'zHip',
  'zHighHip',
  'zUnderbust',
  'zBust',
  'zUpperChest',
  'zShoulder',
  'zNeckSide',
  'zNape',
  'zNeckFront',
  'zBase',
  'roundBack',
  'fullFront',
  'bustHeight',
  'bustAngle',
  'kHip',
  'kHighHip',
  'kWaist',
  'kUnderbust',
  'kBust',
  'armYaw',
  'armFront',
  'armBack',
  'neckSize',
  'shoulderX',
  'shoulderZ',
  'bustHeightSkew',
  'bustAngleSkew',
  'bustLevelSkew',
  'hipZ',
  'armpitZ',
] as const;
/** The last seven are half of (right − left) and stay 0 on a symmetric body. */
export type ParameterId = (typeof IDS)[number];
export type SkewId =
  | 'shoulderX'
  | 'shoulderZ'
  | 'bustHeightSkew'
  | 'bustAngleSkew'
  | 'bustLevelSkew'
  | 'hipZ'
  | 'armpitZ';
export const PARAMETER_IDS: readonly ParameterId[] = IDS;
export const SKEW_IDS: readonly ParameterId[] = IDS.slice(-7);

export type ParameterValues = Record<ParameterId, number>;

/** What the tape cannot tell, as numbers; see `shape-choices.ts`. */
export interface ShapeNumbers {
  readonly seat: number;
  readonly blade: number;
  readonly shoulderForm: number;
  readonly bustReach: number;
  readonly bustSide: number;
  readonly bustTurn: number;
  readonly bustFullness: number;
  readonly bustFullnessBelow: number;
  readonly bustRoundness: number;
  readonly collarBone: number;
  /** How far the widest point of a row lies behind its middle, mm. */
  readonly sideBack: Readonly<
    Record<'hip' | 'highHip' | 'waist' | 'underbust' | 'bust' | 'upperChest' | 'neck', number>
  >;
  readonly neckTilt: number;
  readonly neckStub: number;
  /** How far the neck stands forward of its usual place, mm. */
  readonly neckForward: number;
  /** A hump of the upper back: how far it stands out, and how far its top lies below the nape, mm. */
  readonly hump: number;
  readonly humpBelow: number;
  /** Of its usual height, each breast's; 1 = all of it. */
  readonly breasts: { readonly right: number; readonly left: number };
  /** How far the breasts hang below their fold, mm. */
  readonly bustDrop: number;
  /** How far the chest stands to the right of the hips, mm, and how far the shoulders are turned against them, radians. */
  readonly trunkShift: number;
  readonly trunkTurn: number;
  readonly bumps: readonly ChoiceBump[];
}
