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
  'lean',
  'curve',
  'wall',
  'floor',
  'frontShift',
  'frontRise',
  'frontYaw',
  'frontScale',
  'sideShift',
  'sideRise',
  'sideYaw',
  'sideScale',
  'cloth',
  'shoulderX',
  'shoulderZ',
  'bustHeightSkew',
  'bustAngleSkew',
  'bustLevelSkew',
  'hipZ',
  'armpitZ',
] as const;
/**
 * The last seven are half of (right − left) and stay 0 on a symmetric body. `lean` and `curve` are what the y of several rows have
 * in common; `wall` is the wall's y and `floor` the waist's height over the floor: sought where something was read from there.
 */
export type ParameterId = (typeof IDS)[number];
/** Where the body stood: of no part of it. */
export const STANCE_IDS = ['wall', 'floor'] as const satisfies readonly ParameterId[];
export type StanceId = (typeof STANCE_IDS)[number];
/** How the body is seen in a picture, by the picture; and how far its clothes stand off. */
export const POSE_IDS = {
  front: { shift: 'frontShift', rise: 'frontRise', yaw: 'frontYaw', scale: 'frontScale' },
  side: { shift: 'sideShift', rise: 'sideRise', yaw: 'sideYaw', scale: 'sideScale' },
} as const satisfies Record<string, Record<string, ParameterId>>;
export type PoseId = {
  [P in keyof typeof POSE_IDS]: (typeof POSE_IDS)[P][keyof (typeof POSE_IDS)[P]];
}[keyof typeof POSE_IDS];
/** Unknowns that shape nothing. */
export type OutsideId = StanceId | PoseId | 'cloth';
export const OUTSIDE_IDS: readonly OutsideId[] = [
  ...STANCE_IDS,
  ...Object.values(POSE_IDS.front),
  ...Object.values(POSE_IDS.side),
  'cloth',
];
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
