import type { ReportPanel } from '../../core/form/index.ts';

/** Root mean square over all panels, weighted by their area. */
export function typicalStrain(panels: readonly ReportPanel[]): number {
  const area = panels.reduce((sum, panel) => sum + panel.area3d, 0);
  const square = panels.reduce((sum, panel) => sum + panel.strain.rms ** 2 * panel.area3d, 0);
  return Math.sqrt(square / area);
}
