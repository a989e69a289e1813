import type { OptionsOf } from '../base/index.ts';
import { ARM_STATES, type BodyInput, WAIST_KINDS } from '../body/index.ts';
import { CLOTHS } from '../flatten/index.ts';
import { INSIDE_OPTIONS, type InsideOptions } from '../inside/index.ts';
import { LAYING_OPTIONS, type Laying, USE_IDS } from '../laying/index.ts';
import {
  ALLOWANCE_KINDS,
  type AllowanceKind,
  GRAIN_TURN,
  PATTERN_OPTIONS,
  type PatternOptions,
} from '../pattern/index.ts';
import type { SeamLine } from '../seams/index.ts';

import {
  CUTTER_OPTIONS,
  MAT_SIDE,
  MEASURED_BAR,
  PRINT_OPTIONS,
  PROJECTED_LENGTH,
  type ProjectedSquare,
  type TileOptions,
} from '../sheet/index.ts';
import { keptPlaceSchema, layingSchema, stockPieceSchema, stockSchema } from './laying-schema.ts';

import {
  checkingEntrySchema,
  checkingReadingSchema,
  checkingSchema,
  makingSchema,
  type ProjectChecking,
  type ProjectMaking,
} from './making-and-checking.ts';
import { numberSchema, optionSchemas } from './option-schemas.ts';
import { anchorSchema, seamLineSchema, seamLinesSchema } from './seam-lines-schema.ts';
import { z } from './zod-without-code.ts';

export const projectFormat = 'loftseam-project';
/** The version this program writes. */
export const projectVersion = 1;

/** Limits of the file itself, mm. What is plausible on a body is the body's own judgement. */
export const measureLimits = { min: 0, max: 4000 } as const;

/** The saved project: everything the maker typed, always millimetres, nothing computed. */
export interface Project {
  readonly format: typeof projectFormat;
  readonly version: typeof projectVersion;
  readonly name: string;
  /** Whose body it is, where several are kept of one person; nothing here changes a piece. */
  readonly person?: ProjectPerson;
  readonly displayUnits: 'cm' | 'in';
  readonly body: BodyInput;
  readonly seams: ProjectSeams;
  readonly cloth: ProjectCloth;
  readonly inside: ProjectInside;
  readonly cutting: ProjectCutting;
  /** Cloth and boards the pieces are laid on, and where they lie; nothing here changes a piece. */
  readonly laying?: Laying;
  /** What is done of the order of work; nothing here changes a piece. */
  readonly making?: ProjectMaking;
  /** What was measured on shell and form. */
  readonly checking?: ProjectChecking;
}

/** One of several bodies of a person: over other foundations, or on another date. */
export interface ProjectPerson {
  /** The same in all of them. */
  readonly name: string;
  /** What sets this one apart, for example "over the corset". */
  readonly label?: string;
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

/** Cloth, allowances and notches; what is absent is as `PATTERN_OPTIONS` says. */
export interface ProjectCloth extends PatternOptions {
  /** Id of a cloth with known limits; absent = the first one offered. */
  readonly kind?: string;
  /**
   * Turn of the grain by panel id, radians from upright, counter-clockwise seen from outside, a quarter turn at most.
   * Panels not named have it upright.
   */
  readonly grain?: Readonly<Record<string, number>>;
}

/** Webs, pole sleeve, plates and stand; what is absent is as `INSIDE_OPTIONS` says. */
export type ProjectInside = InsideOptions;

/**
 * Paper, printer and cutting machine of the maker; nothing here changes a piece. What is absent is as `PRINT_OPTIONS` and
 * `CUTTER_OPTIONS` say.
 */
export interface ProjectCutting extends Omit<TileOptions, 'overlap'>, OptionsOf<typeof CUTTER_OPTIONS> {
  /** What the long bars of the first page measure on this printer, mm. */
  readonly measuredBars?: { readonly across: number; readonly up: number };
  /** What the large square of the page that is projected measures on the table, mm. */
  readonly projectedSquare?: ProjectedSquare;
  /** Mat or bed of the cutting machine, mm. */
  readonly mat?: { readonly width: number; readonly height: number };
  /** Colours `#rrggbb` or `none` by layer on the sheets for machines. */
  readonly colours?: Readonly<Record<string, string>>;
}

const lengthInMm = z.number().min(measureLimits.min).max(measureLimits.max);
const sidedLength = z.strictObject({ left: lengthInMm, right: lengthInMm });

/** More names than any body, layout or machine has; a file with more is none of ours. */
const MOST_NAMES = 1000;
const named = <T extends z.ZodType>(value: T) =>
  z
    .record(z.string(), value)
    .refine((entries) => Object.keys(entries).length <= MOST_NAMES, { params: { mostNames: MOST_NAMES } });

const nameSchema = z.string().max(200);
const personSchema = z.strictObject({ name: nameSchema.min(1), label: nameSchema.exactOptional() });
const bodySchema = z.strictObject({
  figure: z.enum(['bust', 'chest']),
  measures: named(z.union([lengthInMm, sidedLength])),
  readings: named(z.array(lengthInMm).min(1).max(20)).exactOptional(),
  shape: named(z.union([z.string().max(100), z.number()])).exactOptional(),
  waist: z.enum(WAIST_KINDS).exactOptional(),
  arms: z.enum(ARM_STATES).exactOptional(),
});
const seamsSchema = z.strictObject({
  layout: z.string().max(100).exactOptional(),
  lines: seamLinesSchema.exactOptional(),
  lengthBlend: z.number().min(0).max(1).exactOptional(),
  wrinkleAversion: z.number().min(0).max(1).exactOptional(),
  bridging: z.number().min(0).max(1).exactOptional(),
});
const { notchShape } = optionSchemas(PATTERN_OPTIONS);
// What a single edge may have; that a seam needs more than nothing is for drafting to say.
const allowanceInMm = numberSchema(PATTERN_OPTIONS.allowance);
const optionalAllowance = allowanceInMm.exactOptional();
const allowanceByKindSchema = z.strictObject({
  ...{ seam: optionalAllowance, opening: optionalAllowance },
  ...(Object.fromEntries(ALLOWANCE_KINDS.map((kind) => [kind, optionalAllowance])) as {
    [Kind in AllowanceKind]: typeof optionalAllowance;
  }),
});
const clothSchema = z.strictObject({
  kind: z.enum(CLOTHS.map((cloth) => cloth.id)).exactOptional(),
  allowance: allowanceInMm.exactOptional(),
  allowanceByEdge: named(allowanceInMm).exactOptional(),
  allowanceByKind: allowanceByKindSchema.exactOptional(),
  allowanceByMaterial: named(allowanceInMm).exactOptional(),
  grain: named(numberSchema(GRAIN_TURN)).exactOptional(),
  notchShape,
});
const insideSchema = z.strictObject(optionSchemas(INSIDE_OPTIONS));
const { overlap: _notInTheFile, ...printSchemas } = optionSchemas(PRINT_OPTIONS);
const barInMm = numberSchema(MEASURED_BAR);
const matInMm = numberSchema(MAT_SIDE);
const projectedInMm = numberSchema(PROJECTED_LENGTH);
const projectedSchema = z.strictObject({
  top: projectedInMm,
  right: projectedInMm,
  bottom: projectedInMm,
  left: projectedInMm,
  diagonal: projectedInMm,
});
const cuttingSchema = z.strictObject({
  ...printSchemas,
  measuredBars: z.strictObject({ across: barInMm, up: barInMm }).exactOptional(),
  projectedSquare: projectedSchema.exactOptional(),
  mat: z.strictObject({ width: matInMm, height: matInMm }).exactOptional(),
  ...optionSchemas(CUTTER_OPTIONS),
  colours: named(z.string().regex(/^(#[0-9a-f]{6}|none)$/i)).exactOptional(),
});

/**
 * Checks a file already brought to the current version. Unknown keys are refused: a misspelt key would be lost.
 * @internal
 */
export const projectSchema = z.strictObject({
  format: z.literal(projectFormat),
  version: z.literal(projectVersion),
  name: nameSchema,
  person: personSchema.exactOptional(),
  displayUnits: z.enum(['cm', 'in']),
  body: bodySchema,
  seams: seamsSchema.default({}),
  cloth: clothSchema.default({}),
  inside: insideSchema.default({}),
  cutting: cuttingSchema.default({}),
  laying: layingSchema.exactOptional(),
  making: makingSchema.exactOptional(),
  checking: checkingSchema.exactOptional(),
}) satisfies z.ZodType<Project>;

/** Keys each object of the file may hold, by dotted path; `*` stands for any one key. */
export const knownKeys: ReadonlyMap<string, readonly string[]> = new Map([
  ['', Object.keys(projectSchema.shape)],
  ['person', Object.keys(personSchema.shape)],
  ['body', Object.keys(bodySchema.shape)],
  ['body.measures.*', Object.keys(sidedLength.shape)],
  ['seams', Object.keys(seamsSchema.shape)],
  ['seams.lines.*', Object.keys(seamLineSchema.shape)],
  ['seams.lines.*.through.*', Object.keys(anchorSchema.shape)],
  ['seams.lines.*.alongHeight', Object.keys(anchorSchema.shape)],
  ['cloth', Object.keys(clothSchema.shape)],
  ['inside', Object.keys(insideSchema.shape)],
  ['inside.testTube', Object.keys(INSIDE_OPTIONS.testTube)],
  ['cloth.allowanceByKind', Object.keys(allowanceByKindSchema.shape)],
  ['cutting', Object.keys(cuttingSchema.shape)],
  ['cutting.measuredBars', ['across', 'up']],
  ['cutting.mat', ['width', 'height']],
  ['laying', Object.keys(layingSchema.shape)],
  ...USE_IDS.flatMap((id): [string, string[]][] => [
    [`laying.${id}`, Object.keys(stockSchema.shape)],
    [`laying.${id}.print`, Object.keys(LAYING_OPTIONS.print)],
    [`laying.${id}.pieces.*`, Object.keys(stockPieceSchema.shape)],
    [`laying.${id}.placed.*`, Object.keys(keptPlaceSchema.shape)],
  ]),
  ['cutting.projectedSquare', Object.keys(projectedSchema.shape)],
  ['making', Object.keys(makingSchema.shape)],
  ['checking', Object.keys(checkingSchema.shape)],
  ['checking.entries.*', Object.keys(checkingEntrySchema.shape)],
  ['checking.entries.*.levels.*', Object.keys(checkingReadingSchema.shape)],
]);
