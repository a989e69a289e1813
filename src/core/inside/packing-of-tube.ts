import { type Issue, withUsual } from '../base/index.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { phrase } from './phrases.ts';
import type { InsideOptions } from './types.ts';

/** What a tube may be wider than the pole in it without rattling, mm on the radius. Ours. */
const PLAY = 0.3;

/** The wall of the form's tube, mm: half its diameter where it is a solid bar. */
export function wallOfTube(options: InsideOptions): number {
  const usual = withUsual(INSIDE_OPTIONS, options);
  const isSolid = options.tubeWall === undefined && usual.poleMaterial === 'beech';
  return isSolid ? usual.tubeDiameter / 2 : usual.tubeWall;
}

/**
 * What fills the gap all round between the form's tube and the stand's own pole inside it, mm; 0 where it is no more than play, negative
 * where the pole does not go in. Undefined where the tube itself stands in the foot.
 */
export function packingOfTube(options: InsideOptions): number | undefined {
  if (options.stemDiameter === undefined) return undefined;
  const bore = Math.max(0, withUsual(INSIDE_OPTIONS, options).tubeDiameter - 2 * wallOfTube(options));
  const gap = (bore - options.stemDiameter) / 2;
  return gap >= 0 && gap <= PLAY ? 0 : gap;
}

/** A stand's pole that does not go into the tube. */
export function checkStem(options: InsideOptions): Issue[] {
  const packing = packingOfTube(options);
  const { stemDiameter } = options;
  if (packing === undefined || packing >= 0 || stemDiameter === undefined) return [];
  const limit = stemDiameter + 2 * packing;
  const message = phrase('stand.stem-too-thick', { stem: stemDiameter, bore: limit });
  return [
    {
      ...{ code: 'stem-too-thick', path: 'stemDiameter', message },
      ...{ severity: 'error', measured: stemDiameter, limit },
    },
  ];
}
