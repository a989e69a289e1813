import type { Issue } from '../base/index.ts';
import { nameOfMeasure } from './measures.ts';
import { phrase } from './phrases.ts';

/** Two heights read off a wall and a tape over the back may be wrong by this together, mm (common practice, no source). */
const MEASURING_ERROR = 20;

/**
 * A tape from the nape down to the waist cannot be shorter than the height between them, however straight the back: hard
 * geometry. Told by itself, because the fit would lay the blame on a tape that has to give way. All mm.
 */
export function checkBackLength(get: (id: string) => number | undefined): Issue[] {
  const [back, nape, waist] = ['backWaistLength', 'napeHeight', 'waistHeight'].map(get);
  if (back === undefined || nape === undefined || waist === undefined) return [];
  const span = nape - waist;
  if (span <= back) return [];
  const isHard = span - back > MEASURING_ERROR;
  return [
    {
      code: 'back-shorter-than-height',
      path: 'measures.backWaistLength',
      severity: isHard ? 'error' : 'warning',
      message: phrase('body.back-shorter-than-height', {
        back: nameOfMeasure('backWaistLength'),
        length: back,
        nape: nameOfMeasure('napeHeight'),
        waist: nameOfMeasure('waistHeight'),
        span,
        gap: span - back,
      }),
      measured: back,
      limit: span,
    },
  ];
}
