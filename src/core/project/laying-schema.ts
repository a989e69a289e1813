import { LAYING_OPTIONS, USE_IDS } from '../laying/index.ts';
import { numberSchema, optionSchemas } from './option-schemas.ts';
import { z } from './zod-without-code.ts';

/** Points, polygons and places in a file: more than any cloth has. */
const MOST = { points: 500, polygons: 100, places: 500 } as const;

const inMm = z.number().min(-100_000).max(100_000);
/** Counted from the lower left of what is laid on. */
const fromCorner = z.number().min(0).max(100_000);
const line = z.array(z.tuple([fromCorner, fromCorner])).max(MOST.points);
const lines = z.array(line.min(2)).max(MOST.polygons);
const flaws = z.array(line.min(3)).max(MOST.polygons);

/** @internal */
export const stockPieceSchema = z.strictObject({
  outline: line.min(3),
  flaws: flaws.exactOptional(),
  folds: lines.exactOptional(),
});

/** @internal */
export const keptPlaceSchema = z.strictObject({
  piece: z.string().max(100),
  x: inMm,
  y: inMm,
  angle: z.number().min(-7).max(7),
  sheet: z.number().int().min(0).max(MOST.polygons).exactOptional(),
  isHeld: z.boolean().exactOptional(),
});

/** @internal */
export const stockSchema = z.strictObject({
  ...optionSchemas(LAYING_OPTIONS),
  isLaid: z.boolean().exactOptional(),
  pieces: z.array(stockPieceSchema).max(MOST.polygons).exactOptional(),
  flaws: flaws.exactOptional(),
  grainTolerances: z.record(z.string().max(100), numberSchema(LAYING_OPTIONS.grainTolerance)).exactOptional(),
  placed: z.array(keptPlaceSchema).max(MOST.places).exactOptional(),
});

/** @internal */
export const layingSchema = z.strictObject(
  Object.fromEntries(USE_IDS.map((id) => [id, stockSchema.exactOptional()])) as {
    [Id in (typeof USE_IDS)[number]]: z.ZodExactOptional<typeof stockSchema>;
  },
);
