import type { Phrase } from '../base/index.ts';
import type { ChartPlace } from '../seams/index.ts';
import type { Form } from './types.ts';

/** A place where the cloth is asked for more than it takes. */
export interface WorstZone {
  readonly panelId: string;
  /** With the figures. */
  readonly message: Phrase;
  readonly place: ChartPlace;
}

/**
 * The places most over the cloth's limits, worst first, at most `count`; mirror images are left out, in the
 * report's own words. What would help there is for `adviseZone` to try out. O(zones).
 */
export function worstZones({ report, shell }: Form, count: number): readonly WorstZone[] {
  return report.panels
    .flatMap(({ cloth }, i) =>
      shell.panels[i].mirrorOf === undefined
        ? cloth.zones.map((zone) => ({ zone, panel: shell.panels[i] }))
        : [],
    )
    .toSorted((a, b) => Math.abs(b.zone.strain) / b.zone.limit - Math.abs(a.zone.strain) / a.zone.limit)
    .slice(0, count)
    .map(({ zone, panel }) => ({
      panelId: panel.id,
      message: zone.message,
      place: { u: panel.chart[2 * zone.vertex], v: panel.chart[2 * zone.vertex + 1] },
    }));
}
