import type { BodyInput } from '../body/index.ts';
import { CLOTHS } from '../flatten/index.ts';
import { ALLOWANCE_LIMITS, NOTCH_SHAPES, type NotchShape } from '../pattern/index.ts';
import type { SeamLine } from '../seams/index.ts';
import { PAPERS } from '../sheet/index.ts';
import type { InsideOptions } from '../supports/index.ts';
import { anchorSchema, seamLineSchema, seamLinesSchema } from './seam-lines-schema.ts';
import {
  checkingEntrySchema,
  checkingReadingSchema,
  checkingSchema,
  makingSchema,
  type ProjectChecking,
  type ProjectMaking,
} from './workshop.ts';
import { z } from './zod-without-code.ts';

export const projectFormat = 'loftseam-project';
/** The version this program writes. */
export const projectVersion = 1;

/** Limits of the file itself, mm. What is plausible on a body is the body's own judgement. */
export const measureLimits = { min: 0, max: 4000 } as const;
/** What a single edge may have; that a seam needs more than nothing is for drafting to say. */
export const allowanceLimits = { min: 0, max: ALLOWANCE_LIMITS.largest } as const;
/** Radians; half way round a grain is the same grain. */
export const grainLimits = { min: -Math.PI / 2, max: Math.PI / 2 } as const;

/** The saved project: everything the maker typed, always millimetres, nothing computed. */
export interface Project {
  readonly format: typeof projectFormat;
  readonly version: typeof projectVersion;
  readonly name: string;
  readonly displayUnits: 'cm' | 'in';
  readonly body: BodyInput;
  readonly seams: ProjectSeams;
  readonly cloth: ProjectCloth;
  readonly inside: ProjectInside;
  readonly cutting: ProjectCutting;
  /** What is done of the order of work; nothing here changes a piece. */
  readonly making?: ProjectMaking;
  /** What was measured on shell and form. */
  readonly checking?: ProjectChecking;
}

export interface ProjectSeams {
  /** Id of a seam layout; absent = the first one offered. */
  readonly layout?: string;
  /** A layout of one's own: these lines instead of those of `layout`. */
  readonly lines?: readonly SeamLine[];
  /** 0 = a seam takes the mean of its two free lengths (least strain), 1 = its length on the body. */
  readonly lengthBlend?: number;
  /** 0 = shrink and stretch weigh the same, 1 = the cloth rather stretches than wrinkles. */
  readonly wrinkleAversion?: number;
  /** How far the hollows between the breasts and along the spine are filled towards a taut tape; absent = 0.9. */
  readonly bridging?: number;
}

export interface ProjectCloth {
  /** Id of a cloth with known limits; absent = the first one offered. */
  readonly kind?: string;
  /** Seam allowance, mm. */
  readonly allowance?: number;
  /** Seam allowance by edge: a seam id or `base`, `neck`, `armholeRight`, `armholeLeft`. mm. */
  readonly allowanceByEdge?: Readonly<Record<string, number>>;
  /** Seam allowance by kind of edge, where no edge of that id is named. mm. */
  readonly allowanceByKind?: { readonly seam?: number; readonly opening?: number };
  /** Seam allowance by material (`shell`, `webs`, `covers`, `arms`), where neither edge nor kind is named. mm. */
  readonly allowanceByMaterial?: Readonly<Record<string, number>>;
  /**
   * Turn of the grain by panel id, radians from upright, counter-clockwise seen from outside, a quarter turn at most.
   * Panels not named have it upright.
   */
  readonly grain?: Readonly<Record<string, number>>;
  /** How marks show at the cut edge; absent = `slit`. */
  readonly notchShape?: NotchShape;
}

/** Webs, pole sleeve, plates and stand; what is absent has the default named in `InsideOptions`. */
export type ProjectInside = InsideOptions;

/** Paper, printer and cutting machine of the maker; nothing here changes a piece. */
export interface ProjectCutting {
  /** Id in the table of papers; absent = A4. */
  readonly paper?: string;
  /** Empty margin of the paper, mm. */
  readonly margin?: number;
  /** How pages are joined; absent = `overlap`. */
  readonly joint?: 'overlap' | 'butt';
  /** What the long bars of the first page measure on this printer, mm. */
  readonly measuredBars?: { readonly across: number; readonly up: number };
  /** Mat or bed of the cutting machine, mm. */
  readonly mat?: { readonly width: number; readonly height: number };
  /** Width of the cut, mm. */
  readonly kerf?: number;
  /** From the axis of a dragged knife to its tip, mm. */
  readonly bladeOffset?: number;
  /** How far a dragged knife goes on past the start of a closed cut, mm. */
  readonly overcut?: number;
  /** Letters of single strokes on the sheets for machines. */
  readonly strokeText?: boolean;
  /** Colours `#rrggbb` or `none` by layer on the sheets for machines. */
  readonly colours?: Readonly<Record<string, string>>;
}

const lengthInMm = z.number().min(measureLimits.min).max(measureLimits.max);
const allowanceInMm = z.number().min(allowanceLimits.min).max(allowanceLimits.max);
const sidedLength = z.strictObject({ left: lengthInMm, right: lengthInMm });

/** More names than any body, layout or machine has; a file with more is none of ours. */
const MOST_NAMES = 1000;
const named = <T extends z.ZodType>(value: T) =>
  z
    .record(z.string(), value)
    .refine((entries) => Object.keys(entries).length <= MOST_NAMES, { params: { mostNames: MOST_NAMES } });

const bodySchema = z.strictObject({
  figure: z.enum(['bust', 'chest']),
  measures: named(z.union([lengthInMm, sidedLength])),
  readings: named(z.array(lengthInMm).min(1).max(20)).exactOptional(),
  shape: named(z.union([z.string().max(100), z.number()])).exactOptional(),
});
const seamsSchema = z.strictObject({
  layout: z.string().max(100).exactOptional(),
  lines: seamLinesSchema.exactOptional(),
  lengthBlend: z.number().min(0).max(1).exactOptional(),
  wrinkleAversion: z.number().min(0).max(1).exactOptional(),
  bridging: z.number().min(0).max(1).exactOptional(),
});
const clothSchema = z.strictObject({
  kind: z.enum(CLOTHS.map((cloth) => cloth.id)).exactOptional(),
  allowance: allowanceInMm.exactOptional(),
  allowanceByEdge: named(allowanceInMm).exactOptional(),
  allowanceByKind: z
    .strictObject({ seam: allowanceInMm.exactOptional(), opening: allowanceInMm.exactOptional() })
    .exactOptional(),
  allowanceByMaterial: named(allowanceInMm).exactOptional(),
  grain: named(z.number().min(grainLimits.min).max(grainLimits.max)).exactOptional(),
  notchShape: z.enum(NOTCH_SHAPES).exactOptional(),
});
const tubeGirthInMm = z.number().min(500).max(900);
const testTubeSchema = z.strictObject({
  measure1: tubeGirthInMm.exactOptional(),
  measure2: tubeGirthInMm.exactOptional(),
  measure3: tubeGirthInMm.exactOptional(),
});
const insideSchema = z.strictObject({
  tubeDiameter: z.number().min(5).max(200).exactOptional(),
  boardThickness: z.number().min(1).max(30).exactOptional(),
  clothThickness: z.number().min(0.1).max(10).exactOptional(),
  wantedDeviation: z.number().min(0.5).max(50).exactOptional(),
  webPlaces: z.enum(['seams', 'panels']).exactOptional(),
  straps: z.boolean().exactOptional(),
  pressure: z.number().min(0.1).max(50).exactOptional(),
  clothStiffness: z.number().min(1).max(1000).exactOptional(),
  measuredGrowth: z.number().min(0).max(0.2).exactOptional(),
  testTube: testTubeSchema.exactOptional(),
  coverThickness: z.number().min(0).max(40).exactOptional(),
  magnetDiameter: z.number().min(4).max(60).exactOptional(),
  pegDiameter: z.number().min(4).max(60).exactOptional(),
  garmentMass: z.number().min(0).max(100).exactOptional(),
  garmentOffset: z.number().min(0).max(1000).exactOptional(),
  waistHeight: z.number().min(300).max(2000).exactOptional(),
  legs: z.number().int().min(3).max(8).exactOptional(),
  legRadius: z.number().min(50).max(1000).exactOptional(),
  standMass: z.number().min(0.1).max(100).exactOptional(),
  poleMaterial: z.enum(['steel', 'aluminium', 'beech', 'pvc']).exactOptional(),
  tubeWall: z.number().min(0.2).max(50).exactOptional(),
});
const barInMm = z.number().min(50).max(250);
const matInMm = z.number().min(150).max(5000);
const cuttingSchema = z.strictObject({
  paper: z.enum(PAPERS.map(({ id }) => id)).exactOptional(),
  margin: z.number().min(0).max(50).exactOptional(),
  joint: z.enum(['overlap', 'butt']).exactOptional(),
  measuredBars: z.strictObject({ across: barInMm, up: barInMm }).exactOptional(),
  mat: z.strictObject({ width: matInMm, height: matInMm }).exactOptional(),
  kerf: z.number().min(0).max(3).exactOptional(),
  bladeOffset: z.number().min(0).max(2).exactOptional(),
  overcut: z.number().min(0).max(5).exactOptional(),
  strokeText: z.boolean().exactOptional(),
  colours: named(z.string().regex(/^(#[0-9a-f]{6}|none)$/i)).exactOptional(),
});

/** Checks a file already brought to the current version. Unknown keys are refused: a misspelt key would be lost. */
export const projectSchema = z.strictObject({
  format: z.literal(projectFormat),
  version: z.literal(projectVersion),
  name: z.string().max(200),
  displayUnits: z.enum(['cm', 'in']),
  body: bodySchema,
  seams: seamsSchema.default({}),
  cloth: clothSchema.default({}),
  inside: insideSchema.default({}),
  cutting: cuttingSchema.default({}),
  making: makingSchema.exactOptional(),
  checking: checkingSchema.exactOptional(),
}) satisfies z.ZodType<Project>;

/** Keys each object of the file may hold, by dotted path; `*` stands for any one key. */
export const knownKeys: ReadonlyMap<string, readonly string[]> = new Map([
  ['', Object.keys(projectSchema.shape)],
  ['body', Object.keys(bodySchema.shape)],
  ['body.measures.*', Object.keys(sidedLength.shape)],
  ['seams', Object.keys(seamsSchema.shape)],
  ['seams.lines.*', Object.keys(seamLineSchema.shape)],
  ['seams.lines.*.through.*', Object.keys(anchorSchema.shape)],
  ['seams.lines.*.alongHeight', Object.keys(anchorSchema.shape)],
  ['cloth', Object.keys(clothSchema.shape)],
  ['inside', Object.keys(insideSchema.shape)],
  ['inside.testTube', Object.keys(testTubeSchema.shape)],
  ['cloth.allowanceByKind', ['seam', 'opening']],
  ['cutting', Object.keys(cuttingSchema.shape)],
  ['cutting.measuredBars', ['across', 'up']],
  ['cutting.mat', ['width', 'height']],
  ['making', Object.keys(makingSchema.shape)],
  ['checking', Object.keys(checkingSchema.shape)],
  ['checking.entries.*', Object.keys(checkingEntrySchema.shape)],
  ['checking.entries.*.levels.*', Object.keys(checkingReadingSchema.shape)],
]);
