import { type Phrase, verbatim } from '../base/index.ts';
import { MEASURE_ROWS, type MeasureGroup, type MeasureId, type MeasureRow } from './measure-rows.ts';
import { phrase } from './phrases.ts';
import type { Figure, TapeKind } from './types.ts';

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
  /** The usual range for people from 1.40 m up (working limits; outside it warns). Refused below 0.7 × min or above 1.3 × max. */
  readonly range: Readonly<Record<Figure, readonly [min: number, max: number]>>;
  readonly figures: readonly Figure[];
}

/**
 * Every measure, in the order of asking. Landmarks and measures follow ISO 8559-1:2017 and ISO 7250-1:2017 (own
 * words, from memory). Ranges: working limits blended from the public 1988 and 2012 surveys' 1st to 99th percentiles and
 * common practice, widened to adolescents from 1.40 m and a body mass index of 45; others exist, so outside them we ask,
 * not refuse.
 */
export const MEASURES: readonly MeasureDefinition[] = MEASURE_ROWS.map((row) => define(row));

export const FIRST_MEASURES = MEASURES.filter((m) => m.group === 'first').map((m) => m.id);

const BY_ID = new Map<string, MeasureDefinition>(MEASURES.map((m) => [m.id, m]));

export function findMeasure(id: string): MeasureDefinition | undefined {
  return BY_ID.get(id);
}

/** The name of a measure; an id that is none is said as it stands. */
export function nameOfMeasure(id: string): Phrase {
  return findMeasure(id)?.name ?? verbatim(id);
}

function define([id, kind, group, bust, chest, sided]: MeasureRow<MeasureId>): MeasureDefinition {
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
