import { takenOffBy } from '../inside/index.ts';
import type { Project } from '../project/index.ts';

/** Letters and digits that are not mistaken for each other when read aloud (Crockford's base 32). */
const DIGITS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * Six signs that change with the measures, the seams or the cloth, so that printouts of two states are not mixed: the FNV-1a
 * hash of 32 bits (draft-eastlake-fnv) over what shapes the pieces. Not for security.
 */
export function nameRevision({ body, seams, cloth, inside }: Project): string {
  // Of the inside, only what is taken off the panels shapes them.
  const taken = takenOffBy(inside);
  let hash = 0x811c9dc5;
  for (const character of JSON.stringify([body, seams, cloth, ...taken])) {
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  }
  return Array.from({ length: 6 }, (_, i) => DIGITS[(hash >>> (5 * i)) & 31]).join('');
}
