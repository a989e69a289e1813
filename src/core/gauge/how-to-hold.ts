import type { Phrase } from '../base/index.ts';
import { phrase } from './phrases.ts';

/** A gap told as an example, mm. */
const GAP = 3;

/**
 * What is done with gauges, and what is seen. Parallel curves of a closed outline differ in length by 2π × their distance (Steiner),
 * so a gap all round tells how much girth is lacking.
 */
export function howToHoldGauges(): Phrase[] {
  return [
    phrase('gauge.how.hold'),
    phrase('gauge.how.wide', { gap: GAP, girth: 2 * Math.PI * GAP }),
    phrase('gauge.how.tight'),
    phrase('gauge.how.uneven'),
    phrase('gauge.how.side'),
  ];
}
