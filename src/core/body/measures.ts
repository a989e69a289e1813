import { type Phrase, verbatim } from '../base/index.ts';
import { phrase } from './phrases.ts';
import type { Figure, TapeKind } from './types.ts';

export type MeasureGroup = 'first' | 'girths' | 'lengths' | 'shoulders' | 'arms' | 'widths' | 'heights';

/** A measure the maker can type. All lengths mm. */
export interface MeasureDefinition {
  readonly id: MeasureId;
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

type Range = readonly [min: number, max: number];
type Row<Id extends string> = readonly [
  id: Id,
  kind: TapeKind,
  group: MeasureGroup,
  bust: Range,
  chest: Range,
  sided?: 'sided',
];

const ROWS = [
  ['bustGirth', 'girth', 'first', [740, 1400], [800, 1400]],
  ['waistGirth', 'girth', 'first', [560, 1350], [640, 1400]],
  ['hipGirth', 'girth', 'first', [800, 1500], [800, 1450]],
  ['backWaistLength', 'length', 'first', [310, 480], [340, 540]],
  ['neckBaseGirth', 'girth', 'first', [300, 470], [340, 540]],
  ['upperChestGirth', 'girth', 'girths', [720, 1250], [780, 1400]],
  ['underbustGirth', 'girth', 'girths', [620, 1200], [700, 1350]],
  ['highHipGirth', 'girth', 'girths', [620, 1400], [680, 1400]],
  ['frontWaistLength', 'length', 'lengths', [370, 580], [380, 580], 'sided'],
  ['neckToBustPoint', 'length', 'lengths', [200, 390], [215, 350], 'sided'],
  ['bustPointSpan', 'length', 'lengths', [140, 270], [160, 290]],
  ['waistToHighHip', 'length', 'lengths', [30, 150], [30, 150]],
  ['waistToHip', 'length', 'lengths', [150, 290], [150, 300]],
  ['hipToBase', 'length', 'lengths', [20, 200], [20, 200]],
  ['sideLength', 'length', 'lengths', [115, 260], [130, 270]],
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
] as const satisfies readonly Row<string>[];

/** What a measure is called in the file. */
export type MeasureId = (typeof ROWS)[number][0];

/**
 * Every measure, in the order of asking. Landmarks and measures follow ISO 8559-1:2017 and ISO 7250-1:2017 (own
 * words, from memory). Ranges: working limits blended from the public 1988 and 2012 surveys' 1st to 99th percentiles and
 * common practice; heavier and smaller bodies exist, so outside them we ask, not refuse.
 */
export const MEASURES: readonly MeasureDefinition[] = ROWS.map((row) => define(row));

export const FIRST_MEASURES = MEASURES.filter((m) => m.group === 'first').map((m) => m.id);

const BY_ID = new Map<string, MeasureDefinition>(MEASURES.map((m) => [m.id, m]));

export function findMeasure(id: string): MeasureDefinition | undefined {
  return BY_ID.get(id);
}

/** The name of a measure; an id that is none is said as it stands. */
export function nameOfMeasure(id: string): Phrase {
  return findMeasure(id)?.name ?? verbatim(id);
}

function define([id, kind, group, bust, chest, sided]: Row<MeasureId>): MeasureDefinition {
  return {
    id,
    name: phrase(`measure.${id}.name`),
    kind,
    group,
    sided: sided !== undefined,
    how: phrase(`measure.${id}.how`),
    range: { bust, chest },
    figures: ['bust', 'chest'],
  };
}
