import type { TapeKind } from './types.ts';

export type MeasureGroup =
  | 'first'
  | 'girths'
  | 'lengths'
  | 'shoulders'
  | 'arms'
  | 'widths'
  | 'heights'
  | 'wall';

type Range = readonly [min: number, max: number];
export type MeasureRow<Id extends string> = readonly [
  id: Id,
  kind: TapeKind,
  group: MeasureGroup,
  bust: Range,
  chest: Range,
  sided?: 'sided',
];

/** Of every measure in the order of asking: how it is taken, where it is asked for, and its usual ranges, mm; see `measures.ts`. */
export const MEASURE_ROWS = [
  ['bustGirth', 'girth', 'first', [660, 1550], [680, 1550]],
  ['waistGirth', 'girth', 'first', [520, 1550], [540, 1600]],
  ['hipGirth', 'girth', 'first', [680, 1700], [680, 1600]],
  ['backWaistLength', 'length', 'first', [290, 490], [290, 540]],
  ['neckBaseGirth', 'girth', 'first', [280, 500], [290, 570]],
  ['upperChestGirth', 'girth', 'girths', [650, 1400], [660, 1500]],
  ['underbustGirth', 'girth', 'girths', [580, 1350], [620, 1500]],
  ['highHipGirth', 'girth', 'girths', [580, 1650], [600, 1600]],
  ['neckGirth', 'girth', 'girths', [250, 470], [260, 530]],
  ['frontWaistLength', 'length', 'lengths', [330, 620], [330, 620], 'sided'],
  ['neckToBustPoint', 'length', 'lengths', [180, 430], [180, 370], 'sided'],
  ['bustPointSpan', 'length', 'lengths', [130, 300], [130, 310]],
  ['waistToHighHip', 'length', 'lengths', [30, 150], [30, 150]],
  ['waistToHip', 'length', 'lengths', [130, 300], [130, 310], 'sided'],
  ['hipToBase', 'length', 'lengths', [20, 200], [20, 200]],
  ['sideLength', 'length', 'lengths', [100, 260], [100, 270], 'sided'],
  ['shoulderLength', 'length', 'shoulders', [85, 175], [85, 185], 'sided'],
  ['shoulderDrop', 'length', 'shoulders', [10, 120], [10, 120], 'sided'],
  ['acrossBack', 'length', 'shoulders', [250, 480], [260, 520]],
  ['acrossFront', 'length', 'shoulders', [230, 460], [240, 500]],
  ['armscyeGirth', 'girth', 'shoulders', [280, 620], [290, 660], 'sided'],
  ['upperArmGirth', 'girth', 'arms', [180, 520], [190, 520], 'sided'],
  ['elbowGirth', 'girth', 'arms', [170, 380], [180, 390], 'sided'],
  ['wristGirth', 'girth', 'arms', [115, 220], [120, 230], 'sided'],
  ['shoulderToElbow', 'length', 'arms', [240, 410], [240, 430], 'sided'],
  ['elbowToWrist', 'length', 'arms', [170, 310], [180, 330], 'sided'],
  ['bustWidth', 'width', 'widths', [190, 460], [190, 460]],
  ['bustDepth', 'depth', 'widths', [130, 480], [130, 440]],
  ['underbustWidth', 'width', 'widths', [170, 450], [170, 460]],
  ['underbustDepth', 'depth', 'widths', [120, 420], [120, 430]],
  ['waistWidth', 'width', 'widths', [150, 520], [150, 520]],
  ['waistDepth', 'depth', 'widths', [110, 500], [110, 500]],
  ['highHipWidth', 'width', 'widths', [180, 540], [180, 540]],
  ['highHipDepth', 'depth', 'widths', [120, 500], [120, 500]],
  ['hipWidth', 'width', 'widths', [220, 600], [220, 560]],
  ['hipDepth', 'depth', 'widths', [140, 500], [140, 480]],
  ['neckBaseWidth', 'width', 'widths', [80, 150], [90, 170]],
  ['neckBaseDepth', 'depth', 'widths', [60, 150], [70, 170]],
  ['napeHeight', 'length', 'heights', [1120, 1700], [1120, 1800]],
  ['waistHeight', 'length', 'heights', [800, 1300], [800, 1350]],
  // Heights of landmarks, and distances from a wall a hand's breadth behind the heels. Ranges: common practice, no source.
  ['neckSideHeight', 'distance', 'heights', [1120, 1720], [1120, 1820]],
  ['neckFrontHeight', 'distance', 'heights', [1080, 1640], [1080, 1740]],
  ['shoulderHeight', 'distance', 'heights', [1080, 1680], [1080, 1780], 'sided'],
  ['armpitHeight', 'distance', 'heights', [1000, 1560], [1000, 1660], 'sided'],
  ['bustHeight', 'distance', 'heights', [900, 1500], [950, 1600]],
  ['hipHeight', 'distance', 'heights', [620, 1120], [620, 1150]],
  ['wallNape', 'distance', 'wall', [20, 350], [20, 350]],
  ['wallBlades', 'distance', 'wall', [10, 320], [10, 320]],
  ['wallWaistBack', 'distance', 'wall', [20, 360], [20, 360]],
  ['wallSeat', 'distance', 'wall', [5, 250], [5, 250]],
  ['wallNeckSide', 'distance', 'wall', [50, 420], [50, 420]],
  ['wallNeckFront', 'distance', 'wall', [100, 500], [100, 520]],
  ['wallBust', 'distance', 'wall', [170, 680], [170, 620]],
  ['wallWaistFront', 'distance', 'wall', [130, 750], [130, 750]],
  ['wallBelly', 'distance', 'wall', [150, 800], [150, 800]],
] as const satisfies readonly MeasureRow<string>[];

/** What a measure is called in the file. */
export type MeasureId = (typeof MEASURE_ROWS)[number][0];
