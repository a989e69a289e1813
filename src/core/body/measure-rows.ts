import type { TapeKind } from './types.ts';

export type MeasureGroup = 'first' | 'girths' | 'lengths' | 'shoulders' | 'arms' | 'widths' | 'heights';

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
  ['bustGirth', 'girth', 'first', [740, 1400], [800, 1400]],
  ['waistGirth', 'girth', 'first', [560, 1350], [640, 1400]],
  ['hipGirth', 'girth', 'first', [800, 1500], [800, 1450]],
  ['backWaistLength', 'length', 'first', [310, 480], [340, 540]],
  ['neckBaseGirth', 'girth', 'first', [300, 470], [340, 540]],
  ['upperChestGirth', 'girth', 'girths', [720, 1250], [780, 1400]],
  ['underbustGirth', 'girth', 'girths', [620, 1200], [700, 1350]],
  ['highHipGirth', 'girth', 'girths', [620, 1400], [680, 1400]],
  ['neckGirth', 'girth', 'girths', [270, 440], [310, 510]],
  ['frontWaistLength', 'length', 'lengths', [370, 580], [380, 580], 'sided'],
  ['neckToBustPoint', 'length', 'lengths', [200, 390], [215, 350], 'sided'],
  ['bustPointSpan', 'length', 'lengths', [140, 270], [160, 290]],
  ['waistToHighHip', 'length', 'lengths', [30, 150], [30, 150]],
  ['waistToHip', 'length', 'lengths', [150, 290], [150, 300], 'sided'],
  ['hipToBase', 'length', 'lengths', [20, 200], [20, 200]],
  ['sideLength', 'length', 'lengths', [115, 260], [130, 270], 'sided'],
  ['shoulderLength', 'length', 'shoulders', [95, 175], [105, 185], 'sided'],
  ['shoulderDrop', 'length', 'shoulders', [15, 100], [15, 105], 'sided'],
  ['acrossBack', 'length', 'shoulders', [290, 450], [320, 500]],
  ['acrossFront', 'length', 'shoulders', [270, 430], [300, 480]],
  ['armscyeGirth', 'girth', 'shoulders', [310, 560], [360, 620], 'sided'],
  ['upperArmGirth', 'girth', 'arms', [215, 460], [230, 470], 'sided'],
  ['elbowGirth', 'girth', 'arms', [195, 340], [220, 360], 'sided'],
  ['wristGirth', 'girth', 'arms', [125, 200], [140, 220], 'sided'],
  ['shoulderToElbow', 'length', 'arms', [270, 410], [290, 430], 'sided'],
  ['elbowToWrist', 'length', 'arms', [200, 310], [220, 330], 'sided'],
  ['bustWidth', 'width', 'widths', [200, 420], [200, 420]],
  ['bustDepth', 'depth', 'widths', [150, 420], [150, 420]],
  ['underbustWidth', 'width', 'widths', [180, 400], [180, 400]],
  ['underbustDepth', 'depth', 'widths', [140, 400], [140, 400]],
  ['waistWidth', 'width', 'widths', [160, 460], [160, 460]],
  ['waistDepth', 'depth', 'widths', [120, 440], [120, 440]],
  ['highHipWidth', 'width', 'widths', [200, 470], [200, 470]],
  ['highHipDepth', 'depth', 'widths', [140, 440], [140, 440]],
  ['hipWidth', 'width', 'widths', [250, 500], [250, 500]],
  ['hipDepth', 'depth', 'widths', [160, 440], [160, 440]],
  ['neckBaseWidth', 'width', 'widths', [80, 150], [90, 170]],
  ['neckBaseDepth', 'depth', 'widths', [60, 150], [70, 170]],
  ['napeHeight', 'length', 'heights', [1150, 1700], [1200, 1800]],
  ['waistHeight', 'length', 'heights', [850, 1300], [900, 1350]],
] as const satisfies readonly MeasureRow<string>[];

/** What a measure is called in the file. */
export type MeasureId = (typeof MEASURE_ROWS)[number][0];
