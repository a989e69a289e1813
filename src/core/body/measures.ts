import { type Phrase, plain } from '../base/index.ts';
import type { Figure, TapeKind } from './types.ts';

export type MeasureGroup = 'first' | 'girths' | 'lengths' | 'shoulders' | 'arms' | 'widths' | 'heights';

/** A measure the maker can type. All lengths mm. */
export interface MeasureDefinition {
  readonly id: string;
  readonly name: Phrase;
  readonly kind: TapeKind;
  readonly group: MeasureGroup;
  /** May be given for left and right apart. */
  readonly sided: boolean;
  /** Where the tape lies, one or two plain sentences. */
  readonly how: Phrase;
  /** The usual range for adults (working limits; outside it warns). Refused below 0.7 × min or above 1.3 × max. */
  readonly range: Readonly<Record<Figure, readonly [min: number, max: number]>>;
  readonly figures: readonly Figure[];
}

type Range = readonly [number, number];

function define(
  id: string,
  name: string,
  kind: TapeKind,
  group: MeasureGroup,
  how: string,
  bust: Range,
  chest: Range,
  sided = false,
): MeasureDefinition {
  return {
    id,
    name: plain(name),
    kind,
    group,
    sided,
    how: plain(how),
    range: { bust, chest },
    figures: ['bust', 'chest'],
  };
}

const LEVEL_NAMES = [
  ['bust', 'Bust or chest', [200, 420], [150, 420]],
  ['underbust', 'Underbust (lower chest)', [180, 400], [140, 400]],
  ['waist', 'Waist', [160, 460], [120, 440]],
  ['highHip', 'High hip', [200, 470], [140, 440]],
  ['hip', 'Hip', [250, 500], [160, 440]],
] as const;

/**
 * Every measure, in the order of asking. Landmarks and measures follow ISO 8559-1:2017 and ISO 7250-1:2017 (own
 * words, from memory). Ranges: working limits blended from the public 1988 and 2012 surveys' 1st to 99th percentiles and
 * common practice; heavier and smaller bodies exist, so outside them we ask, not refuse.
 */
export const MEASURES: readonly MeasureDefinition[] = [
  define(
    'bustGirth',
    'Bust or chest girth',
    'girth',
    'first',
    'Level all round at the fullest part of the chest, in the underwear that will be worn, after breathing out.',
    [740, 1400],
    [800, 1400],
  ),
  define(
    'waistGirth',
    'Waist girth',
    'girth',
    'first',
    'Level round the narrowest part. Tie elastic there and leave it on: many lengths are measured from it.',
    [560, 1350],
    [640, 1400],
  ),
  define(
    'hipGirth',
    'Hip girth',
    'girth',
    'first',
    'Level round the fullest part of the seat, seen from the side.',
    [800, 1500],
    [800, 1450],
  ),
  define(
    'backWaistLength',
    'Back waist length',
    'length',
    'first',
    'From the bump at the base of the neck down the spine to the waist elastic.',
    [310, 480],
    [340, 540],
  ),
  define(
    'neckBaseGirth',
    'Neck base girth',
    'girth',
    'first',
    'Lay a fine chain round the base of the neck, over the nape bump and the collar-bone hollow; measure the chain.',
    [300, 470],
    [340, 540],
  ),
  define(
    'upperChestGirth',
    'Upper chest girth',
    'girth',
    'girths',
    'Level, high under the arms, above the fullest part of the chest.',
    [720, 1250],
    [780, 1400],
  ),
  define(
    'underbustGirth',
    'Underbust (lower chest) girth',
    'girth',
    'girths',
    'Level round the ribs just under the bust, or under the muscles of a flat chest.',
    [620, 1200],
    [700, 1350],
  ),
  define(
    'highHipGirth',
    'High hip girth',
    'girth',
    'girths',
    'Level at the top of the hip bone or the fullest part of the belly; note how far below the waist.',
    [620, 1400],
    [680, 1400],
  ),
  define(
    'frontWaistLength',
    'Front waist length',
    'length',
    'lengths',
    'From the side of the neck over the bust point to the waist elastic.',
    [370, 580],
    [380, 580],
    true,
  ),
  define(
    'neckToBustPoint',
    'Neck to bust point',
    'length',
    'lengths',
    'From the side of the neck to the most forward point of bust or chest.',
    [200, 390],
    [215, 350],
    true,
  ),
  define(
    'bustPointSpan',
    'Bust point span',
    'length',
    'lengths',
    'Straight from one bust point to the other.',
    [140, 270],
    [160, 290],
  ),
  define(
    'waistToHighHip',
    'Waist to high hip',
    'length',
    'lengths',
    'How far the high hip level lies below the waist, down the side.',
    [30, 150],
    [30, 150],
  ),
  define(
    'waistToHip',
    'Waist to hip',
    'length',
    'lengths',
    'How far the hip level lies below the waist, down the side.',
    [150, 290],
    [150, 300],
  ),
  define(
    'hipToBase',
    'Hip to base',
    'length',
    'lengths',
    'How far below the hip level the form is to end.',
    [20, 200],
    [20, 200],
  ),
  define(
    'sideLength',
    'Side length',
    'length',
    'lengths',
    'From a card held level in the armpit straight down to the waist elastic.',
    [115, 260],
    [130, 270],
  ),
  define(
    'shoulderLength',
    'Shoulder length',
    'length',
    'shoulders',
    'From the side of the neck along the shoulder to the outer bone edge.',
    [95, 175],
    [105, 185],
    true,
  ),
  define(
    'shoulderDrop',
    'Shoulder drop',
    'length',
    'shoulders',
    'How much lower the shoulder point lies than the side of the neck.',
    [15, 100],
    [15, 105],
    true,
  ),
  define(
    'acrossBack',
    'Across back',
    'length',
    'shoulders',
    'Over the back between the arm creases, half-way down the armhole.',
    [290, 450],
    [320, 500],
  ),
  define(
    'acrossFront',
    'Across front',
    'length',
    'shoulders',
    'Over the front between the arm creases, half-way down the armhole.',
    [270, 430],
    [300, 480],
  ),
  define(
    'armscyeGirth',
    'Armhole girth',
    'girth',
    'shoulders',
    'Over the shoulder point and through the armpit, arm hanging slightly away.',
    [310, 560],
    [360, 620],
    true,
  ),
  define(
    'upperArmGirth',
    'Upper arm girth',
    'girth',
    'arms',
    'Round the fullest part of the relaxed upper arm.',
    [215, 460],
    [230, 470],
    true,
  ),
  define(
    'elbowGirth',
    'Elbow girth',
    'girth',
    'arms',
    'Round the elbow, arm slightly bent.',
    [195, 340],
    [220, 360],
    true,
  ),
  define(
    'wristGirth',
    'Wrist girth',
    'girth',
    'arms',
    'Round the wrist over the bone.',
    [125, 200],
    [140, 220],
    true,
  ),
  define(
    'shoulderToElbow',
    'Shoulder to elbow',
    'length',
    'arms',
    'From the shoulder point down to the elbow, arm slightly bent.',
    [270, 410],
    [290, 430],
    true,
  ),
  define(
    'elbowToWrist',
    'Elbow to wrist',
    'length',
    'arms',
    'From the elbow to the wrist bone.',
    [200, 310],
    [220, 330],
    true,
  ),
  ...LEVEL_NAMES.flatMap(([level, name, width, depth]) => [
    define(
      `${level}Width`,
      `${name} width`,
      'width',
      'widths',
      'Side to side at that level, between two books or set squares.',
      width,
      width,
    ),
    define(
      `${level}Depth`,
      `${name} depth`,
      'depth',
      'widths',
      'Front to back at that level, between two books or set squares.',
      depth,
      depth,
    ),
  ]),
  define(
    'neckBaseWidth',
    'Neck base width',
    'width',
    'widths',
    'Side to side at the base of the neck.',
    [80, 150],
    [90, 170],
  ),
  define(
    'neckBaseDepth',
    'Neck base depth',
    'depth',
    'widths',
    'From the nape to the front of the neck base, level.',
    [60, 150],
    [70, 170],
  ),
  define(
    'napeHeight',
    'Nape height',
    'length',
    'heights',
    'From the floor to the bump at the base of the neck.',
    [1150, 1700],
    [1200, 1800],
  ),
  define(
    'waistHeight',
    'Waist height',
    'length',
    'heights',
    'From the floor to the waist elastic.',
    [850, 1300],
    [900, 1350],
  ),
];

export const FIRST_MEASURES = MEASURES.filter((m) => m.group === 'first').map((m) => m.id);

const BY_ID = new Map(MEASURES.map((m) => [m.id, m]));

export function findMeasure(id: string): MeasureDefinition | undefined {
  return BY_ID.get(id);
}
