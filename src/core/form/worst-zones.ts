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
 * The places most over the cloth's limits, at most `count`; mirror images are left out, in the report's own words. What will be seen
 * on the filled form comes first, the largest before all, as in the verdict; then by the worst strain. What would help there is for
 * `adviseZone` to try out. O(zones).
 */
export function worstZones({ report, shell }: Form, count: number): readonly WorstZone[] {
  const own = report.panels.flatMap(({ cloth }, i) =>
    shell.panels[i].mirrorOf === undefined ? [{ cloth, panel: shell.panels[i] }] : [],
  );
  const seen = own
    .flatMap(({ cloth, panel }) => cloth.seen.map((zone) => ({ zone, panel })))
    .toSorted((a, b) => b.zone.area - a.zone.area);
  const others = own
    .flatMap(({ cloth, panel }) => cloth.zones.map((zone) => ({ zone, panel })))
    .filter(({ zone, panel }) => !seen.some((one) => one.panel === panel && one.zone.vertex === zone.vertex))
    .toSorted((a, b) => Math.abs(b.zone.strain) / b.zone.limit - Math.abs(a.zone.strain) / a.zone.limit);
  return [...seen, ...others].slice(0, count).map(({ zone, panel }) => ({
    panelId: panel.id,
    message: zone.message,
    place: { u: panel.chart[2 * zone.vertex], v: panel.chart[2 * zone.vertex + 1] },
  }));
}
