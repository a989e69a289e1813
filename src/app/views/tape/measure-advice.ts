import type { Words } from '../../../language/index.ts';

export interface MeasureAdvice {
  readonly why: string;
  readonly mistake: string;
}

/** Why a measure is asked for and what goes wrong most often; null for a measure that needs no word. */
export function adviceFor(measureId: string, advice: Words['advice']): MeasureAdvice | null {
  const known = (advice as Readonly<Record<string, MeasureAdvice>>)[measureId];
  if (known) return known;
  if (/^wall/.test(measureId)) return advice.anyDistance;
  if (/Height$/.test(measureId)) return advice.anyHeight;
  return /(Width|Depth)$/.test(measureId) ? advice.anySize : null;
}
