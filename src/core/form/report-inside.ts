import { CAUTIONS } from '../inside/index.ts';
import type { FormInside, ReportInside } from './types.ts';

/** The numbers of the inner parts, without their shapes. */
export function reportInside(inside: FormInside): ReportInside {
  const { shape, levels, stand, materials, fill, arms, parts } = inside;
  return {
    webPlaces: shape.webPlaces,
    levels,
    braces: shape.braces.map(({ id, name, rungs }) => ({
      id,
      name,
      lengths: Object.fromEntries(
        rungs.flatMap(({ levelId, length }) => (levelId === undefined ? [] : [[levelId, length]])),
      ),
    })),
    strapGains: shape.strapGains,
    parts,
    pole: {
      y: shape.pole.y,
      sleeveFlatWidth: shape.pole.sleeveGirth / 2,
      insideForm: shape.pole.zTop - shape.pole.zBottom,
    },
    stand,
    materials,
    fill,
    arms,
    cautions: CAUTIONS,
  };
}
