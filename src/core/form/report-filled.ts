import type { FilledPlace } from '../filled/index.ts';
import type { FormFilled, ReportFilled, ReportFilledPlace } from './types.ts';

/** The numbers of the filled form, without its shape. */
export function reportFilled({ measures, load, band }: FormFilled): ReportFilled {
  const { distance, throat, pulls, seams, boards, levels } = measures;
  return {
    pressure: load.pressure,
    stiffness: load.shell.weft,
    levels: levels.map(({ id, asked, found }) => {
      const ends = band?.find((one) => one.id === id);
      return { id, asked, found, ...(ends && { band: [ends.soft, ends.firm] as const }) };
    }),
    rms: distance.rms,
    within: distance.within,
    worst: withoutPoint(distance.worst),
    throat: withoutPoint(throat),
    pulls,
    seams,
    boards,
  };
}

function withoutPoint({ distance, over, where }: FilledPlace): ReportFilledPlace {
  return { distance, ...(over === undefined ? {} : { over }), where };
}
