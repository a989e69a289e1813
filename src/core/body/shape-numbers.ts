import type { ChoiceBump } from './choice-bumps.ts';

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
  readonly bustSwell: number;
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
